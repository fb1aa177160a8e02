package dev.fairlead.report.sheet;

import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.wire.FoldOpening;
import java.util.function.DoubleUnaryOperator;

/**
 * How far the numbers of an opened fold may be off where its gap is read to {@link Tolerances#GAP}: they hang together,
 * so that one tolerance gives all.
 *
 * @param standOff mm to either side
 * @param angle of each bend, degrees to either side
 * @param drop of the front, mm to either side
 */
record OpeningTolerance(double standOff, double angle, double drop) {

    /** Those of a fold whose opening is known, NaN where it is not. */
    static OpeningTolerance of(FoldOpening f) {
        if (!f.angle().known() || !f.leg().known() || !f.radius().known()) {
            return new OpeningTolerance(Double.NaN, Double.NaN, Double.NaN);
        }
        double leg = f.leg().value();
        FoldSpec spec = new FoldSpec(f.radius().value(), leg, leg, 0, 0);
        double at = Math.toRadians(f.angle().value());
        // L cos a of gap for each radian; an upright leg gives none, and any angle then reads alike
        double turn = Math.min(FoldKinematics.LARGEST_OPENING, Tolerances.GAP / (leg * Math.cos(at)));
        return new OpeningTolerance(
                most(a -> FoldKinematics.forward(spec, a), at, turn),
                Math.toDegrees(turn),
                most(a -> FoldKinematics.gingival(spec, a), at, turn));
    }

    /** The larger change to either side, within the openings that a fold has. */
    private static double most(DoubleUnaryOperator what, double at, double turn) {
        double here = what.applyAsDouble(at);
        double less = what.applyAsDouble(Math.max(0, at - turn));
        double more = what.applyAsDouble(Math.min(FoldKinematics.LARGEST_OPENING, at + turn));
        return Math.max(Math.abs(more - here), Math.abs(here - less));
    }
}
