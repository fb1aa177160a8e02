package dev.fairlead.audit.statistics;

import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/**
 * Limits of funnel plots: exact tails of the binomial or Poisson distribution, interpolated between whole counts
 * (Spiegelhalter 2005, Statistics in Medicine 24:1185, appendix A.1).
 */
public final class Funnel {
    /** Outside the inner limits lies one group in twenty by chance. */
    public static final double INNER = 0.95;
    /** Outside the outer limits lie two groups in a thousand by chance. */
    public static final double OUTER = 0.998;

    private Funnel() {}

    /** Limits of an observed share of {@code n} when the true share is {@code p}. */
    public static Band share(int n, double p, double level) {
        if (!(p > 0 && p < 1)) {
            return new Band(p, p);
        }
        BinomialDistribution d = new BinomialDistribution(n, p);
        return band(d::cumulativeProbability, d::inverseCumulativeProbability, n, level);
    }

    /** Limits of observed divided by expected when {@code expected} are expected. */
    public static Band ratio(double expected, double level) {
        PoissonDistribution d = new PoissonDistribution(expected);
        return band(d::cumulativeProbability, d::inverseCumulativeProbability, expected, level);
    }

    private interface Inverse {
        int at(double probability);
    }

    private static Band band(IntToDoubleFunction cumulative, Inverse inverse, double by, double level) {
        double tail = (1 - level) / 2;
        return new Band(Math.max(0, count(cumulative, inverse, tail)) / by, count(cumulative, inverse, 1 - tail) / by);
    }

    /** The count, not whole, below which lies {@code probability}. */
    private static double count(IntToDoubleFunction cumulative, Inverse inverse, double probability) {
        int r = inverse.at(probability);
        double below = r == 0 ? 0 : cumulative.applyAsDouble(r - 1);
        double upTo = cumulative.applyAsDouble(r);
        return r - (upTo - probability) / (upTo - below);
    }
}
