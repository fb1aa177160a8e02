package dev.fairlead.report.sheet;

import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.wire.DrawnForces;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.FoldReadings;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import dev.fairlead.report.picture.LoadPicture;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The tables of a sheet; what is not known is a line to write on. */
final class SheetTables {
    private final SheetCase c;
    private final Tolerances allowed;
    private final Markup out;

    SheetTables(SheetCase c, Tolerances allowed, Markup out) {
        this.c = c;
        this.allowed = allowed;
        this.out = out;
    }

    /** Marks with their tolerances and room for what was measured on the wire. */
    void marks() {
        out.open("div", "class", "keep").element("h2", "Marks, mm along the wire");
        open("mark");
        row(
                "tube, mesial end, from the midline, by the arch",
                measured(s -> c.geometry.marks(s).tube()),
                s -> c.geometry.marks(s).tube(),
                false);
        String first = Tolerances.plusMinus(allowed.firstBend());
        row(
                "first bend, its middle, from the midline",
                first,
                s -> s == Side.RIGHT ? c.geometry.right().firstBend() : Measured.notApplicable(),
                true);
        row("first bend, distal to the tube by", first, s -> c.geometry.marks(s).offset(), true);
        row(
                "second bend, its middle, on from the first",
                Tolerances.plusMinus(allowed.length()),
                s -> c.geometry.marks(s).secondBend().minus(c.geometry.marks(s).firstBend()),
                true);
        row(
                "end of the blank, with 2 mm to hold",
                "or more",
                s -> c.geometry.marks(s).end(),
                false);
        out.close().close().close();
    }

    private void open(String what) {
        out.open("table", "class", "numbers").open("thead").open("tr");
        for (String head : new String[] {what, "tolerance", "right", "as made", "left", "as made"}) {
            out.element("th", head, "scope", "col");
        }
        out.close().close().open("tbody");
    }

    private void row(String words, String allowed, Function<Side, Measured> what, boolean made) {
        out.open("tr").element("th", words, "scope", "row").element("td", allowed, "class", "allowed");
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            Measured m = what.apply(side);
            cell(m);
            boolean fill = made && m.applies();
            out.open("td", "class", "fill")
                    .element("span", " ", fill ? new String[] {"class", "rule"} : new String[] {"class", "no"})
                    .close();
        }
        out.close();
    }

    private void cell(Measured m) {
        out.open("td", "class", "number");
        if (m.known()) {
            out.text(Numbers.text(m.value(), m.unit()));
        } else if (!m.applies()) {
            out.text("step 10");
        } else {
            out.element("span", " ", "class", "rule");
        }
        out.close();
    }

    /** What the wire is. */
    void wire(String where) {
        WirePlan w = c.subject.wire();
        out.open("div", "class", where)
                .element("h2", "The wire")
                .open("table", "class", "facts")
                .open("tbody");
        fact("material", words(w.material()));
        fact("section", words(w.section()));
        fact(
                "size",
                w.size().known()
                        ? Numbers.plain(w.size().value(), 3) + " ± " + Numbers.plain(allowed.size(), 3) + " mm"
                        : "");
        fact(
                "… in inches",
                w.size().known() ? Numbers.plain(Unit.MM.to(Unit.INCH, w.size().value()), 3) + " in" : "");
        fact("temper", words(w.temper()));
        fact("modulus", declared(w.modulus()));
        fact("proof strength", declared(w.proofStrength()));
        fact("form", words(w.formClass()));
        fact("width at tubes", value(w.formMolarWidth()));
        fact("width at canines", value(w.formCanineWidth()));
        fact("plier beak radius", w.beakRadius().known() ? Numbers.text(w.beakRadius(), 2) : "");
        fact("blank to cut", value(c.geometry.blank()));
        fact("blank in hand", value(w.blankLength()));
        out.close().close().close();
    }

    private static <T extends Choice> String words(Fact<T> fact) {
        return fact.value().map(v -> v.word().replace('-', ' ')).orElse("");
    }

    private static String declared(Measured m) {
        return m.applies() ? value(m) : "not declared";
    }

    private static String value(Measured m) {
        return m.known() ? Numbers.text(m) : "";
    }

    private void fact(String name, String value) {
        out.open("tr").element("th", name, "scope", "row").open("td");
        if (value.isEmpty()) {
            out.element("span", " ", "class", "rule");
        } else {
            out.text(value);
        }
        out.close().close();
    }

    /** Sizes of the folds and how they are opened. */
    void folds() {
        String higher = "+ " + Tolerances.number(allowed.higher());
        String gap = Tolerances.plusMinus(Tolerances.GAP);
        open("fold");
        fold("length, as long as the tube", Tolerances.plusMinus(allowed.length()), FoldOpening::leg, true);
        fold("height when closed, outside", higher, f -> readings(f).heightOutside(), true);
        fold("… inside", higher, f -> readings(f).heightInside(), true);
        fold("… to the wire's middle, as the case has it", higher, FoldOpening::height, true);
        fold("stand-off", opening(OpeningTolerance::standOff, 1, ""), FoldOpening::standOff, true);
        fold("each bend opens by", opening(OpeningTolerance::angle, 0, "°"), FoldOpening::angle, false);
        fold("gap at its free end, opened, inside", gap, f -> readings(f).openInside(), true);
        fold("… outside", gap, f -> readings(f).openOutside(), true);
        fold("… more than at its bend: the opening to record", gap, FoldOpening::gap, true);
        fold("front sinks, unless levelled, by", opening(OpeningTolerance::drop, 1, ""), FoldOpening::drop, false);
        fold(
                "left for later visits, after the whole plan",
                measured(s -> c.geometry.planned(s).spare()),
                FoldOpening::spare,
                false);
        fold(
                "tip towards the cheek",
                Tolerances.degrees(allowed.square()),
                f -> Measured.exact(SideMarks.TIP, Unit.DEGREE),
                true);
        row(
                "tip that keeps 1 mm to the gingiva, fold as made",
                "or more",
                s -> WireGeometry.tipNeeded(c.subject, s, WireGeometry.CLEARANCE),
                false);
        out.close().close();
    }

    /** What an opening may be off by, the larger of both sides; empty where the opening is not known. */
    private String opening(ToDoubleFunction<OpeningTolerance> what, int decimals, String unit) {
        double most = Math.max(
                what.applyAsDouble(OpeningTolerance.of(c.geometry.plannedRight())),
                what.applyAsDouble(OpeningTolerance.of(c.geometry.plannedLeft())));
        return Double.isNaN(most) ? "" : "± " + Numbers.plain(most, decimals) + unit;
    }

    /** The error of what was measured, the larger of both sides; empty where one is not known. */
    private static String measured(Function<Side, Measured> what) {
        Measured right = what.apply(Side.RIGHT);
        Measured left = what.apply(Side.LEFT);
        return right.known() && left.known() ? "± " + Numbers.plain(Math.max(right.sd(), left.sd()), 1) : "";
    }

    private FoldReadings readings(FoldOpening f) {
        return FoldReadings.of(f, c.subject.wire().size());
    }

    private void fold(String words, String allowed, Function<FoldOpening, Measured> what, boolean made) {
        row(words, allowed, side -> what.apply(c.geometry.planned(side)), made);
    }

    /** The band of force, with room for a gauge reading. */
    void force() {
        WireForces f = c.forces;
        out.open("div", "class", "force keep").element("h2", "Force as tied in, by the beam model");
        LoadPicture.of(f)
                .ifPresent(p -> out.open("div", "class", "load")
                        .whole(p.svg().replaceFirst("<svg ", "<svg width=\"302\" height=\"185\" "))
                        .close());
        if (f.band().isPresent()) {
            ForceBand b = f.band().get();
            out.open("p")
                    .text("All four incisors together: ")
                    .element(
                            "b",
                            withError(f.end(c.subject, false)) + " to " + withError(f.end(c.subject, true)) + " gf")
                    .text(" (" + newtons(b.low(), b.high()) + "); 5 to 95 % by draws of what was measured "
                            + plain(f.drawn(c.subject).orElseThrow().low().p5()) + " to "
                            + plain(f.drawn(c.subject).orElseThrow().high().p95())
                            + " gf. A quarter of it, as a mean, is "
                            + range(b.low(), b.high(), 4) + " gf. With the usual modulus "
                            + range(b.hinged().forward(), b.held().forward(), 1)
                            + " gf, depending on whether the tail hinges in the tube or is held by it.")
                    .close();
            double peak = f.judgedStress();
            DrawnForces.Spread stress = f.drawn(c.subject).orElseThrow().stress();
            out.element(
                    "p",
                    "Peak bending stress " + Numbers.text(peak, Unit.MPA) + ", 5 to 95 % by draws "
                            + plain(stress.p5()) + " to " + Numbers.text(stress.p95(), Unit.MPA)
                            + (f.proof().known()
                                    ? "; " + Numbers.text(Math.abs(f.proof().value() - peak), Unit.MPA)
                                            + (peak <= f.proof().value() ? " below" : " over") + " the proof strength."
                                    : "; the proof strength is not known."));
        } else if (!f.missing().isEmpty()) {
            out.element(
                    "p",
                    "Not assessed; "
                            + Missing.line(
                                    f.missing().stream()
                                            .map(Missing.in(c.subject))
                                            .toList(),
                                    Integer.MAX_VALUE)
                            + ".");
        } else {
            out.element("p", "Not assessed: " + String.join("; ", f.failures()) + ".");
        }
        out.open("p")
                .element("b", "Read on the gauge at tie-in: ")
                .element("span", " ", "class", "line short")
                .text(" gf. It overrides the model.")
                .close();
        out.element("p", WireForces.LIMITS.get(0) + " " + WireForces.LIMITS.get(1), "class", "hint")
                .empty("div", "class", "clear")
                .close();
    }

    private static String plain(double v) {
        return Numbers.plain(v, 0);
    }

    private static String withError(Measured end) {
        String error = end.sd() == 0 ? "" : " ± " + Numbers.plain(end.sd(), 0);
        return Numbers.plain(end.value(), 0) + error;
    }

    private static String range(double a, double b, int parts) {
        return Numbers.plain(Unit.NEWTON.to(Unit.GF, a / parts), 0) + " to "
                + Numbers.plain(Unit.NEWTON.to(Unit.GF, b / parts), 0);
    }

    private static String newtons(double a, double b) {
        return Numbers.plain(a, 2) + " to " + Numbers.plain(b, 2) + " N";
    }
}
