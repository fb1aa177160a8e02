package dev.fairlead.audit.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** Which of many comparisons are told, so that few are told by chance alone. */
public final class Alarms {
    private Alarms() {}

    /** Which p values stand out when the chance of any false one is held to {@code budget} (Holm 1979). */
    public static boolean[] holm(double budget, double... p) {
        int[] order = IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> p[i]))
                .mapToInt(i -> i)
                .toArray();
        boolean[] out = new boolean[p.length];
        for (int k = 0; k < order.length && p[order[k]] <= budget / (p.length - k); k++) {
            out[order[k]] = true;
        }
        return out;
    }

    /**
     * The largest threshold of p at which so few false alarms are expected: counts are whole, so that few of the many
     * comparisons can reach a small p at all (Zhu & Guo 2019, doi 10.1080/19466315.2019.1654912).
     */
    public static double threshold(List<ExactStrata> comparisons, double budget) {
        double low = -36;
        double high = 0;
        if (expected(comparisons, 1) <= budget) {
            return 1;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (expected(comparisons, Math.exp(middle)) <= budget) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp(low);
    }

    /** Expected false alarms at a threshold when all are alike. */
    public static double expected(List<ExactStrata> comparisons, double t) {
        double sum = 0;
        for (ExactStrata c : comparisons) {
            sum += c.attainable(t);
        }
        return sum;
    }

    /**
     * The smallest rate of a group that is told in four of five such groups; 1 where none would be.
     *
     * @param own cases of the group
     * @param others cases of all others
     * @param base rate of the others
     * @param t threshold of p
     */
    public static double detectable(int own, int others, double base, double t) {
        int theirs = (int) Math.round(base * others);
        for (int k = 1; k <= own; k++) {
            double p = ExactStrata.of(new int[] {own}, new int[] {own + others}, new int[] {k + theirs})
                    .p(k);
            if (p <= t) {
                return new BetaDistribution(k, own - k + 1.0).inverseCumulativeProbability(0.8);
            }
        }
        return 1;
    }
}
