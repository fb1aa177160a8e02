package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One fold and what opening it does.
 *
 * @param radius of the bends at the wire's middle, mm
 * @param leg straight piece between the two bends, mm
 * @param height of the closed fold from the tube to its lowest run, at the wire's middle, mm
 * @param standOff wanted, mm
 * @param angle by which each bend has to open for it, degrees
 * @param gap by how much the gap between the legs has to be wider at its free end than at its bend, mm
 * @param gain forward travel per mm of gap over that opening
 * @param gainAtFirst forward travel per mm of gap at the very first
 * @param drop how far the front sinks towards the gingiva unless it is levelled, mm
 * @param reach forward travel that the fold can give before its leg stands upright, mm
 * @param spare reach less the whole planned advance, mm
 */
public record FoldOpening(
        Side side,
        Measured radius,
        Measured leg,
        Measured height,
        Measured standOff,
        Measured angle,
        Measured gap,
        Measured gain,
        Measured gainAtFirst,
        Measured drop,
        Measured reach,
        Measured spare) {

    /** The fold that the plan gives: legs as long as the tube, bends of the planned beak. */
    static FoldOpening planned(Case c, Side side) {
        return of(
                c,
                side,
                FoldShape.plannedRadius(c),
                c.hardware().tube(side).length(),
                Measured.exact(SideMarks.TIP, Unit.DEGREE));
    }

    /** The fold as it was measured on the bench. */
    static FoldOpening made(Case c, Side side) {
        return of(
                c,
                side,
                FoldShape.bendRadius(c, side),
                FoldShape.leg(c, side),
                c.bench().fold(side).buccalTip());
    }

    private static FoldOpening of(Case c, Side side, Measured r, Measured leg, Measured tip) {
        Measured wanted = c.plan().standOff(side);
        Measured reach = FoldShape.reach(leg, r);
        // a stand-off beyond the reach of the fold has no opening; another stand-off would
        boolean possible = !wanted.known() || !reach.known() || wanted.value() <= reach.value();
        Measured standOff =
                possible ? wanted : Measured.unknown(List.of(c.plan().standOffPointer(side)));
        Measured angle = Measured.function(Unit.DEGREE, x -> Math.toDegrees(opening(x)), standOff, leg, r);
        Measured gap = Measured.function(Unit.MM, x -> FoldKinematics.legGap(fold(x), opening(x)), standOff, leg, r);
        Measured gain = Measured.function(Unit.RATIO, FoldOpening::gain, standOff, leg, r);
        Measured first = Measured.function(
                Unit.RATIO, x -> FoldKinematics.smallAngleForwardPerGap(FoldShape.plane(x[0], x[1])), leg, r);
        Measured drop = Measured.function(
                Unit.MM,
                x -> FoldKinematics.gingival(fold(x), opening(x)) * Math.cos(Math.toRadians(x[3])),
                standOff,
                leg,
                r,
                tip);
        return new FoldOpening(
                side,
                r,
                leg,
                r.times(4),
                wanted,
                angle,
                gap,
                gain,
                first,
                drop,
                reach,
                reach.minus(c.plan().advance(side)));
    }

    /** Stand-off x[0] by the gap that gives it; where nothing is opened, what the very first of the gap would give. */
    private static double gain(double[] x) {
        double gap = FoldKinematics.legGap(fold(x), opening(x));
        return gap > 0 ? x[0] / gap : FoldKinematics.smallAngleForwardPerGap(fold(x));
    }

    private static FoldSpec fold(double[] x) {
        return FoldShape.plane(x[1], x[2]);
    }

    /** Opening of each bend for stand-off x[0], radians; upright where an error takes it beyond the reach. */
    private static double opening(double[] x) {
        OptionalDouble alpha = FoldKinematics.openingForForward(fold(x), x[0]);
        return alpha.orElse(x[0] <= 0 ? 0 : FoldKinematics.LARGEST_OPENING);
    }
}
