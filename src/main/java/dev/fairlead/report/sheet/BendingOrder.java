package dev.fairlead.report.sheet;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldShape;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;
import java.util.function.Function;

/**
 * The order of bending one case's wire, step by step with its numbers; common practice, no source. Tolerances are those
 * that the criteria of the bench allow.
 */
final class BendingOrder {
    private final Case c;
    private final WireGeometry g;
    private final Tolerances tolerances;

    /** What the criteria of the bench allow around a number, in words. */
    record Tolerances(String firstBend, String foldLength, String angle, String passive, String flush) {}

    BendingOrder(Case c, WireGeometry g, Tolerances tolerances) {
        this.c = c;
        this.g = g;
        this.tolerances = tolerances;
    }

    /** The steps, first to last. */
    List<String> steps() {
        Measured r = FoldShape.plannedRadius(c);
        Measured d = c.wire().size();
        String length = each(s -> g.planned(s).leg());
        String beak = c.wire().beakRadius().known()
                ? Numbers.plain(c.wire().beakRadius().value(), 2) + " mm radius"
                : "as planned";
        return List.of(
                "Mark the midline of the blank with a marker, never with a file.",
                "Seat the blank on the working model: midline mark between 41 and 31, wire in all four slots and along the tubes.",
                "First bend, right side first. Mark it " + each(s -> g.marks(s).firstBend())
                        + " from the midline mark along the wire; that is "
                        + each(s -> g.marks(s).offset()) + " distal to the distal end of the tube "
                        + tolerances.firstBend() + ". The mark is the middle of the bend.",
                "Grip at the mark with the round beak (" + beak
                        + ") on the occlusal side of the wire. Turn the distal end up and forwards, 180°, until the legs are parallel "
                        + tolerances.angle() + ". The gap between the legs is "
                        + mm(r.times(2).minus(d))
                        + " inside; over both it is " + mm(r.times(2).plus(d)) + ".",
                "Second bend: mark it " + each(s -> g.marks(s).secondBend())
                        + " from the midline mark along the wire, so that the straight leg between the bends is "
                        + length + " "
                        + tolerances.foldLength()
                        + ", as long as the tube. Round beak on the occlusal side again; turn the end up and backwards, 180°, until it is parallel to the legs "
                        + tolerances.angle() + ".",
                "Measure the fold: " + mm(r.times(4).plus(d)) + " over the highest and lowest run outside, "
                        + mm(r.times(4).minus(d))
                        + " inside; to the wire's middle, as it is entered in the case, no more than "
                        + down(r.times(4)) + ". Higher: make the fold anew nearer to the tip of the beak.",
                "Tip the fold towards the cheek, " + Numbers.plain(SideMarks.TIP, 0)
                        + "° from upright, seen from behind, until it stands 1 mm off the gingiva.",
                "Try it in: the second bend stops at the mesial end of the tube and the wire lies in every slot by itself, no gap over "
                        + tolerances.passive() + ".",
                "Now the left side, with the right one seated against its tube: mark, bend, tip and try in as in 3 to 8.",
                "Cut both ends flush with the distal end of the tube " + tolerances.flush()
                        + ". Hold the piece that is cut off, eyes covered; count both pieces.");
    }

    /** One number where both sides round to the same, else both with their side. */
    private String each(Function<Side, Measured> what) {
        String right = mm(what.apply(Side.RIGHT));
        String left = mm(what.apply(Side.LEFT));
        return right.equals(left) ? right : right + " right, " + left + " left";
    }

    /** To a tenth below, for a number that must not be passed. */
    private static String down(Measured m) {
        return m.known() ? Numbers.plain(Math.floor(m.value() * 10 + 1e-9) / 10, 1) + " mm" : "____ mm";
    }

    private static String mm(Measured m) {
        return m.known() ? Numbers.plain(m.value(), 1) + " mm" : "____ mm";
    }
}
