package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Geometry of one case's wire, side by side: marks, folds and blank.
 *
 * @param line of the wire through slots and tubes
 * @param blank length to cut for bending, mm
 * @param spare blank in hand less that, mm
 * @param compared what was made beside what was worked out
 */
public record WireGeometry(
        WireLine line,
        SideMarks left,
        SideMarks right,
        FoldOpening plannedLeft,
        FoldOpening plannedRight,
        FoldOpening madeLeft,
        FoldOpening madeRight,
        Measured blank,
        Measured spare,
        List<Comparison> compared) {
    /** Gap to the gingiva that a fold should keep, mm; common practice. */
    public static final double CLEARANCE = 1;

    public WireGeometry {
        compared = List.copyOf(compared);
    }

    public static WireGeometry of(Case c) {
        WireLine line = WireLine.of(c, PatientArch.of(c));
        SideMarks left = SideMarks.of(c, line, Side.LEFT);
        SideMarks right = SideMarks.of(c, line, Side.RIGHT);
        FoldOpening foldLeft = FoldOpening.planned(c, Side.LEFT);
        FoldOpening foldRight = FoldOpening.planned(c, Side.RIGHT);
        List<Comparison> compared = new ArrayList<>(Comparison.of(c, Side.LEFT, left, foldLeft));
        compared.addAll(Comparison.of(c, Side.RIGHT, right, foldRight));
        Measured blank = right.end().plus(left.end());
        return new WireGeometry(
                line,
                left,
                right,
                foldLeft,
                foldRight,
                FoldOpening.made(c, Side.LEFT),
                FoldOpening.made(c, Side.RIGHT),
                blank,
                c.wire().blankLength().minus(blank),
                compared);
    }

    /** The child's arch that the line follows. */
    public PatientArch arch() {
        return line.arch();
    }

    public SideMarks marks(Side side) {
        return side == Side.LEFT ? left : right;
    }

    public FoldOpening planned(Side side) {
        return side == Side.LEFT ? plannedLeft : plannedRight;
    }

    public FoldOpening made(Side side) {
        return side == Side.LEFT ? madeLeft : madeRight;
    }

    /**
     * Buccal tip at which the made fold's lowest run would just keep this gap to the gingiva, degrees: sin t' = sin t +
     * (wanted - gap) / height. Unknown, for want of height, where no tip gives that much.
     */
    public static Measured tipNeeded(Case c, Side side, double clearance) {
        Fold f = c.bench().fold(side);
        Measured sine = Measured.function(
                Unit.RATIO,
                x -> Math.sin(Math.toRadians(x[0])) + (clearance - x[1]) / x[2],
                f.buccalTip(),
                f.clearGingiva(),
                f.height());
        if (sine.known() && Math.abs(sine.value()) >= 1) {
            return Measured.unknown("/bench/" + side.word() + "/height");
        }
        return sine.known()
                ? sine.chain(
                        Math.toDegrees(Math.asin(sine.value())),
                        Math.toDegrees(1 / Math.sqrt(1 - sine.value() * sine.value())),
                        Unit.DEGREE)
                : sine;
    }
}
