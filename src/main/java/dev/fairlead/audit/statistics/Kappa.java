package dev.fairlead.audit.statistics;

/**
 * Agreement of two judges beyond chance: Cohen 1960, weighted by Cohen 1968, with the large-sample standard error of
 * Fleiss, Cohen & Everitt 1969.
 *
 * @param value 1 for full agreement, 0 for as much as chance gives; NaN when both judges gave the same single answer
 *     throughout, or none
 * @param error standard error
 * @param observed share of agreement that was observed, weighted
 * @param expected share of agreement that chance would give, weighted
 * @param n how many were judged by both
 */
public record Kappa(double value, double error, double observed, double expected, long n) {
    private static final double NORMAL_95 = 1.959963984540054;

    /** Credit for a pair of answers: 1 for agreement, less for answers far apart. */
    public interface Weights {
        double of(int a, int b, int categories);
    }

    /** No credit but for the same answer. */
    public static final Weights NONE = (a, b, k) -> a == b ? 1 : 0;
    /** Credit that falls with the distance. */
    public static final Weights LINEAR = (a, b, k) -> 1 - Math.abs(a - b) / (double) (k - 1);
    /** Credit that falls with the square of the distance. */
    public static final Weights QUADRATIC = (a, b, k) -> 1 - (a - b) * (double) (a - b) / ((k - 1.0) * (k - 1));

    /** From a square table of counts, first judge down, second across. */
    public static Kappa of(long[][] counts, Weights weights) {
        int k = counts.length;
        long n = 0;
        double[] rows = new double[k];
        double[] columns = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                n += counts[i][j];
                rows[i] += counts[i][j];
                columns[j] += counts[i][j];
            }
        }
        double observed = 0;
        double expected = 0;
        double[] rowCredit = new double[k];
        double[] columnCredit = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double w = weights.of(i, j, k);
                observed += w * counts[i][j] / n;
                expected += w * rows[i] * columns[j] / n / n;
                rowCredit[i] += w * columns[j] / n;
                columnCredit[j] += w * rows[i] / n;
            }
        }
        double value = (observed - expected) / (1 - expected);
        double sum = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double d = weights.of(i, j, k) - (rowCredit[i] + columnCredit[j]) * (1 - value);
                sum += d * d * counts[i][j] / n;
            }
        }
        double centre = value - expected * (1 - value);
        double variance = Math.max(0, sum - centre * centre) / (n * (1 - expected) * (1 - expected));
        return new Kappa(value, Math.sqrt(variance), observed, expected, n);
    }

    /** Lower end of the 95 % interval. */
    public double low() {
        return value - NORMAL_95 * error;
    }

    /** Upper end of the 95 % interval, at most 1. */
    public double high() {
        return Math.min(1, value + NORMAL_95 * error);
    }
}
