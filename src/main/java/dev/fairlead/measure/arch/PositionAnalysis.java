package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.position.Cephalometry;
import dev.fairlead.measure.position.PerimeterGain;
import dev.fairlead.measure.position.PublishedGain;
import dev.fairlead.measure.position.SidedPlan;
import dev.fairlead.measure.position.Sides;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Works out needed advancement, what the plan gives, and where it leaves the incisors. */
public final class PositionAnalysis {
    private PositionAnalysis() {}

    /**
     * Angles and distances after the plan: inclination, compensated inclination (degrees), edge to A-Pog, overjet,
     * overbite (mm).
     */
    public record After(
            Measured inclination, Measured compensated, Measured toAPog, Measured overjet, Measured overbite) {}

    public static PositionResult of(Readings readings, SpaceResult space, PatientArch arch, After after) {
        Case c = readings.ofCase();
        PositionResult.SideNeed left = AdvanceSolver.of(readings, space.left(), arch);
        PositionResult.SideNeed right = AdvanceSolver.of(readings, space.right(), arch);
        Measured zero = Measured.exact(0, Unit.MM);
        Measured mean = c.plan().advanceLeft().plus(c.plan().advanceRight()).times(0.5);
        return new PositionResult(
                left,
                right,
                left.chord().max(right.chord()).max(zero),
                left.chord().max(zero).plus(right.chord().max(zero)).times(0.5),
                gains(arch, mean, space.totalShortage()),
                shifts(readings, after),
                sided(readings, arch));
    }

    /** Advance that one side needs on this arch, mm; negative where it has room to spare, unknown without an arch. */
    public static Measured needed(Readings readings, SideSpace side, PatientArch arch) {
        return AdvanceSolver.chord(side, Laterals.distal(readings, side.side()), arch);
    }

    private static List<PositionResult.Gain> gains(PatientArch arch, Measured mean, Measured shortage) {
        List<PositionResult.Gain> gains = new ArrayList<>();
        for (PublishedGain g : PublishedGain.values()) {
            gains.add(gain(
                    "published " + g.name().toLowerCase(Locale.ROOT), "mutinelli-2000", g.perMm(), mean, shortage));
        }
        gains.add(gain("rule of thumb", "two-to-one-rule", PublishedGain.RULE, mean, shortage));
        if (arch.known() && mean.known()) {
            ArchCurve curve = arch.curve();
            double perMm = mean.value() > 0
                    ? PerimeterGain.of(curve, mean.value()) / mean.value()
                    : PerimeterGain.perMm(curve);
            gains.add(gain("this arch", "geometry", perMm, mean, shortage));
        }
        gains.sort(Comparator.comparingDouble(PositionResult.Gain::perMm));
        return gains;
    }

    private static PositionResult.Gain gain(
            String name, String source, double perMm, Measured mean, Measured shortage) {
        Measured gained = mean.times(perMm);
        return new PositionResult.Gain(name, source, perMm, gained, shortage.minus(gained));
    }

    private static List<PositionResult.Shift> shifts(Readings readings, After after) {
        Case c = readings.ofCase();
        Measured before = readings.incisorMandibular();
        return List.of(
                new PositionResult.Shift(
                        "lower incisor to mandibular plane",
                        Unit.DEGREE,
                        before,
                        after.inclination(),
                        90,
                        5,
                        "tweed-1954"),
                new PositionResult.Shift(
                        "the same, compensated for the mandibular plane",
                        Unit.DEGREE,
                        before.plus(readings.mandibularPlane()).plus(-Cephalometry.FMA_NORM),
                        after.compensated(),
                        90,
                        5,
                        "zatarain-2016"),
                new PositionResult.Shift(
                        "lower incisor to A-Pog", Unit.MM, readings.incisorToAPog(), after.toAPog(), 1, 2, "ricketts"),
                new PositionResult.Shift("overjet", Unit.MM, c.bite().overjet(), after.overjet(), 2, 1, "from-memory"),
                new PositionResult.Shift(
                        "overbite", Unit.MM, c.bite().overbite(), after.overbite(), 2, 1, "from-memory"));
    }

    /**
     * The planned advancement is that of the lateral incisor of each side; the folds lie further out and have to travel
     * further apart.
     */
    private static Optional<PositionResult.Sided> sided(Readings readings, PatientArch arch) {
        Case c = readings.ofCase();
        Measured left = Laterals.middle(readings, Side.LEFT);
        Measured right = Laterals.middle(readings, Side.RIGHT);
        if (!arch.known()
                || !left.plus(right).known()
                || !c.plan().advanceLeft().plus(c.plan().advanceRight()).known()) {
            return Optional.empty();
        }
        ArchCurve curve = arch.curve();
        double reach = 0.9 * Math.min(curve.ruler().end(), -curve.ruler().start());
        double lateral = (curve.atArcLength(Math.min(left.value(), reach)).x()
                        - curve.atArcLength(-Math.min(right.value(), reach)).x())
                / 2;
        SidedPlan openings = SidedPlan.forLaterals(
                new Sides(
                        c.plan().advanceLeft().value(), c.plan().advanceRight().value()),
                curve.width(),
                lateral);
        return Optional.of(new PositionResult.Sided(openings, openings.front(curve.width(), curve.depth(), lateral)));
    }
}
