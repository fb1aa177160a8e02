package dev.fairlead.measure.mechanics;

/** What the ligatures do to the wire at the four incisor brackets. */
public enum Ties {
    /** Held labiolingually and vertically in all four brackets; slides and turns freely. */
    FOUR,
    /** As FOUR, and the wire cannot slide along the arch. */
    FOUR_NO_SLIDING,
    /** The two lateral incisors alone, as FOUR. */
    LATERALS,
    /** All four brackets clamp the wire in all six ways. */
    FOUR_CLAMPED
}
