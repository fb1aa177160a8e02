package dev.fairlead.measure.mechanics;

/** How displacements are treated. */
public enum Theory {
    /** Small displacements; good below about 1 mm of stand-off, too high above. */
    LINEAR,
    /** Large rotations of a linear elastic wire. */
    LARGE_ROTATIONS
}
