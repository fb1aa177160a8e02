package dev.fairlead.measure.archform;

/** Refusal of lengths that no arch can have. */
final class Sizes {
    private Sizes() {}

    static void positive(double... lengths) {
        for (double length : lengths) {
            if (!(length > 0) || Double.isInfinite(length)) {
                throw new IllegalArgumentException("widths and depths are positive numbers of mm, not " + length);
            }
        }
    }
}
