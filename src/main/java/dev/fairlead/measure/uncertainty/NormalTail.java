package dev.fairlead.measure.uncertainty;

import org.hipparchus.special.Erf;

/** Area of a normal distribution. */
public final class NormalTail {
    private NormalTail() {}

    /** Probability that a normal error of this standard deviation exceeds {@code distance} (0 or more, same unit) in one direction. */
    public static double beyond(double distance, double sd) {
        if (!(distance >= 0 && sd >= 0)) {
            throw new IllegalArgumentException("distance and error are 0 or more, not " + distance + " and " + sd);
        }
        return sd == 0 ? 0 : Erf.erfc(distance / (sd * Math.sqrt(2))) / 2;
    }
}
