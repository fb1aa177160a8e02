package dev.fairlead.measure.space;

import dev.fairlead.model.Contacts;
import dev.fairlead.model.Measured;

/**
 * Irregularity index: the sum of the five contact-point displacements of the lower front teeth, in the horizontal plane
 * (Little 1975).
 */
public final class Irregularity {
    private Irregularity() {}

    /**
     * Classes of the index. The published classes (0, 1-3, 4-6, 7-9, 10 and more) leave gaps; here each reaches up to
     * the next, without it: 0 | up to 4 | up to 7 | up to 10 | 10 and more, mm.
     */
    public enum Grade {
        PERFECT,
        MINIMAL,
        MODERATE,
        SEVERE,
        VERY_SEVERE;

        public static Grade of(double index) {
            if (index <= Measured.ROUNDING) {
                return PERFECT;
            }
            double x = index + Measured.ROUNDING;
            return x < 4 ? MINIMAL : x < 7 ? MODERATE : x < 10 ? SEVERE : VERY_SEVERE;
        }
    }

    /** Sum of the five displacements, mm. */
    public static Measured index(Contacts c) {
        return c.c4342().plus(c.c4241()).plus(c.c4131()).plus(c.c3132()).plus(c.c3233());
    }

    /** The largest of the five displacements, mm. */
    public static Measured largest(Contacts c) {
        return c.c4342().max(c.c4241()).max(c.c4131()).max(c.c3132()).max(c.c3233());
    }
}
