package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.geometry.Require;

/**
 * Straight wire to cut before bending.
 *
 * @param perimeter of the plane arch form between the tubes' mesial ends, mm
 * @param runRight wire from the midline to the end of the right fold's third leg, with its buccal and vertical offsets,
 *     mm
 * @param runLeft the same on the left, mm
 * @param foldRight wire in the right fold, mm
 * @param foldLeft wire in the left fold, mm
 * @param tails both tails: in the tube and distal of it, mm
 */
public record Blank(
        double perimeter, double runRight, double runLeft, double foldRight, double foldLeft, double tails) {
    private static final Mesh RULER = new Mesh(1, 3, true);

    /** Lengths of an arch with closed folds; tail is the wire left distal of each tube, mm. */
    public static Blank of(ArchGeometry arch, FoldSpec right, FoldSpec left, double tail) {
        Require.notNegative("tail", tail);
        var closed = new Setup(
                new WireSpec(1, 1, 0),
                arch,
                right,
                left,
                0,
                0,
                TailSupport.SPIN,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LINEAR,
                RULER);
        boolean alike = left.equals(right) && arch.curve().symmetric();
        Centreline line = alike ? Centreline.rightHalf(closed) : Centreline.of(closed);
        double runRight = line.length(line.right.foldEnd(), line.midline);
        return new Blank(
                arch.curve().perimeter(),
                runRight,
                alike ? runRight : line.length(line.midline, line.left.foldEnd()),
                right.wireLength(),
                left.wireLength(),
                2 * (arch.tubeLength() + tail));
    }

    /** Wire from one fold's third leg to the other's, mm. */
    public double archRun() {
        return runRight + runLeft;
    }

    /** Whole length to cut, mm. */
    public double total() {
        return archRun() + foldRight + foldLeft + tails;
    }
}
