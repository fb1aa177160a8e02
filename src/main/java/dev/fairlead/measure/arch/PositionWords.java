package dev.fairlead.measure.arch;

import dev.fairlead.measure.position.Cephalometry;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Locale;

/** Notes how need, gain and movement of the incisors came about. */
public final class PositionWords {
    private static final String GROUP = "Incisor position";
    private static final String VARIANT =
            "The straight distance is the answer, for the segments are measured as straight lines and need is"
                    + " a sum of widths. The incisors move forward as a block, once in line; the molars stay.";

    private PositionWords() {}

    public static void write(PositionResult r, Readings readings, SpaceResult space, PatientArch arch, Workbook book) {
        for (Side side : Side.values()) {
            side(r.side(side), space.side(side).shortage(), arch, book);
        }
        book.add(() -> Working.of(
                "position.needed.equal",
                GROUP,
                "advancement needed when both sides advance alike",
                r.equalPlan(),
                "the larger need of the two sides, at least 0",
                "max(" + Say.num(r.left().chord()) + ", " + Say.num(r.right().chord()) + ", 0)",
                "",
                "geometry"));
        book.add(() -> Working.of(
                "position.needed.midline",
                GROUP,
                "advancement at the midline when each side gets only what it needs",
                r.atMidline(),
                "mean of the two needs, none below 0",
                "",
                "",
                "geometry"));
        band(r.gains(), book);
        for (PositionResult.Gain g : r.gains()) {
            gain(g, book);
        }
        tweed(r, readings, book);
        r.sided().ifPresent(s -> sided(s, book));
    }

    private static void side(PositionResult.SideNeed n, Measured shortage, PatientArch arch, Workbook book) {
        String side = Say.side(n.side());
        book.add(() -> Working.of(
                "position.needed." + side,
                GROUP,
                "advancement that the " + side + " side needs",
                n.chord(),
                "a such that |molar - (lateral + a)| = |molar - lateral| + what the side lacks, on the curve of this arch",
                "solved for " + Say.num(shortage) + " mm on the arch made from "
                        + arch.basis().words(),
                VARIANT,
                "geometry"));
        book.add(() -> Working.of(
                "position.needed-along." + side,
                GROUP,
                "the same counted along the arch, " + side,
                n.alongArch(),
                "a such that the curve, deepened by a, is longer from lateral to molar by what the side lacks",
                "solved for " + Say.num(shortage) + " mm",
                "The whole front deepens with the curve. Its error counts that of the space alone.",
                "geometry"));
        book.add(() -> Working.of(
                "position.needed-rule." + side,
                GROUP,
                "the same by the 2:1 rule, " + side,
                n.rule(),
                "1 mm of advancement for 1 mm of the side's room",
                Say.num(shortage),
                difference(n),
                "two-to-one-rule"));
        book.add(() -> Working.of(
                "position.spare." + side,
                GROUP,
                "planned against needed advancement, " + side,
                n.spare(),
                "planned - needed",
                Say.num(n.planned()) + " - " + Say.signed(n.chord()),
                "Negative: the plan does not give this side its room.",
                "geometry"));
    }

    private static String difference(PositionResult.SideNeed n) {
        if (!n.chord().known()) {
            return "";
        }
        double more = n.chord().value() - n.rule().value();
        return "The rule asks for " + Say.num(Math.abs(more)) + " mm " + (more >= 0 ? "less" : "more")
                + " than the solved advancement: it counts the whole millimetre as room, but the segment from lateral to molar runs outward as"
                + " well as back, and only the part along it is gained.";
    }

    /** What the planned advancement gains, with the spread of published figures as its band. */
    private static void band(List<PositionResult.Gain> gains, Workbook book) {
        PositionResult.Gain here = gains.stream()
                .filter(g -> g.name().equals("this arch"))
                .findFirst()
                .orElseGet(() -> gains.stream()
                        .filter(g -> g.name().equals("rule of thumb"))
                        .findFirst()
                        .orElseThrow());
        PositionResult.Gain least = gains.get(0);
        PositionResult.Gain most = gains.get(gains.size() - 1);
        book.add(() -> Working.of(
                "position.gain",
                GROUP,
                "room of both sides that the plan gains",
                here.gained(),
                "mean advancement x mm of perimeter per mm, by " + here.name(),
                Say.num(here.gained()) + " (" + Say.num(here.perMm()) + " mm per mm)",
                !here.gained().known()
                        ? ""
                        : "Published figures span " + Say.num(least.gained()) + " to " + Say.num(most.gained())
                                + " mm for the same advancement (" + Say.num(least.perMm()) + " to "
                                + Say.num(most.perMm()) + " mm per mm).",
                here.source(),
                "mutinelli-2000",
                "two-to-one-rule"));
    }

    private static void gain(PositionResult.Gain g, Workbook book) {
        book.add(() -> Working.of(
                "position.lacking." + g.name().toLowerCase(Locale.ROOT).replace(' ', '-'),
                GROUP,
                "what the arch lacks after the plan, by " + g.name(),
                g.lacking(),
                "total shortage - mean advancement x mm of perimeter per mm",
                Say.num(g.lacking().plus(g.gained())) + " - " + Say.num(g.gained()) + " (" + Say.num(g.perMm())
                        + " mm per mm)",
                "Negative: room to spare. The published figures are those of curves with a fixed width between the canines.",
                g.source()));
    }

    private static void tweed(PositionResult r, Readings readings, Workbook book) {
        PositionResult.Shift s = r.angles().get(0);
        Measured fma = readings.mandibularPlane();
        Measured before = third(fma, s.before());
        Measured after = third(fma, s.after());
        book.add(() -> Working.of(
                "position.fmia-after",
                GROUP,
                "FMIA after advancement",
                after,
                "180 - FMA - inclination after",
                "180 - " + Say.num(fma) + " - " + Say.num(s.after()),
                "",
                "tweed-1954"));
        book.add(() -> Working.of(
                "position.tweed-room",
                GROUP,
                "room of both sides by the head-plate correction",
                room(before.minus(after)),
                "0.8 mm x (FMIA before - FMIA after)",
                "0.8 x (" + Say.num(before) + " - " + Say.num(after) + ")",
                "One rule with 2 mm of room per mm and 2.5 degrees per mm: 0.8 x 2.5 = 2.",
                "tweed-head-plate"));
    }

    private static Measured room(Measured degrees) {
        return degrees.known()
                ? degrees.chain(
                        degrees.value() * Cephalometry.TWEED_MM_PER_DEGREE, Cephalometry.TWEED_MM_PER_DEGREE, Unit.MM)
                : degrees;
    }

    private static Measured third(Measured fma, Measured impa) {
        return Measured.function(Unit.DEGREE, x -> Cephalometry.fmia(x[0], x[1]), fma, impa);
    }

    private static void sided(PositionResult.Sided s, Workbook book) {
        String note =
                "A stiff wire turned about the tubes, to first order. The beam model with both tubes holding gives 0.70 and 0.30 of the opening at"
                        + " the laterals and 0.46 sideways. "
                        + (s.openings().possible()
                                ? ""
                                : "One fold would have to be closed: a stiff front cannot do this. ");
        String folds = "folds: left " + Say.num(s.openings().open().left()) + " mm, right "
                + Say.num(s.openings().open().right()) + " mm";
        book.add(() -> front(
                "midline", "advance of the midline", s.front().midline(), Unit.MM, "mean of both sides", folds, note));
        book.add(() -> front(
                "sideways",
                "shift of the front to the left",
                s.front().sideways(),
                Unit.MM,
                "(right - left travel of the folds) x depth / width",
                folds,
                "Negative: to the right. " + note));
        book.add(() -> front(
                "yaw",
                "turn of the front to the left",
                s.front().yaw(),
                Unit.DEGREE,
                "atan((right - left travel) / width)",
                folds,
                ""));
    }

    private static Working front(
            String id, String title, double value, Unit unit, String formula, String substituted, String note) {
        return Working.of(
                "position.front-" + id,
                GROUP,
                title,
                Measured.exact(value, unit),
                formula,
                substituted,
                note.strip(),
                "geometry",
                "mechanics-model");
    }
}
