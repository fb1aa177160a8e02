package dev.fairlead.audit.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Whether the cases of a group score higher than those of all others at the same stages: if all are alike, a group's
 * cases of a stage are a random draw from the cases of that stage. One-sided: only "more than the others" counts.
 */
public final class StageShuffle {
    /** Up to so many cases p is taken from shuffles, beyond from the normal form. */
    public static final int MOST_SHUFFLED = 5_000;

    /** How often cases are shuffled. */
    public static final int SHUFFLES = 9_999;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    /**
     * A group's sum of scores against what a random draw gives.
     *
     * @param cases how many cases the group has
     * @param sum of its scores
     * @param mean of such sums over all draws
     * @param variance of such sums over all draws
     * @param p how often a draw reaches the sum (Phipson & Smyth 2010, doi 10.2202/1544-6115.1585, from memory)
     */
    public record Result(int cases, double sum, double mean, double variance, double p) {
        public double z() {
            return variance > 0 ? (sum - mean) / Math.sqrt(variance) : 0;
        }

        /** One-sided p of the normal form. */
        public double normal() {
            return variance > 0 ? 1 - NORMAL.cumulativeProbability(z()) : 1;
        }
    }

    private StageShuffle() {}

    /**
     * The score of a case with so many observed where so many are expected: the square root evens out the spread of
     * counts (Anscombe 1948, Biometrika 35:246, from memory).
     */
    public static double score(double observed, double expected) {
        return 2 * (Math.sqrt(observed + 0.375) - Math.sqrt(expected + 0.375));
    }

    /**
     * The results of every group, one row for each kind of score; all kinds are shuffled together.
     *
     * @param scores one row a kind, one score a case
     * @param stage of each case, from 0
     * @param group of each case, from 0; below 0 for a case that belongs to none and still is one of the others
     */
    public static Result[][] of(double[][] scores, int[] stage, int[] group, int groups, long seed) {
        int n = stage.length;
        int kinds = scores.length;
        int stages = Arrays.stream(stage).max().orElse(0) + 1;
        int[][] size = new int[stages][groups];
        int[] total = new int[stages];
        double[][] seen = new double[kinds][groups];
        double[][] mean = new double[kinds][stages];
        for (int i = 0; i < n; i++) {
            total[stage[i]]++;
            if (group[i] >= 0) {
                size[stage[i]][group[i]]++;
            }
            for (int k = 0; k < kinds; k++) {
                mean[k][stage[i]] += scores[k][i];
                if (group[i] >= 0) {
                    seen[k][group[i]] += scores[k][i];
                }
            }
        }
        double[][] spread = new double[kinds][stages];
        for (int k = 0; k < kinds; k++) {
            for (int s = 0; s < stages; s++) {
                mean[k][s] /= Math.max(1, total[s]);
            }
            for (int i = 0; i < n; i++) {
                double d = scores[k][i] - mean[k][stage[i]];
                spread[k][stage[i]] += d * d / total[stage[i]];
            }
        }
        double[][] p = n <= MOST_SHUFFLED ? shuffled(scores, stage, group, groups, seen, total, seed) : null;
        Result[][] all = new Result[kinds][groups];
        for (int k = 0; k < kinds; k++) {
            for (int g = 0; g < groups; g++) {
                double m = 0;
                double v = 0;
                int cases = 0;
                for (int s = 0; s < stages; s++) {
                    int own = size[s][g];
                    cases += own;
                    m += own * mean[k][s];
                    v += total[s] < 2 ? 0 : own * (double) (total[s] - own) / (total[s] - 1) * spread[k][s];
                }
                Result r = new Result(cases, seen[k][g], m, v, Double.NaN);
                all[k][g] = new Result(cases, seen[k][g], m, v, p == null ? r.normal() : p[k][g]);
            }
        }
        return all;
    }

    private static double[][] shuffled(
            double[][] scores, int[] stage, int[] group, int groups, double[][] seen, int[] total, long seed) {
        int n = stage.length;
        int kinds = scores.length;
        int[] from = new int[total.length + 1];
        for (int s = 0; s < total.length; s++) {
            from[s + 1] = from[s] + total[s];
        }
        // one order of the same cases, however they came: p is of these cases and not of their order
        Comparator<Integer> canonical =
                Comparator.<Integer>comparingInt(i -> stage[i]).thenComparingInt(i -> group[i]);
        for (double[] kind : scores) {
            canonical = canonical.thenComparingDouble(i -> kind[i]);
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(canonical)
                .mapToInt(Integer::intValue)
                .toArray();
        int[] owner = Arrays.stream(order).map(i -> group[i]).toArray();
        SplittableRandom random = new SplittableRandom(seed);
        int[][] reached = new int[kinds][groups];
        double[][] sum = new double[kinds][groups];
        for (int b = 0; b < SHUFFLES; b++) {
            for (double[] row : sum) {
                Arrays.fill(row, 0);
            }
            for (int s = 0; s < total.length; s++) {
                for (int at = from[s + 1] - 1; at >= from[s]; at--) {
                    int with = from[s] + random.nextInt(at - from[s] + 1);
                    int i = order[with];
                    order[with] = order[at];
                    order[at] = i;
                    if (owner[at] >= 0) {
                        for (int k = 0; k < kinds; k++) {
                            sum[k][owner[at]] += scores[k][i];
                        }
                    }
                }
            }
            for (int k = 0; k < kinds; k++) {
                for (int g = 0; g < groups; g++) {
                    // sums of the same scores in another order differ by rounding
                    reached[k][g] += sum[k][g] >= seen[k][g] - 1e-9 ? 1 : 0;
                }
            }
        }
        double[][] p = new double[kinds][groups];
        for (int k = 0; k < kinds; k++) {
            for (int g = 0; g < groups; g++) {
                p[k][g] = (1.0 + reached[k][g]) / (SHUFFLES + 1.0);
            }
        }
        return p;
    }
}
