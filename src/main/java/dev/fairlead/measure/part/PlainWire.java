package dev.fairlead.measure.part;

import dev.fairlead.measure.Say;
import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/** Geometry of the wire from its marks and folds alone; the misfit of an arch form is not worked out here. */
final class PlainWire implements WirePart {
    /** Wire left distal of each tube until it is cut, mm; common practice. */
    private static final double TAIL = 2;
    /** Swing per mm of stand-off: 0.7 mm (tail hinged) to 1.5 mm (tail free to turn) at 1.5 mm in the beam model. */
    private static final double SWING = (0.7 + 1.5) / 2 / 1.5;
    private static final double SWING_SD = (1.5 - 0.7) / 2 / 1.5 / 2;
    private static final Measured ABSENT_RMS = Measured.unknown("/bench/misfitRms");
    private static final Measured ABSENT_WORST = Measured.unknown("/bench/misfitWorst");

    @Override
    public Misfit misfit(Case c, Workbook book) {
        return new Misfit(ABSENT_RMS, ABSENT_WORST);
    }

    @Override
    public Measured blankSpare(Case c, Workbook book) {
        Measured right = taken(c, Side.RIGHT);
        Measured left = taken(c, Side.LEFT);
        Measured spare = c.wire().blankLength().minus(right).minus(left);
        book.add(() -> Working.of("wire.blank-spare", "Wire", "blank length to spare", spare,
                "blank - sum over both sides of (first mark + 2 pi r + leg + tube + 2 mm tail)",
                Say.num(c.wire().blankLength()) + " - " + Say.num(right) + " - " + Say.num(left), "", "geometry"));
        return spare;
    }

    private static Measured taken(Case c, Side side) {
        return c.bench().fold(side).firstMark()
                .plus(FoldShape.bendRadius(c, side).times(2 * Math.PI))
                .plus(FoldShape.leg(c, side))
                .plus(c.hardware().tube(side).length())
                .plus(TAIL);
    }

    @Override
    public Measured plannedHeight(Case c, Workbook book) {
        Measured height = c.wire().beakRadius().plus(c.wire().size().times(0.5)).times(4);
        book.add(() -> Working.of("wire.planned-fold-height", "Wire", "height that the planned beak gives a fold", height,
                "4 (beak radius + half the wire), from the wire's middle to its middle",
                "4 (" + Say.num(c.wire().beakRadius()) + " + " + Say.num(c.wire().size()) + " / 2)", "", "geometry"));
        return height;
    }

    @Override
    public Measured swing(Case c, Side side, Workbook book) {
        Measured standOff = c.plan().standOff();
        Measured swing = standOff.times(SWING).withError("swing of a fold per mm of stand-off", standOff.known() ? SWING_SD * standOff.value() : 0);
        book.add(() -> Working.of("wire.swing." + Say.side(side), "Wire", "swing of the " + Say.side(side) + " fold towards the cheek", swing,
                "0.73 mm per mm of planned stand-off", "0.73 x " + Say.num(standOff),
                "Between a tail that hinges in the tube and one that turns freely.", "mechanics-model"));
        return swing;
    }

    @Override
    public Measured forward(Case c, Side side, Measured gapOpened) {
        return FoldShape.forward(gapOpened, FoldShape.leg(c, side), FoldShape.bendRadius(c, side));
    }

    @Override
    public Measured reach(Case c, Side side) {
        return FoldShape.reach(FoldShape.leg(c, side), FoldShape.bendRadius(c, side));
    }
}
