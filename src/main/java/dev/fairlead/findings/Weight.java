package dev.fairlead.findings;

import dev.fairlead.model.Choice;

/** How heavily a warning weighs: stop means not to go on before a licensed clinician has looked. */
public enum Weight implements Choice {
    STOP,
    CAUTION,
    NONE
}
