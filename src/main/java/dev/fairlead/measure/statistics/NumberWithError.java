package dev.fairlead.measure.statistics;

/** A number with its standard error, in the same unit. */
public record NumberWithError(double value, double error) {

    public NumberWithError {
        if (!Double.isFinite(value) || !(error >= 0) || Double.isInfinite(error)) {
            throw new IllegalArgumentException(
                    "an estimate is a finite number with an error of 0 or more, not " + value + " +- " + error);
        }
    }

    /** Lower end of the interval of this many standard errors. */
    public double low(double errors) {
        return value - errors * error;
    }

    /** Upper end of the interval of this many standard errors. */
    public double high(double errors) {
        return value + errors * error;
    }
}
