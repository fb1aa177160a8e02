package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;

/** Size of a Z-shaped fold, planned and as made, and how far it carries the front forward. */
public final class FoldShape {
    private FoldShape() {}

    /** Radius of a bend at the wire's middle, mm: the planned beak and half the wire. */
    public static Measured plannedRadius(Case c) {
        return c.wire().beakRadius().plus(c.wire().size().times(0.5));
    }

    /** The same for a bend as measured, else as planned, mm. */
    public static Measured bendRadius(Case c, Side side) {
        Fold fold = c.bench().fold(side);
        return fold.bendRadius().known()
                ? fold.bendRadius().plus(c.wire().size().times(0.5))
                : plannedRadius(c);
    }

    /** Straight piece between the two bends, mm. */
    public static Measured leg(Case c, Side side) {
        return c.bench().fold(side).length();
    }

    /**
     * Forward travel, mm, once the gap between the legs was opened by {@code gap} at its free end. A gap wider than the
     * leg no fold can have: past upright each further millimetre counts as one that the fold would need and has not.
     */
    static double forward(double gap, double leg, double r) {
        double upright = Math.max(0, Math.min(1, gap / leg));
        return gap <= leg ? FoldKinematics.forward(plane(leg, r), Math.asin(upright)) : 4 * r + leg + (gap - leg);
    }

    public static Measured forward(Measured gap, Measured leg, Measured r) {
        return Measured.function(Unit.MM, x -> forward(x[0], x[1], x[2]), gap, leg, r);
    }

    /** Forward travel at 90 degrees, where the leg stands upright, mm: 4 r + L. */
    public static Measured reach(Measured leg, Measured r) {
        return r.times(4).plus(leg);
    }

    /** A fold with equal legs in a plane parallel to the tooth row. */
    static FoldSpec plane(double leg, double r) {
        return new FoldSpec(r, leg, leg, 0, 0);
    }
}
