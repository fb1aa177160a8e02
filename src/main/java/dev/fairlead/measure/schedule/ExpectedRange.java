package dev.fairlead.measure.schedule;

/**
 * What is expected, with the range that holds it in about nine cases of ten.
 *
 * @param early lower or earlier end
 * @param late upper or later end
 */
public record ExpectedRange<T extends Comparable<? super T>>(T early, T expected, T late) {
    /** Part of a normal distribution beyond each end: 5 %. */
    public static final double TAIL = 0.05;
    /** Distance of each end from the middle of a normal distribution, standard deviations. */
    public static final double REACH = 1.6448536269514722;

    public ExpectedRange {
        if (early.compareTo(expected) > 0 || expected.compareTo(late) > 0) {
            throw new IllegalArgumentException(
                    "a span runs from early to late, not " + early + ", " + expected + ", " + late);
        }
    }
}
