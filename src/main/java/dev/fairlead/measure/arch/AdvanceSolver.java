package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.position.BuccalSegments;
import dev.fairlead.measure.position.Sides;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;

/**
 * Solves how far the incisors have to go forward until one side has its room. The curve tells only what a millimetre of
 * advancement gains; what is lacking comes from the measured segments.
 */
final class AdvanceSolver {
    private static final double STEP = 1e-3;

    private AdvanceSolver() {}

    static PositionResult.SideNeed of(Readings readings, SideSpace space, PatientArch arch) {
        Case c = readings.ofCase();
        Measured lateral = Laterals.distal(readings, space.side());
        Measured chord = chord(space, lateral, arch);
        Measured planned = c.plan().advance(space.side());
        return new PositionResult.SideNeed(
                space.side(),
                chord,
                along(space, lateral, arch, chord),
                space.shortage(),
                planned,
                planned.minus(chord));
    }

    static Measured chord(SideSpace space, Measured lateral, PatientArch arch) {
        Measured[] inputs = new Measured[arch.inputs().length + 2];
        System.arraycopy(arch.inputs(), 0, inputs, 2, arch.inputs().length);
        inputs[0] = space.shortage();
        inputs[1] = lateral;
        boolean left = space.side() == Side.LEFT;
        return Measured.function(
                Unit.MM,
                x -> {
                    double[] of = new double[x.length - 2];
                    System.arraycopy(x, 2, of, 0, of.length);
                    return chord(arch.curve(of), left, x[1], x[0]);
                },
                inputs);
    }

    /**
     * Advancement that lengthens the straight distance from lateral to molar by so much; no more than flat across is
     * given back.
     */
    static double chord(ArchCurve curve, boolean left, double lateral, double more) {
        ArcRuler ruler = curve.ruler();
        double at = Math.min(lateral, 0.9 * Math.min(ruler.end(), -ruler.start()));
        Point from = curve.at(ruler.parameterAt(left ? at : -at));
        Point to = curve.at(left ? 1 : -1);
        double across = Math.abs(to.x() - from.x());
        double needed = Math.max(from.distance(to) + more, across);
        return Math.sqrt((needed - across) * (needed + across)) + to.y() - from.y();
    }

    /**
     * Unknown for the same reasons as by chord. The value is solved; its error is that of the shortage alone, by the
     * gain of the arch at the solution.
     */
    private static Measured along(SideSpace space, Measured lateral, PatientArch arch, Measured chord) {
        Measured shortage = space.shortage();
        if (!shortage.known() || !lateral.known() || !arch.known()) {
            return chord;
        }
        try {
            BuccalSegments segments = BuccalSegments.ofWhole(arch.curve(), Sides.both(lateral.value()));
            double value = solved(segments, space.side(), shortage.value());
            double slope = (solved(segments, space.side(), shortage.value() + STEP) - value) / STEP;
            return shortage.chain(value, slope, Unit.MM);
        } catch (IllegalArgumentException none) {
            return Measured.notApplicable();
        }
    }

    private static double solved(BuccalSegments segments, Side side, double more) {
        Sides needed = segments.along().map(r -> r + more);
        Sides advance = segments.advancementAlongArch(needed);
        return side == Side.LEFT ? advance.left() : advance.right();
    }
}
