package dev.fairlead.audit.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/**
 * Which of many comparisons are more than chance: exact tests, and the step-up procedure of Benjamini & Hochberg 1995,
 * which keeps the expected share of false alarms among all alarms below a rate.
 */
public final class Discoveries {
    private Discoveries() {}

    /** Two-sided p of {@code count} of {@code n} when the true share is {@code p}: twice the smaller tail. */
    public static double ofShare(int count, int n, double p) {
        if (!(p > 0 && p < 1) || n == 0) {
            return 1;
        }
        BinomialDistribution d = new BinomialDistribution(n, p);
        return twoSided(d.cumulativeProbability(count), count == 0 ? 1 : 1 - d.cumulativeProbability(count - 1));
    }

    /** Two-sided p of {@code count} when {@code expected} are expected. */
    public static double ofCount(int count, double expected) {
        if (!(expected > 0)) {
            return 1;
        }
        PoissonDistribution d = new PoissonDistribution(expected);
        return twoSided(d.cumulativeProbability(count), count == 0 ? 1 : 1 - d.cumulativeProbability(count - 1));
    }

    private static double twoSided(double lower, double upper) {
        return Math.min(1, 2 * Math.min(lower, upper));
    }

    /** Which of these p values stand out at a false discovery rate. */
    public static boolean[] at(double rate, double... p) {
        int[] order = IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> p[i]))
                .mapToInt(i -> i)
                .toArray();
        int last = -1;
        for (int k = 0; k < p.length; k++) {
            if (p[order[k]] <= rate * (k + 1) / p.length) {
                last = k;
            }
        }
        boolean[] found = new boolean[p.length];
        Arrays.stream(order, 0, last + 1).forEach(i -> found[i] = true);
        return found;
    }
}
