package dev.fairlead.model;

/** The stages of care in their order; criteria of {@code records} are judged from the first. */
public enum Stage implements Choice {
    RECORDS,
    INDICATION,
    READINESS,
    BENCH,
    INSERTION,
    ACTIVATION,
    HOLDING;

    /** True when a case that stands at this stage has reached {@code other}. */
    public boolean hasReached(Stage other) {
        return ordinal() >= other.ordinal();
    }
}
