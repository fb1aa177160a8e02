package dev.fairlead.audit.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Agreement of any number of judges beyond chance (Krippendorff's alpha; Hayes & Krippendorff 2007, doi
 * 10.1080/19312450709336664, from memory), with an interval that leaves out one case at a time (Hughes 2022, arXiv
 * 2210.13265).
 *
 * @param value 1 for full agreement, 0 for as much as chance gives; NaN where it cannot be estimated
 * @param low lower end of the 95 % interval; NaN likewise
 * @param high upper end, at most 1
 * @param error standard error by the jackknife
 * @param cases how many cases have something judged by two or more
 */
public record Alpha(double value, double low, double high, double error, int cases) {
    private static final int FEWEST_CASES = 5;

    /** How far two answers lie apart, given how often each answer was given. */
    public interface Distance {
        double of(int a, int b, double[] counts);
    }

    public static final Distance NOMINAL = (a, b, n) -> a == b ? 0 : 1;

    /** Answers in order, as far apart as answers lie between them. */
    public static final Distance ORDINAL = (a, b, n) -> {
        double between = -(n[a] + n[b]) / 2;
        for (int g = Math.min(a, b); g <= Math.max(a, b); g++) {
            between += n[g];
        }
        return a == b ? 0 : between * between;
    };

    /** Collects answers case by case. */
    public static final class Answers {
        private final int categories;
        private final List<double[][]> byCase = new ArrayList<>();
        private double[][] open;

        public Answers(int categories) {
            this.categories = categories;
        }

        /** What follows belongs to another case. */
        public void nextCase() {
            open = null;
        }

        /** How often each answer was given to one question of the case; a question with one answer says nothing. */
        public void question(int... given) {
            int m = 0;
            for (int g : given) {
                m += g;
            }
            if (m < 2) {
                return;
            }
            if (open == null) {
                open = new double[categories][categories];
                byCase.add(open);
            }
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    open[a][b] += given[a] * (double) (given[b] - (a == b ? 1 : 0)) / (m - 1);
                }
            }
        }

        public Alpha alpha(Distance distance) {
            double[][] all = new double[categories][categories];
            byCase.forEach(c -> add(all, c, 1));
            int k = byCase.size();
            double value = value(all, distance);
            double sum = 0;
            double squares = 0;
            for (double[][] c : byCase) {
                add(all, c, -1);
                double without = value(all, distance);
                add(all, c, 1);
                sum += without;
                squares += without * without;
            }
            double error = Math.sqrt(Math.max(0, (k - 1.0) / k * (squares - sum * sum / k)));
            if (k < FEWEST_CASES || Double.isNaN(value) || Double.isNaN(sum)) {
                return new Alpha(Double.NaN, Double.NaN, Double.NaN, Double.NaN, k);
            }
            double reach = error * new TDistribution(k - 1.0).inverseCumulativeProbability(0.975);
            return new Alpha(value, value - reach, Math.min(1, value + reach), error, k);
        }

        private void add(double[][] to, double[][] c, int sign) {
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    to[a][b] += sign * c[a][b];
                }
            }
        }

        /** NaN where only one answer was ever given. */
        private double value(double[][] o, Distance distance) {
            double[] counts = new double[categories];
            double n = 0;
            int given = 0;
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    counts[a] += o[a][b];
                }
                n += counts[a];
                given += counts[a] > 1e-9 ? 1 : 0;
            }
            if (given < 2) {
                return Double.NaN;
            }
            double seen = 0;
            double chance = 0;
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    double d = distance.of(a, b, counts);
                    seen += o[a][b] * d;
                    chance += counts[a] * counts[b] * d;
                }
            }
            return 1 - (n - 1) * seen / chance;
        }
    }

    public boolean estimable() {
        return !Double.isNaN(value);
    }
}
