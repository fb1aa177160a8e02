package dev.fairlead.report.sheet;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldReadings;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The order of bending one case's wire, step by step with its numbers; common practice, no source. Tolerances are those
 * that the criteria allow.
 */
final class BendingOrder {
    private final Case c;
    private final WireGeometry g;
    private final Tolerances allowed;

    /** One step: what it is called, and what to do with this case's numbers. */
    record Step(String title, String text) {}

    BendingOrder(Case c, WireGeometry g, Tolerances allowed) {
        this.c = c;
        this.g = g;
        this.allowed = allowed;
    }

    /** The steps, first to last. */
    List<Step> steps() {
        String beak = c.wire().beakRadius().known()
                ? Numbers.plain(c.wire().beakRadius().value(), 2) + " mm radius"
                : "as planned";
        String gap = leg(Side.RIGHT).known() && leg(Side.LEFT).known()
                ? " "
                        + tolerance(allowed.gap(
                                Math.min(leg(Side.RIGHT).value(), leg(Side.LEFT).value())))
                : "";
        String higher = " + " + Tolerances.number(allowed.higher());
        String angle = Tolerances.degrees(allowed.parallel());
        return List.of(
                new Step(
                        "Midline",
                        "Blank of at least " + number(g.blank())
                                + " mm. Mark its middle with a marker, never with a file."),
                new Step(
                        "Seat",
                        "On the working model: midline mark between 41 and 31, wire in all four slots and along the tubes."),
                new Step(
                        "Mark the first bend, right",
                        number(g.right().firstBend()) + " " + tolerance(allowed.firstBend())
                                + " mm from the midline along the wire: "
                                + number(g.right().offset()) + " " + tolerance(allowed.firstBend())
                                + " mm distal to the distal end of the tube. The mark is the middle of the bend."),
                new Step(
                        "First bend",
                        "Round beak (" + beak + ") on the occlusal side. Turn the distal end up and forwards, 180 "
                                + angle + ": legs parallel. Gap "
                                + number(readings(Side.RIGHT).gapInside()) + gap
                                + " mm inside, " + number(readings(Side.RIGHT).gapOutside()) + gap + " mm outside."),
                new Step(
                        "Mark the second bend",
                        "One tube length on: straight leg of " + each(this::leg) + " " + tolerance(allowed.length())
                                + " mm. The mark is " + each(this::secondFromFirst) + " "
                                + tolerance(allowed.length()) + " mm along the wire from the first."),
                new Step(
                        "Second bend",
                        "Round beak on the occlusal side again. Turn the end up and backwards, 180 " + angle
                                + ", until it is parallel to the legs. Gap as in 4."),
                new Step(
                        "Measure the fold",
                        number(readings(Side.RIGHT).heightOutside()) + higher + " mm over all three runs, "
                                + number(readings(Side.RIGHT).heightInside()) + higher
                                + " mm inside; to the wire's middle "
                                + number(g.planned(Side.RIGHT).height()) + higher
                                + " mm. Higher: anew, nearer to the tip of the beak."),
                new Step(
                        "Tip to the cheek",
                        Numbers.plain(SideMarks.TIP, 0) + " " + Tolerances.degrees(allowed.square())
                                + " from upright, until it stands at least " + Tolerances.number(allowed.gingiva())
                                + " mm off the gingiva."),
                new Step(
                        "Try in",
                        "The second bend stops at the mesial end of the tube; the wire lies in every slot by itself, no gap over "
                                + Tolerances.number(allowed.passive()) + " mm."),
                new Step(
                        "Second side, left",
                        "Only with the right fold seated against its tube: mark the left first bend "
                                + number(g.left().offset())
                                + " " + tolerance(allowed.firstBend())
                                + " mm distal to the distal end of its tube. Then as 4 to 9. "
                                + "Sides within " + Tolerances.number(allowed.sides()) + " mm."),
                new Step(
                        "Cut flush",
                        "With the distal end of each tube, no more than " + Tolerances.number(allowed.proud())
                                + " mm proud. Hold the piece that is cut off, eyes covered; count both pieces."),
                new Step(
                        "At the chair: open, level",
                        "Stand-off " + each(s -> g.planned(s).standOff())
                                + allowed(OpeningTolerance::standOff) + " mm: open each bend by "
                                + each(s -> g.planned(s).angle(), 0) + degrees()
                                + " until the gap at its free end reads "
                                + each(s -> readings(s).openInside()) + " "
                                + tolerance(Tolerances.GAP) + " mm inside, "
                                + each(s -> readings(s).openOutside()) + " " + tolerance(Tolerances.GAP)
                                + " mm outside, " + each(s -> g.planned(s).gap()) + " "
                                + tolerance(Tolerances.GAP) + " more than at its bend. The front sinks "
                                + each(s -> g.planned(s).drop()) + allowed(OpeningTolerance::drop)
                                + " mm: bend the run before the fold up as much, to within "
                                + Tolerances.number(allowed.level()) + " mm of the slots."));
    }

    /** What an opening may be off by, the larger of both sides; empty where the opening is not known. */
    private String allowed(ToDoubleFunction<OpeningTolerance> what) {
        double most = most(what);
        return Double.isNaN(most) ? "" : " ± " + Numbers.plain(most, 1);
    }

    private String degrees() {
        double most = most(OpeningTolerance::angle);
        return Double.isNaN(most) ? "°" : " ± " + Numbers.plain(most, 0) + "°";
    }

    private double most(ToDoubleFunction<OpeningTolerance> what) {
        return Math.max(
                what.applyAsDouble(OpeningTolerance.of(g.plannedRight())),
                what.applyAsDouble(OpeningTolerance.of(g.plannedLeft())));
    }

    FoldReadings readings(Side side) {
        return FoldReadings.of(g.planned(side), c.wire().size());
    }

    private Measured leg(Side side) {
        return g.planned(side).leg();
    }

    private Measured secondFromFirst(Side side) {
        SideMarks m = g.marks(side);
        return m.secondBend().minus(m.firstBend());
    }

    private static String tolerance(double t) {
        return Tolerances.plusMinus(t);
    }

    private String each(Function<Side, Measured> what) {
        return each(what, 1);
    }

    /** One number where both sides round to the same, else both with their side. */
    private static String each(Function<Side, Measured> what, int decimals) {
        String right = number(what.apply(Side.RIGHT), decimals);
        String left = number(what.apply(Side.LEFT), decimals);
        return right.equals(left) ? right : "R " + right + ", L " + left;
    }

    private static String number(Measured m) {
        return number(m, 1);
    }

    private static String number(Measured m, int decimals) {
        return m.known() ? Numbers.plain(m.value(), decimals) : "____";
    }
}
