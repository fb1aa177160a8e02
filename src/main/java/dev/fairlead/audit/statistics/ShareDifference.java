package dev.fairlead.audit.statistics;

/**
 * The difference of two shares with its 95 % interval, made of the interval of each (Newcombe 1998, Stat Med 17:873,
 * method 10).
 */
public record ShareDifference(double value, double low, double high) {
    /** First less second. */
    public static ShareDifference of(Rate a, Rate b) {
        return of(a.share(), a.low(), a.high(), b.share(), b.low(), b.high());
    }

    /** The same from shares and ends of their intervals. */
    public static ShareDifference of(double a, double aLow, double aHigh, double b, double bLow, double bHigh) {
        double d = a - b;
        return new ShareDifference(d, d - Math.hypot(a - aLow, bHigh - b), d + Math.hypot(aHigh - a, b - bLow));
    }

    /** True where the interval leaves no difference out. */
    public boolean clear() {
        return low > 0 || high < 0;
    }
}
