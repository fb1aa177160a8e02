package dev.fairlead.audit.statistics;

/**
 * Three-sigma limits of a chart of shares by period (p-chart; NIST/SEMATECH e-Handbook of Statistical Methods,
 * 6.3.3.2).
 */
public final class ControlChart {
    private static final double SIGMAS = 3;

    private ControlChart() {}

    /** Limits of the share of {@code n} around the overall share {@code mean}; never below 0 or above 1. */
    public static Band share(double n, double mean) {
        double reach = SIGMAS * Math.sqrt(mean * (1 - mean) / n);
        return new Band(Math.max(0, mean - reach), Math.min(1, mean + reach));
    }
}
