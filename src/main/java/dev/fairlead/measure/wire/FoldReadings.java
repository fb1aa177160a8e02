package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * What a caliper reads on one fold, mm: between the inner edges of two runs of round wire, and over their outer ones.
 *
 * @param gapInside between two neighbouring legs of the closed fold
 * @param gapOutside over both
 * @param heightInside between the tail and the lowest run of the closed fold
 * @param heightOutside over all three runs
 * @param openInside between two neighbouring legs at their free end, opened for the wanted stand-off
 * @param openOutside over both there
 */
public record FoldReadings(
        Measured gapInside,
        Measured gapOutside,
        Measured heightInside,
        Measured heightOutside,
        Measured openInside,
        Measured openOutside) {

    /** The readings of a fold of wire of that diameter. */
    public static FoldReadings of(FoldOpening f, Measured size) {
        Measured r = f.radius();
        Measured open = Measured.function(Unit.MM, x -> apart(x[0], x[1], Math.toRadians(x[2])), r, f.leg(), f.angle());
        return new FoldReadings(
                r.times(2).minus(size),
                r.times(2).plus(size),
                r.times(4).minus(size),
                r.times(4).plus(size),
                open.minus(size),
                open.plus(size));
    }

    /** Middle of a leg's free end square to the other leg: r' (1 + cos a) at the bend, and L sin a more. */
    static double apart(double r, double leg, double alpha) {
        double opened = FoldKinematics.openedRadius(new FoldSpec(r, leg, leg, 0, 0), alpha);
        return opened * (1 + Math.cos(alpha)) + leg * Math.sin(alpha);
    }
}
