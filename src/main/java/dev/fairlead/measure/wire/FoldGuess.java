package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.geometry.FoldRange;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * A fold for the beam model: as measured on the bench, and where it was not, as planned with a margin to both sides.
 */
final class FoldGuess {
    /** Margins of a fold that was planned and not measured, mm; a judgement of this model, no source. */
    static final double RADIUS_MARGIN = 0.25;

    static final double LEG_MARGIN = 1;
    /** Bend radii at the wire's middle where no beak is known either, mm; a judgement of this model, no source. */
    private static final double USUAL_RADIUS = 1;

    private static final double LEAST_RADIUS = 0.6;
    private static final double MOST_RADIUS = 1.25;
    private static final double LEAST_LEG = 1;

    private FoldGuess() {}

    /** True when radius, length and tip of both folds were measured. */
    static boolean measured(Case c) {
        for (Side side : Side.values()) {
            Fold f = c.bench().fold(side);
            if (!f.bendRadius().known() || !f.length().known() || !f.buccalTip().known()) {
                return false;
            }
        }
        return true;
    }

    /**
     * The fold of one side; the length of its tube must be known. A steeper fold is softer than an upright one, so the
     * stiffest stands upright.
     */
    static FoldRange of(Case c, Side side) {
        Fold f = c.bench().fold(side);
        double half = c.wire().size().value() / 2;
        double r = FoldShape.bendRadius(c, side).known()
                ? FoldShape.bendRadius(c, side).value()
                : USUAL_RADIUS;
        double soft = r;
        double stiff = r;
        if (!f.bendRadius().known()) {
            boolean planned = c.wire().beakRadius().known();
            soft = planned ? r + RADIUS_MARGIN : MOST_RADIUS;
            stiff = planned ? Math.max(r - RADIUS_MARGIN, half + 0.1) : LEAST_RADIUS;
        }
        double leg = f.length().known()
                ? f.length().value()
                : c.hardware().tube(side).length().value();
        double margin = f.length().known() ? 0 : LEG_MARGIN;
        Measured tip = f.buccalTip();
        double nominal = tip.known() ? tip.value() : SideMarks.TIP;
        return new FoldRange(
                BeamCase.fold(r, leg, nominal),
                BeamCase.fold(soft, leg + margin, nominal),
                BeamCase.fold(stiff, Math.max(leg - margin, LEAST_LEG), tip.known() ? nominal : 0));
    }
}
