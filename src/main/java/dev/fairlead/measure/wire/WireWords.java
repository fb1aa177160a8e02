package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/** Notes how marks, blank and openings came about. */
public final class WireWords {
    private static final String GROUP = "Wire";

    private WireWords() {}

    public static void write(WireGeometry g, Case c, Workbook book) {
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            marks(g.marks(side), c, book);
            fold(g.planned(side), book);
            Measured tip = WireGeometry.tipNeeded(c, side, WireGeometry.CLEARANCE);
            note(
                    book,
                    "tip-needed." + side.word(),
                    "buccal tip that keeps 1 mm to the gingiva, " + side.word(),
                    tip,
                    "asin(sin t + (1 mm - gap to the gingiva) / fold height), t the tip as made",
                    "asin(sin " + Say.num(c.bench().fold(side).buccalTip()) + " + (1 - "
                            + Say.num(c.bench().fold(side).clearGingiva()) + ") / "
                            + Say.num(c.bench().fold(side).height()) + ")",
                    "",
                    "geometry",
                    "common-practice");
        }
        note(
                book,
                "blank",
                "blank to cut",
                g.blank(),
                "right end + left end of the wire, each with a 2 mm tail to hold",
                Say.num(g.right().end()) + " + " + Say.num(g.left().end()),
                "",
                "geometry",
                "common-practice");
        note(
                book,
                "blank-spare",
                "blank length to spare",
                g.spare(),
                "blank in hand - blank to cut",
                Say.num(c.wire().blankLength()) + " - " + Say.num(g.blank()),
                "",
                "geometry");
    }

    private static void marks(SideMarks m, Case c, Workbook book) {
        String side = m.side().word();
        String r = Say.num(FoldShape.plannedRadius(c));
        String tube = Say.num(c.hardware().tube(m.side()).length());
        note(
                book,
                "first-bend." + side,
                "mark of the first bend from the midline, " + side,
                m.firstBend(),
                "way from the midline through the slots round to the fold + leg as long as the tube + half a bend, pi r / 2",
                Say.num(m.firstBend()
                                .minus(FoldShape.plannedRadius(c).times(Math.PI / 2))
                                .minus(c.hardware().tube(m.side()).length()))
                        + " + " + tube + " + " + Say.num(Math.PI / 2) + " x " + r,
                "A mark is the middle of its bend. Laid along the arch it lies distal to the tube, about 2 mm.",
                "geometry",
                "mechanics-model");
        note(
                book,
                "first-bend-offset." + side,
                "first bend distal to the tube, " + side,
                m.offset(),
                "mark of the first bend - way through the slots to the tube - tube length",
                Say.num(m.firstBend()) + " - " + Say.num(m.tube()) + " - " + tube,
                "",
                "geometry");
        note(
                book,
                "second-bend." + side,
                "mark of the second bend from the midline, " + side,
                m.secondBend(),
                "first mark + pi r + leg",
                Say.num(m.firstBend()) + " + pi x " + r + " + " + tube,
                "",
                "geometry");
        note(
                book,
                "cut." + side,
                "cut, flush with the distal end of the tube, from the midline, " + side,
                m.cut(),
                "second mark + pi r / 2 + tube length",
                Say.num(m.secondBend()) + " + " + Say.num(Math.PI / 2) + " x " + r + " + " + tube,
                "",
                "geometry");
    }

    private static void fold(FoldOpening f, Workbook book) {
        String side = f.side().word();
        note(
                book,
                "gap-to-open." + side,
                "gap to open for the planned stand-off, " + side,
                f.gap(),
                "L sin a, with a from stand-off = 2 r' sin a + L (1 - cos a), r' = pi r / (pi - a)",
                Say.num(f.leg()) + " sin " + Say.num(f.angle()) + "°",
                "Each bend opens by a. By so much the gap is wider at its free end than at its bend.",
                "geometry");
        note(
                book,
                "gain." + side,
                "forward travel per mm of gap, " + side,
                f.gain(),
                "stand-off / gap to open",
                Say.num(f.standOff()) + " / " + Say.num(f.gap()),
                f.gainAtFirst().known()
                        ? "At the very first 2 r / L = " + Say.num(f.gainAtFirst()) + "; it rises as the fold opens."
                        : "",
                "geometry");
        note(
                book,
                "drop." + side,
                "sinking of the front unless it is levelled, " + side,
                f.drop(),
                "(2 r' (1 + cos a) - 4 r + L sin a) cos 20°",
                "a = " + Say.num(f.angle()) + "°, r = " + Say.num(f.radius()) + ", L = " + Say.num(f.leg()),
                "",
                "geometry");
    }

    private static void note(
            Workbook book,
            String id,
            String title,
            Measured value,
            String formula,
            String here,
            String note,
            String... sources) {
        book.add(() -> Working.of("wire." + id, GROUP, title, value, formula, here, note, sources));
    }
}
