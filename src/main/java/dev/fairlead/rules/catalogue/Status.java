package dev.fairlead.rules.catalogue;

import dev.fairlead.model.Choice;

/** How a criterion ends, at one place or over all of them; the heaviest first. */
public enum Status implements Choice {
    WARN,
    NOT_ASSESSED,
    PASS,
    DOES_NOT_APPLY
}
