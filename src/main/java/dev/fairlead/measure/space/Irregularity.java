package dev.fairlead.measure.space;

import dev.fairlead.model.Contacts;
import dev.fairlead.model.Measured;
import java.util.List;
import java.util.stream.Stream;

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

    /** Sum of the displacements that are recorded, mm: the index is no less; unknown while none is. */
    public static Measured indexSoFar(Contacts c) {
        List<Measured> recorded = recorded(c);
        return recorded.isEmpty() ? index(c) : Measured.sum(recorded);
    }

    /** The largest displacement that is recorded, mm; unknown while none is. */
    public static Measured largestSoFar(Contacts c) {
        return recorded(c).stream().reduce(Measured::max).orElseGet(() -> largest(c));
    }

    private static List<Measured> recorded(Contacts c) {
        return Stream.of(c.c4342(), c.c4241(), c.c4131(), c.c3132(), c.c3233())
                .filter(Measured::known)
                .toList();
    }
}
