package dev.fairlead.measure.records;

import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.SharedScales;

/**
 * Duplicate error of one kind of reading (Dahlberg 1940; Houston 1983): sqrt(sum d² / 2n) over n pairs of readings.
 *
 * <p>A value read more than twice counts as one pair less than its readings: the pooled standard deviation within
 * values, sqrt(sum (x - mean)² / sum (k - 1)), is Dahlberg's formula where every k is 2.
 */
public final class Duplicates {
    /** From so many pairs on, the case's own error replaces the assumed one. */
    public static final int ENOUGH = 5;

    private double squares;
    private int pairs;

    /** Takes in the readings of one value; a single reading says nothing of error. */
    public void add(Measured value) {
        if (value.repeatCount() > 1) {
            add(value.repeats());
        }
    }

    void add(double... readings) {
        double mean = 0;
        for (double x : readings) {
            mean += x / readings.length;
        }
        for (double x : readings) {
            squares += (x - mean) * (x - mean);
        }
        pairs += readings.length - 1;
    }

    /** Takes in all pairs of {@code other}. */
    public void add(Duplicates other) {
        squares += other.squares;
        pairs += other.pairs;
    }

    /** Pairs of readings so far. */
    public int pairs() {
        return pairs;
    }

    /** The error of a single reading, one standard deviation, in the unit of the readings; NaN without a pair. */
    public double error() {
        return pairs == 0 ? Double.NaN : Math.sqrt(squares / pairs);
    }

    public boolean enough() {
        return pairs >= ENOUGH;
    }

    /**
     * The value with this error in place of the one assumed for its kind; unchanged while there are too few pairs, or
     * where the case states an error of its own; what a picture's scale has in it is then to be shared anew. The mean
     * of k readings has the error of one divided by sqrt(k).
     */
    public Measured applyTo(Measured value, ErrorKind kind) {
        if (!enough() || !value.known()) {
            return value;
        }
        double root = Math.sqrt(Math.max(1, value.repeatCount()));
        double sd = value.sd();
        boolean assumed = near(sd, kind.defaultSd()) || near(sd, kind.defaultSd() / root);
        return assumed ? SharedScales.alone(value).withOwnError(error() / root) : value;
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < Measured.ROUNDING;
    }
}
