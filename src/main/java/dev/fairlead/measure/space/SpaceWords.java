package dev.fairlead.measure.space;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/** Notes how the space analysis came about. */
public final class SpaceWords {
    private static final String GROUP = "Space";
    private static final String ORDER =
            "The need is taken from measured teeth where all three are measured, else from a radiograph, else from the simple rule.";

    private SpaceWords() {}

    public static void write(SpaceResult r, Readings readings, Workbook book) {
        irregularity(r, readings, book);
        book.add(() -> Working.of(
                "space.incisor-sum",
                GROUP,
                "sum of the four lower incisors (LI)",
                r.incisors(),
                "42 + 41 + 31 + 32",
                Say.sum(Tooth.LOWER_INCISORS.stream().map(readings::width).toArray(Measured[]::new)),
                "",
                "iso-3950"));
        book.add(() -> Working.of(
                "space.incisor-shortage",
                GROUP,
                "what the incisors lack",
                r.incisorShortage(),
                "LI - incisor segment",
                Say.num(r.incisors()) + " - " + Say.num(readings.incisorSegment()),
                "",
                "geometry"));
        for (Side side : Side.values()) {
            side(r, r.side(side), book);
        }
        book.add(() -> Working.of(
                "space.required",
                GROUP,
                "need of the whole lower arch",
                r.required(),
                "LI + left need + right need",
                Say.sum(r.incisors(), r.left().required(), r.right().required()),
                "",
                "geometry"));
        book.add(() -> Working.of(
                "space.available",
                GROUP,
                "room in the whole lower arch",
                r.available(),
                "right + incisor + left segment, or the stated perimeter where a segment is missing",
                Say.sum(
                        r.right().available(),
                        readings.incisorSegment(),
                        r.left().available()),
                "",
                "common-practice"));
        total(r, book);
        ratio(r, book);
    }

    private static void irregularity(SpaceResult r, Readings readings, Workbook book) {
        var c = readings.ofCase().contacts();
        book.add(() -> Working.of(
                "space.irregularity",
                GROUP,
                "irregularity index",
                r.irregularity(),
                "sum of the five contact displacements",
                Say.sum(c.c4342(), c.c4241(), c.c4131(), c.c3132(), c.c3233()),
                r.irregularity().known()
                        ? "Class: "
                                + Irregularity.Grade.of(r.irregularity().value())
                                        .name()
                                        .toLowerCase(java.util.Locale.ROOT)
                                        .replace('_', ' ')
                                + " (0 perfect; each further class reaches up to 4, 7, 10 mm without it; then very severe)."
                        : "",
                "little-1975"));
    }

    private static void side(SpaceResult r, SideSpace s, Workbook book) {
        String side = Say.side(s.side());
        for (Prediction p : s.methods()) {
            book.add(() -> new Working(
                    "space.prediction." + p.method().word() + "." + side,
                    GROUP,
                    "canine and premolars, " + side + ", by " + p.method().title(),
                    p.value(),
                    p.method().formula(),
                    p.substituted(),
                    p.source().isEmpty() ? java.util.List.of() : java.util.List.of(p.source()),
                    p.remark()));
        }
        boolean byRule = s.chosen().method().ordinal() >= Method.TANAKA_JOHNSTON.ordinal();
        book.add(() -> Working.of(
                "space.required." + side,
                GROUP,
                "need of canine and premolars, " + side,
                s.required(),
                "by " + s.chosen().method().title(),
                s.chosen().substituted(),
                ORDER
                        + (byRule
                                ? " Its standard error is 0.85 mm (from memory), taken as one and the same on both sides."
                                : ""),
                s.chosen().source()));
        book.add(() -> Working.of(
                "space.spread." + side,
                GROUP,
                "spread between the methods of prediction, " + side,
                s.spread(),
                "largest - smallest prediction",
                "",
                "Methods that start from the incisor sum miss one child alike; that part cancels here.",
                "geometry"));
        book.add(() -> Working.of(
                "space.shortage." + side,
                GROUP,
                "what the " + side + " side lacks",
                s.shortage(),
                "need - buccal segment + (LI - incisor segment) / 2",
                Say.num(s.required()) + " - " + Say.num(s.available()) + " + " + Say.signed(r.incisorShortage())
                        + " / 2",
                "Half of what the incisors lack is laid on each side. Negative: room to spare.",
                "common-practice"));
        book.add(() -> Working.of(
                "space.leeway." + side,
                GROUP,
                "leeway, " + side,
                s.leeway(),
                "primary canine + first + second primary molar - need",
                Say.num(s.primaryWidths()) + " - " + Say.num(s.required()),
                "From this child's own teeth. Published means range from 1.3 to 2.5 mm a side and are not used.",
                "nance-1947"));
    }

    private static void total(SpaceResult r, Workbook book) {
        book.add(() -> Working.of(
                "space.total-shortage",
                GROUP,
                "what the whole lower arch lacks",
                r.totalShortage(),
                "need - room",
                Say.num(r.required()) + " - " + Say.num(r.available()),
                r.totalShortage().known()
                        ? "For information: "
                                + PerimeterClass.of(r.totalShortage().value()).words() + "."
                        : "",
                "carey-1949"));
    }

    private static void ratio(SpaceResult r, Workbook book) {
        Measured percent = r.anterior().percent();
        boolean lower = percent.known() && percent.value() >= ToothSizeRatio.ANTERIOR;
        book.add(() -> Working.of(
                "space.anterior-ratio",
                GROUP,
                "anterior tooth-size ratio",
                percent,
                "100 x (43 to 33) / (13 to 23)",
                "",
                "Mean 77.2 %, standard deviation 1.65 %.",
                "bolton-1958"));
        book.add(() -> lower || !percent.known()
                ? Working.of(
                        "space.anterior-excess",
                        GROUP,
                        "excess of the lower front teeth",
                        r.anterior().lowerExcess(),
                        "lower six - 0.772 x upper six",
                        "",
                        "",
                        "bolton-1958")
                : Working.of(
                        "space.anterior-excess",
                        GROUP,
                        "excess of the upper front teeth",
                        r.anterior().upperExcess(),
                        "upper six - lower six x 100 / 77.2",
                        "",
                        "",
                        "bolton-1958"));
    }
}
