package dev.fairlead.audit.statistics;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Mean and spread of a clinic's own values, drawn towards what is published by how few they are (Gelman and others,
 * Bayesian Data Analysis, 3rd edition, section 3.3).
 *
 * @param mean where the clinic's values are centred
 * @param sd their standard deviation
 * @param k how many values stand behind the mean, published ones included
 * @param df degrees of freedom of the spread
 * @param share part of the mean that is the clinic's own, 0 to 1
 */
public record Shrunk(double mean, double sd, double k, double df, double share) {
    /**
     * What is published.
     *
     * @param k how many values the published mean counts as
     * @param df how many the published spread counts as
     */
    public record Published(double mean, double sd, double k, double df) {
        /** Where studies do not tell how far their means lie apart: as much as ten values. */
        public static final double USUAL = 10;
    }

    /**
     * The mean of {@code n} of the clinic's own values and their spread, drawn towards what was published; where the
     * spread was read through errors it counts as {@code worth} values only, so that one which drowns in errors leaves
     * the published spread as it is.
     */
    public static Shrunk of(Published was, int n, double mean, double sd, double worth) {
        double k = was.k() + n;
        double df = was.df() + worth;
        double m = (was.k() * was.mean() + n * mean) / k;
        double between = was.k() * n / k * (mean - was.mean()) * (mean - was.mean());
        double variance = (was.df() * was.sd() * was.sd() + Math.max(0, worth - 1) * sd * sd + between) / df;
        return new Shrunk(m, Math.sqrt(variance), k, df, n / k);
    }

    /** How far the 95 % interval of the mean reaches to either side. */
    public double meanReach() {
        return t() * sd / Math.sqrt(k);
    }

    /** How far the interval in which 95 % of next cases lie reaches to either side. */
    public double nextReach() {
        return t() * sd * Math.sqrt(1 + 1 / k);
    }

    private double t() {
        return new TDistribution(df).inverseCumulativeProbability(0.975);
    }
}
