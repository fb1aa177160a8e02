package dev.fairlead.measure.statistics;

/** Error of a measurement taken twice on each of several subjects (Dahlberg 1940; Houston 1983). */
public final class DuplicateError {
    private DuplicateError() {}

    /** Dahlberg's error of these differences of duplicates, in their unit: sqrt(sum d^2 / 2n). */
    public static double ofDifferences(double... differences) {
        if (differences.length == 0) {
            throw new IllegalArgumentException("no duplicate measurements");
        }
        double squares = 0;
        for (double d : differences) {
            squares += finite(d) * d;
        }
        return Math.sqrt(squares / (2 * differences.length));
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a difference is a finite number, not " + value);
        }
        return value;
    }
}
