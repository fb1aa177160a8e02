package dev.fairlead.audit.statistics;

/** Three-sigma limits of charts by period (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.1 and 6.3.3.2). */
public final class ControlChart {
    private static final double SIGMAS = 3;

    /** Between which values chance alone keeps something. */
    public record Band(double low, double high) {
        public boolean holds(double value) {
            return value >= low && value <= high;
        }
    }

    private ControlChart() {}

    /** Limits of the share of {@code n} around the overall share {@code mean}; never below 0 or above 1. */
    public static Band share(double n, double mean) {
        double reach = SIGMAS * Math.sqrt(mean * (1 - mean) / n);
        return new Band(Math.max(0, mean - reach), Math.min(1, mean + reach));
    }

    /** Limits of observed over expected; {@code spread} is the variance of counts over their mean, at least 1. */
    public static Band ratio(double expected, double spread) {
        double reach = SIGMAS * Math.sqrt(spread / expected);
        return new Band(Math.max(0, 1 - reach), 1 + reach);
    }
}
