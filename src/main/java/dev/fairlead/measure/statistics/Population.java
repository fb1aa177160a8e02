package dev.fairlead.measure.statistics;

/**
 * How a rate is spread over a population: its mean, the SD between subjects, and the SD of a single reading about a
 * subject's own line; serves as prior for the next subject (empirical Bayes: Efron & Morris 1975; Laird & Ware 1982,
 * from memory).
 */
public record Population(double mean, double between, double within) {

    public Population {
        if (!Double.isFinite(mean) || !(between >= 0) || !(within >= 0) || Double.isInfinite(between + within)) {
            throw new IllegalArgumentException("a population has a finite mean and SDs of 0 or more, not " + mean + ", "
                    + between + ", " + within);
        }
    }

    /** What to expect of a subject of whom nothing was read yet. */
    public NumberWithError prior() {
        return new NumberWithError(mean, between);
    }

    /**
     * A subject's rate drawn towards the population mean by as much as the subject's own readings are uncertain, which
     * its standard error tells.
     */
    public NumberWithError shrunk(NumberWithError own) {
        double weight = weight(own.error());
        double variance = weight * own.error() * own.error();
        return new NumberWithError(mean + weight * (own.value() - mean), Math.sqrt(variance));
    }

    /** Weight of the subject's own rate, 0 to 1: between^2 / (between^2 + error^2). */
    public double weight(double error) {
        if (!(error >= 0)) {
            throw new IllegalArgumentException("a standard error is 0 or more, not " + error);
        }
        if (error == 0) {
            return 1;
        }
        return between * between / (between * between + error * error);
    }
}
