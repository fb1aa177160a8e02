package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/** How one case's wire fits the arch, what it takes from the blank, and how its folds open. */
public final class WireMeasures {
    /** Swing per mm of stand-off: 0.7 mm (tail hinged) to 1.5 mm (tail free to turn) at 1.5 mm in the beam model. */
    private static final double SWING = (0.7 + 1.5) / 2 / 1.5;

    private static final double SWING_SD = (1.5 - 0.7) / 2 / 1.5 / 2;

    private WireMeasures() {}

    /** Blank length less what arch, folds, tubes and tails take, mm. */
    public static Measured blankSpare(Case c, WireMarks marks, Workbook book) {
        if (!book.wanted()) {
            return marks.spare();
        }
        WireGeometry geometry = WireGeometry.of(c);
        WireWords.write(geometry, c, book);
        return geometry.spare();
    }

    /** Height that the planned beak gives a fold, mm. */
    public static Measured plannedHeight(Case c, Workbook book) {
        Measured height = FoldShape.plannedRadius(c).times(4);
        book.add(() -> Working.of(
                "wire.planned-fold-height",
                "Wire",
                "height that the planned beak gives a fold",
                height,
                "4 (beak radius + half the wire), from the wire's middle to its middle",
                "4 (" + Say.num(c.wire().beakRadius()) + " + "
                        + Say.num(c.wire().size()) + " / 2)",
                "",
                "geometry"));
        return height;
    }

    /** How far the fold swings towards the cheek at the planned activation, mm. */
    public static Measured swing(Case c, Side side) {
        Measured standOff = c.plan().standOff(side);
        return standOff.times(SWING)
                .withError("swing of a fold per mm of stand-off", standOff.known() ? SWING_SD * standOff.value() : 0);
    }

    /** The same, with its working. */
    public static Measured swing(Case c, Side side, Workbook book) {
        Measured standOff = c.plan().standOff(side);
        Measured swing = swing(c, side);
        book.add(() -> Working.of(
                "wire.swing." + Say.side(side),
                "Wire",
                "swing of the " + Say.side(side) + " fold towards the cheek",
                swing,
                "0.73 mm per mm of planned stand-off",
                "0.73 x " + Say.num(standOff),
                "Between a tail that hinges in the tube and one that turns freely.",
                "mechanics-model"));
        return swing;
    }

    /** How far the fold carries the front forward once its gap was opened by so many mm in all, mm. */
    public static Measured forward(Case c, Side side, Measured gapOpened) {
        return FoldShape.forward(gapOpened, FoldShape.leg(c, side), FoldShape.bendRadius(c, side));
    }

    /** How far a fold can carry the front forward before it is no longer a fold, mm. */
    public static Measured reach(Case c, Side side) {
        return FoldShape.reach(FoldShape.leg(c, side), FoldShape.bendRadius(c, side));
    }
}
