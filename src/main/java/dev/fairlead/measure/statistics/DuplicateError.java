package dev.fairlead.measure.statistics;

import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.hipparchus.stat.inference.TTest;

/**
 * Error of a measurement taken twice on each of several subjects (Dahlberg 1940; Houston 1983): number of pairs, random
 * error sqrt(sum d^2 / 2n), mean difference (second less first) and coefficient of reliability 1 - error^2 / variance
 * of the subjects.
 */
public record DuplicateError(int pairs, double dahlberg, double meanDifference, double reliability) {

    /** From first and second measurement of the same subjects, in one unit; needs two subjects that differ. */
    public static DuplicateError of(double[] first, double[] second) {
        checkPairs(first, second);
        double[] differences = new double[first.length];
        StreamingStatistics subjects = new StreamingStatistics();
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            differences[i] = second[i] - first[i];
            sum += differences[i];
            subjects.addValue((first[i] + second[i]) / 2);
        }
        double error = ofDifferences(differences);
        double variance = subjects.getVariance();
        if (!(variance > 0)) {
            throw new IllegalArgumentException("reliability needs subjects that differ from each other");
        }
        return new DuplicateError(first.length, error, sum / first.length, 1 - error * error / variance);
    }

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

    /** Two-sided p of a systematic difference between first and second measurement (paired t test). */
    public static double systematic(double[] first, double[] second) {
        checkPairs(first, second);
        return new TTest().pairedTTest(first, second);
    }

    private static void checkPairs(double[] first, double[] second) {
        if (first.length != second.length || first.length < 2) {
            throw new IllegalArgumentException("two measurements of each of at least two subjects are needed, not "
                    + first.length + " and " + second.length);
        }
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a difference is a finite number, not " + value);
        }
        return value;
    }
}
