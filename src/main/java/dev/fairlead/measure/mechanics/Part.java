package dev.fairlead.measure.mechanics;

/** Stretch of the wire an element belongs to. */
public enum Part {
    /** Tail inside the molar tube. */
    TUBE,
    /** Straight wire between tube and first bend. */
    GAP,
    /** First bend, at the tube. */
    BEND_1,
    /** Leg that runs back distally below the tube. */
    LEG_2,
    /** Second bend, distal and lowest. */
    BEND_2,
    /** Leg that runs forward to the buccal run. */
    LEG_3,
    /** Buccal run, from the fold to the lateral incisor. */
    RUN,
    /** From lateral to lateral incisor. */
    FRONT
}
