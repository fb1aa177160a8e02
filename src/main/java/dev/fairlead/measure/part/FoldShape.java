package dev.fairlead.measure.part;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;

/** Plane geometry of a Z-shaped fold whose two bends are opened by the same angle while the wire keeps its length. */
final class FoldShape {
    private FoldShape() {}

    /** Radius of a bend at the wire's middle, mm: the bend as measured, else the planned beak, and half the wire. */
    static Measured bendRadius(Case c, Side side) {
        Fold fold = c.bench().fold(side);
        Measured inner = fold.bendRadius().known() ? fold.bendRadius() : c.wire().beakRadius();
        return inner.plus(c.wire().size().times(0.5));
    }

    /** Straight piece between the two bends, mm. */
    static Measured leg(Case c, Side side) {
        return c.bench().fold(side).length();
    }

    /** Forward travel, mm, once the gap between the legs was opened by {@code gap} at its free end: gap = L sin a, travel = 2 r' sin a + L (1 - cos a). */
    static double forward(double gap, double leg, double r) {
        double sin = Math.max(0, Math.min(1, gap / leg));
        double angle = Math.asin(sin);
        return 2 * (Math.PI * r / (Math.PI - angle)) * sin + leg * (1 - Math.cos(angle));
    }

    static Measured forward(Measured gap, Measured leg, Measured r) {
        return Measured.function(Unit.MM, x -> forward(x[0], x[1], x[2]), gap, leg, r);
    }

    /** Forward travel at 90 degrees, where the leg stands upright, mm: 4 r + L. */
    static Measured reach(Measured leg, Measured r) {
        return r.times(4).plus(leg);
    }
}
