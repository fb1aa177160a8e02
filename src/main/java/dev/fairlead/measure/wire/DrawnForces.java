package dev.fairlead.measure.wire;

import java.util.Arrays;

/**
 * Forces and stress with everything that was measured drawn anew within its error: 5, 50 and 95 of a hundred draws lie
 * below.
 *
 * @param low low end of the total labial force, gf
 * @param high high end of it, gf
 * @param stress peak bending stress, MPa; where both sides are uncertain it lies higher than at the measured values,
 *     for the larger of two decides
 */
public record DrawnForces(Spread low, Spread high, Spread stress) {
    /** How many draws; their own error is then under a fiftieth of the spread. */
    static final int DRAWS = 4000;

    static final long SEED = 20260101;

    /** Percentiles of one quantity. */
    public record Spread(double p5, double p50, double p95) {
        static Spread of(double[] drawn) {
            double[] sorted = drawn.clone();
            Arrays.sort(sorted);
            return new Spread(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
        }

        private static double at(double[] sorted, double share) {
            return sorted[(int) Math.round(share * (sorted.length - 1))];
        }
    }
}
