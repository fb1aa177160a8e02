package dev.fairlead.audit.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How far what was achieved lies from what was predicted: bias with a t interval, spread with a chi-square interval,
 * and how many lie within the intervals that were stated (Clopper & Pearson 1934, from memory).
 *
 * @param n how many
 * @param bias mean of the differences
 * @param spread their standard deviation; NaN of fewer than two
 */
public record Deviations(
        int n, double bias, double biasLow, double biasHigh, double spread, double spreadLow, double spreadHigh) {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final int CLASSES = 10;

    /** Differences as they come. */
    public static final class Sums {
        private int n;
        private double sum;
        private double squares;
        private int within95;
        private int within50;
        private final int[] classes = new int[CLASSES];

        /** A difference in units of the standard deviation that was stated. */
        public void addStandardised(double e) {
            add(e);
            within95 += Math.abs(e) <= 1.959963984540054 ? 1 : 0;
            within50 += Math.abs(e) <= 0.6744897501960817 ? 1 : 0;
            classes[(int) Math.min(CLASSES - 1, CLASSES * NORMAL.cumulativeProbability(e))]++;
        }

        public void add(double d) {
            n++;
            sum += d;
            squares += d * d;
        }

        public Deviations deviations() {
            if (n < 2) {
                double nothing = Double.NaN;
                return new Deviations(n, n == 0 ? nothing : sum, nothing, nothing, nothing, nothing, nothing);
            }
            double mean = sum / n;
            double s = Math.sqrt(Math.max(0, (squares - n * mean * mean) / (n - 1)));
            double reach = new TDistribution(n - 1.0).inverseCumulativeProbability(0.975) * s / Math.sqrt(n);
            ChiSquaredDistribution chi = new ChiSquaredDistribution(n - 1.0);
            return new Deviations(
                    n,
                    mean,
                    mean - reach,
                    mean + reach,
                    s,
                    s * Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.975)),
                    s * Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.025)));
        }

        /** How many lie within the stated interval of that level, 95 or 50 per cent. */
        public Covered covered(int level) {
            return new Covered(level == 95 ? within95 : within50, n);
        }

        /** How many lie in each tenth of the distribution that was stated (Gneiting and others 2007, from memory). */
        public int[] tenths() {
            return Arrays.copyOf(classes, CLASSES);
        }
    }

    /** How many of so many, with the exact interval of Clopper and Pearson. */
    public record Covered(int count, int of) {
        public double share() {
            return of == 0 ? Double.NaN : (double) count / of;
        }

        public double low() {
            return count == 0 ? 0 : new BetaDistribution(count, of - count + 1.0).inverseCumulativeProbability(0.025);
        }

        public double high() {
            return count == of ? 1 : new BetaDistribution(count + 1.0, of - count).inverseCumulativeProbability(0.975);
        }
    }
}
