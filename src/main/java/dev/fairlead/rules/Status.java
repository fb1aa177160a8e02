package dev.fairlead.rules;

/** How a criterion ends, at one place or over all of them. */
public enum Status {
    WARN, NOT_ASSESSED, PASS, DOES_NOT_APPLY
}
