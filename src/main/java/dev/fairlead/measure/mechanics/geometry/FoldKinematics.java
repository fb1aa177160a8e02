package dev.fairlead.measure.mechanics.geometry;

import java.util.OptionalDouble;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How a Z-shaped fold moves when both bends are opened by the same angle and the wire keeps its length.
 *
 * <p>Plane geometry: a bend that spanned pi at radius r spans pi - a at radius pi r / (pi - a).
 */
public final class FoldKinematics {
    /** The largest opening considered: leg 2 then stands upright and the piece is no longer a fold. */
    public static final double LARGEST_OPENING = Math.PI / 2;

    private static final double ANGLE_ACCURACY = 1e-13;
    private static final int MAX_EVALUATIONS = 200;

    private FoldKinematics() {}

    /** Radius of an opened bend, mm. */
    public static double openedRadius(FoldSpec fold, double alpha) {
        return Math.PI * fold.r() / (Math.PI - alpha);
    }

    /** Forward travel of the front of the wire, mm: 2 r1 sin a + L (1 - cos a). */
    public static double forward(FoldSpec fold, double alpha) {
        return 2 * openedRadius(fold, alpha) * Math.sin(alpha) + fold.leg() * (1 - Math.cos(alpha));
    }

    /** Travel towards the gingiva in the plane of the fold, mm: 2 r1 (1 + cos a) - 4 r + L sin a. */
    public static double gingival(FoldSpec fold, double alpha) {
        return 2 * openedRadius(fold, alpha) * (1 + Math.cos(alpha)) - fold.height() + fold.leg() * Math.sin(alpha);
    }

    /**
     * Opening of the gap between two neighbouring legs, mm: L sin a, by which a caliper reads more at its free end than
     * at its bend.
     */
    public static double legGap(FoldSpec fold, double alpha) {
        return fold.leg() * Math.sin(alpha);
    }

    /** Forward travel per mm of leg gap for a small opening: 2 r / L. */
    public static double smallAngleForwardPerGap(FoldSpec fold) {
        return 2 * fold.r() / fold.leg();
    }

    /**
     * Opening per bend (radians) that moves the front forward by so many mm; empty when no opening up to
     * {@link #LARGEST_OPENING} does.
     */
    public static OptionalDouble openingForForward(FoldSpec fold, double forward) {
        return invert(alpha -> forward(fold, alpha) - forward);
    }

    private static OptionalDouble invert(UnivariateFunction excess) {
        double atZero = excess.value(0);
        if (atZero == 0) {
            return OptionalDouble.of(0);
        }
        if (!(atZero < 0) || !(excess.value(LARGEST_OPENING) >= 0)) {
            return OptionalDouble.empty();
        }
        var solver = new BracketingNthOrderBrentSolver(ANGLE_ACCURACY, 5);
        return OptionalDouble.of(solver.solve(MAX_EVALUATIONS, excess, 0, LARGEST_OPENING));
    }
}
