package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.FoldReadings;
import dev.fairlead.measure.wire.FoldShape;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Marks, blank, folds and what was made of them, as tables. */
final class GeometrySections {
    private static final String GEOMETRY = "geometry";
    private static final String PRACTICE = "common-practice";
    private static final String MODEL = "mechanics-model";
    private static final int USUAL = 1;
    /** Decimals of lengths that are near 1 mm or less. */
    private static final int FINE = 2;

    private final Case c;
    private final WireGeometry g;

    GeometrySections(Case c) {
        this.c = c;
        this.g = WireGeometry.of(c);
    }

    List<Section> all() {
        List<Section> all =
                new ArrayList<>(List.of(marks(), blank(), opening("fold", "The fold as planned", g::planned)));
        if (g.compared().stream().noneMatch(one -> one.made().known())) {
            all.add(new Section.Draft("fold-made", "The fold as it was measured", List.of())
                    .note("Nothing of the folds has been measured on the bench yet.")
                    .done());
        } else {
            all.addAll(List.of(
                    opening("fold-made", "The fold as it was measured", g::made),
                    compared(Side.RIGHT),
                    compared(Side.LEFT)));
        }
        return all;
    }

    private static List<Cell> sides(Function<Side, Measured> what) {
        return List.of(Cell.of(what.apply(Side.RIGHT)), Cell.of(what.apply(Side.LEFT)));
    }

    private List<Cell> marks(Function<SideMarks, Measured> what) {
        return sides(s -> what.apply(g.marks(s)));
    }

    private Section marks() {
        return new Section.Draft("marks", "Marks along the wire from the midline mark", Section.SIDES)
                .line("tube", "mesial end of the tube, through the slots", marks(SideMarks::tube), GEOMETRY)
                .line("firstBend", "first bend, its middle", marks(SideMarks::firstBend), GEOMETRY, MODEL)
                .line(
                        "firstBendOffset",
                        "  which is distal to the tube by",
                        marks(SideMarks::offset),
                        GEOMETRY,
                        PRACTICE)
                .line("secondBend", "second bend, its middle; becomes the stop", marks(SideMarks::secondBend), GEOMETRY)
                .line("stop", "end of the second bend, into the tube", marks(SideMarks::stop), GEOMETRY)
                .line("cut", "cut, flush with the distal end of the tube", marks(SideMarks::cut), GEOMETRY)
                .line("end", "end of the blank, with a tail to hold", marks(SideMarks::end), PRACTICE)
                .note(lineDrawn() + " Mark the second side with the first one seated against its tube.")
                .done();
    }

    /** Which line the marks follow. */
    private String lineDrawn() {
        return "Marks follow the middle of the wire through slots and tubes, "
                + Numbers.text(g.line().front(), 2) + " before the incisors"
                + (g.line().slotsMeasured() ? "." : " (assumed, from memory; 1.2 to 1.9 mm).");
    }

    private Section blank() {
        Measured bend = FoldShape.plannedRadius(c).times(Math.PI);
        return new Section.Draft("blank", "Wire that is taken up", Section.SIDES)
                .line(
                        "leg",
                        "fold length, as long as the tube",
                        sides(s -> c.hardware().tube(s).length()),
                        PRACTICE)
                .line("bend", "wire in each bend, pi r", List.of(Cell.of(bend, FINE), Cell.of(bend, FINE)), GEOMETRY)
                .line("fold", "wire in the whole fold", marks(SideMarks::foldWire), GEOMETRY)
                .line("blank", "blank to cut", List.of(Cell.of(g.blank())), GEOMETRY, PRACTICE)
                .line("blankInHand", "blank in hand", List.of(Cell.of(c.wire().blankLength())))
                .line("spare", "to spare", List.of(Cell.of(g.spare())), GEOMETRY)
                .done();
    }

    private Section opening(String id, String title, Function<Side, FoldOpening> fold) {
        boolean made = id.endsWith("made");
        Section.Draft t = new Section.Draft(id, title, Section.SIDES)
                .line(
                        "radius",
                        "radius of the bends at the wire's middle",
                        List.of(
                                Cell.of(fold.apply(Side.RIGHT).radius(), FINE),
                                Cell.of(fold.apply(Side.LEFT).radius(), FINE)),
                        GEOMETRY)
                .line("leg", "fold length", sides(s -> fold.apply(s).leg()))
                .line(
                        "height",
                        "height when closed, to the wire's middle",
                        sides(s -> fold.apply(s).height()),
                        GEOMETRY)
                .line("standOff", "stand-off wanted", sides(s -> fold.apply(s).standOff()))
                .line("angle", "each bend opens by", sides(s -> fold.apply(s).angle()), GEOMETRY)
                .line(
                        "openInside",
                        "gap at its free end then, inside",
                        readings(fold, FoldReadings::openInside),
                        GEOMETRY)
                .line("openOutside", "  outside", readings(fold, FoldReadings::openOutside), GEOMETRY)
                .line(
                        "gap",
                        "  more than at its bend (to record)",
                        sides(s -> fold.apply(s).gap()),
                        GEOMETRY)
                .line(
                        "gain",
                        "forward travel per mm of gap",
                        sides(s -> fold.apply(s).gain()),
                        GEOMETRY)
                .line(
                        "gainAtFirst",
                        "  at the very first",
                        sides(s -> fold.apply(s).gainAtFirst()),
                        GEOMETRY)
                .line(
                        "drop",
                        "front sinks, unless it is levelled, by",
                        sides(s -> fold.apply(s).drop()),
                        GEOMETRY)
                .line(
                        "reach",
                        "forward travel in the fold, at most",
                        sides(s -> fold.apply(s).reach()),
                        GEOMETRY)
                .line(
                        "left",
                        "left in it after the whole planned advance",
                        sides(s -> fold.apply(s).spare()),
                        GEOMETRY);
        if (made) {
            t.line(
                            "tip",
                            "tip towards the cheek, as made",
                            sides(s -> c.bench().fold(s).buccalTip()))
                    .line(
                            "clearance",
                            "gap to the gingiva, as made",
                            sides(s -> c.bench().fold(s).clearGingiva()))
                    .line(
                            "tipNeeded",
                            "tip that keeps 1 mm to the gingiva",
                            sides(s -> WireGeometry.tipNeeded(c, s, WireGeometry.CLEARANCE)),
                            GEOMETRY,
                            PRACTICE);
        } else {
            t.note("The sinking is for a fold tipped 20° towards the cheek.");
        }
        return t.done();
    }

    /** What a caliper reads on a fold of the wire in hand. */
    private List<Cell> readings(Function<Side, FoldOpening> fold, Function<FoldReadings, Measured> what) {
        return sides(s -> what.apply(FoldReadings.of(fold.apply(s), c.wire().size())));
    }

    private Section compared(Side side) {
        Section.Draft t = new Section.Draft(
                "made-" + side.word(),
                "Made beside worked out, " + side.word(),
                List.of("worked out", "made", "off by"));
        g.compared().stream().filter(one -> one.side() == side).forEach(one -> {
            int decimals = one.what().contains("radius") ? FINE : USUAL;
            t.line(
                    one.what().replace(' ', '-'),
                    one.what(),
                    List.of(
                            Cell.of(one.planned(), decimals),
                            Cell.of(one.made(), decimals),
                            Cell.of(one.off(), decimals)),
                    GEOMETRY);
        });
        return t.note("Off by: made less worked out.").done();
    }
}
