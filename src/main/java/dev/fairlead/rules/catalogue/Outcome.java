package dev.fairlead.rules.catalogue;

/** How a rule judges one place; in rising order of weight. */
public enum Outcome {
    DOES_NOT_APPLY,
    PASS,
    CAUTION,
    STOP
}
