package dev.fairlead.measure.archform;

import java.util.Locale;

/** Lengths of arches, mm: which are possible, and how they are told. */
final class Lengths {
    private Lengths() {}

    /** Refuses lengths that no arch can have. */
    static void positive(double... lengths) {
        for (double length : lengths) {
            if (!(length > 0) || Double.isInfinite(length)) {
                throw new IllegalArgumentException("widths and depths are positive numbers of mm, not " + length);
            }
        }
    }

    /** Tenths of a millimetre, with a point, in every locale. */
    static String mm(double length) {
        return String.format(Locale.ROOT, "%.1f mm", length);
    }
}
