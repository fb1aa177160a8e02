package dev.fairlead.audit.statistics;

import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;

/** A count out of so many, with the 95 % score interval of Wilson 1927 (as compared by Newcombe 1998). */
public record Rate(long count, long of) {
    private static final double LEVEL = 0.95;

    public Rate {
        if (count < 0 || count > of) {
            throw new IllegalArgumentException(count + " out of " + of);
        }
    }

    /** True when there is nothing to take a share of. */
    public boolean none() {
        return of == 0;
    }

    /** The share, 0 to 1; NaN of nothing. */
    public double share() {
        return none() ? Double.NaN : (double) count / of;
    }

    /** Lower end of the interval; 0 of nothing. */
    public double low() {
        return none() ? 0 : Math.max(0, interval().getLowerBound());
    }

    /** Upper end of the interval; 1 of nothing. */
    public double high() {
        return none() ? 1 : Math.min(1, interval().getUpperBound());
    }

    private ConfidenceInterval interval() {
        return BinomialProportion.getWilsonScoreInterval(Math.toIntExact(of), share(), LEVEL);
    }
}
