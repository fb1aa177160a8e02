package dev.fairlead.audit.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Observed over expected of a group, divided by the same of all others, with an interval that allows for cases whose
 * warnings go together.
 *
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param error standard error of the logarithm
 * @param df degrees of freedom (Welch)
 */
public record Ratio(double value, double low, double high, double error, double df) {
    /** No ratio: nothing was observed or expected on one side. */
    public static final Ratio NONE = new Ratio(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private static final double POWER_80 = 0.8416212335729143;

    /** Sums over the cases of one side, as they come. */
    public static final class Side {
        private double observed;
        private double expected;
        private double oo;
        private double oe;
        private double ee;
        long cases;

        public void add(double o, double e) {
            cases++;
            observed += o;
            expected += e;
            oo += o * o;
            oe += o * e;
            ee += e * e;
        }

        /** What is left of this side without another that was added to it. */
        public Side without(Side other) {
            Side rest = new Side();
            rest.cases = cases - other.cases;
            rest.observed = observed - other.observed;
            rest.expected = expected - other.expected;
            rest.oo = oo - other.oo;
            rest.oe = oe - other.oe;
            rest.ee = ee - other.ee;
            return rest;
        }

        public double observed() {
            return observed;
        }

        public double expected() {
            return expected;
        }

        /** Variance of the logarithm of observed over expected; at least that of a Poisson count. */
        double variance() {
            double rho = observed / expected;
            double between = cases / (cases - 1.0) * (oo - 2 * rho * oe + rho * rho * ee);
            return Math.max(observed, between) / (observed * observed);
        }
    }

    /** The ratio of two sides; {@link #NONE} where a side has fewer than two cases or no warning. */
    public static Ratio of(Side own, Side others) {
        if (own.cases < 2 || others.cases < 2 || !(own.observed > 0.5) || !(others.observed > 0.5)) {
            return NONE;
        }
        double v1 = own.variance();
        double v2 = others.variance();
        double df = (v1 + v2) * (v1 + v2) / (v1 * v1 / (own.cases - 1) + v2 * v2 / (others.cases - 1));
        double value = own.observed / own.expected / (others.observed / others.expected);
        double error = Math.sqrt(v1 + v2);
        double reach = Math.exp(new TDistribution(df).inverseCumulativeProbability(0.975) * error);
        return new Ratio(value, value / reach, value * reach, error, df);
    }

    public boolean none() {
        return Double.isNaN(value);
    }

    /** The smallest ratio that a one-sided test at {@code alpha} sees in four of five groups of such an error. */
    public static double detectable(double error, double alpha) {
        return Math.exp((new NormalDistribution().inverseCumulativeProbability(1 - alpha) + POWER_80) * error);
    }

    /** One-sided p of a ratio above one where groups differ by a variance {@code between} all the same. */
    public double exceeds(double between) {
        return none()
                ? 1
                : 1
                        - new NormalDistribution()
                                .cumulativeProbability(Math.log(value) / Math.sqrt(error * error + between));
    }

    /**
     * Variance between groups beyond chance (DerSimonian & Laird 1986, doi 10.1016/0197-2456(86)90046-2, from memory),
     * from logarithms of ratios and their variances.
     */
    public static double between(double[] logs, double[] variances) {
        double w = 0;
        double wy = 0;
        double ww = 0;
        for (int i = 0; i < logs.length; i++) {
            w += 1 / variances[i];
            wy += logs[i] / variances[i];
            ww += 1 / variances[i] / variances[i];
        }
        double q = 0;
        for (int i = 0; i < logs.length; i++) {
            q += (logs[i] - wy / w) * (logs[i] - wy / w) / variances[i];
        }
        return Math.max(0, (q - (logs.length - 1)) / (w - ww / w));
    }
}
