package dev.fairlead.report.sheet;

import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.wire.FoldOpening;
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
import java.util.stream.Collectors;

/** The tables of a sheet; what is not known is a line to write on. */
final class SheetTables {
    private final SheetCase c;
    private final Markup out;

    SheetTables(SheetCase c, Markup out) {
        this.c = c;
        this.out = out;
    }

    /** Marks with room for what was measured on the wire. */
    void marks() {
        out.open("div", "class", "keep")
                .element("h2", "Marks, mm along the wire from the midline")
                .open("table", "class", "numbers")
                .open("thead")
                .open("tr")
                .element("th", "mark", "scope", "col");
        for (String head : new String[] {"right", "as made", "left", "as made"}) {
            out.element("th", head, "scope", "col");
        }
        out.close().close().open("tbody");
        mark("tube, mesial end", SideMarks::tube, false);
        mark("first bend, its middle", SideMarks::firstBend, true);
        mark("… distal to the tube by", SideMarks::offset, true);
        mark("second bend, its middle; becomes the stop", SideMarks::secondBend, true);
        mark("cut, flush with the distal end of the tube", SideMarks::cut, true);
        mark("end of the blank, with 2 mm to hold", SideMarks::end, false);
        out.close().close().close();
    }

    private void mark(String words, Function<SideMarks, Measured> what, boolean made) {
        out.open("tr").element("th", words, "scope", "row");
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            cell(what.apply(c.geometry.marks(side)));
            out.open("td", "class", "fill")
                    .element("span", " ", made ? new String[] {"class", "rule"} : new String[] {"class", "no"})
                    .close();
        }
        out.close();
    }

    private void cell(Measured m) {
        out.open("td", "class", "number");
        if (m.known()) {
            out.text(Numbers.text(m));
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
                        ? Numbers.plain(w.size().value(), 3) + " mm ("
                                + Numbers.plain(Unit.MM.to(Unit.INCH, w.size().value()), 3) + " in)"
                        : "");
        fact("temper", words(w.temper()));
        fact("modulus", declared(w.modulus()));
        fact("proof strength", declared(w.proofStrength()));
        fact("form", words(w.formClass()));
        fact("width at tubes", value(w.formMolarWidth()));
        fact("width at canines", value(w.formCanineWidth()));
        fact("plier beak radius", w.beakRadius().known() ? Numbers.text(w.beakRadius(), 2) : "");
        fact("blank to cut", value(c.geometry.blank()));
        fact("blank in hand", value(w.blankLength()));
        fact("stand-off", value(c.subject.plan().standOff()));
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
        out.open("table", "class", "numbers")
                .open("thead")
                .open("tr")
                .element("th", "fold", "scope", "col")
                .element("th", "right", "scope", "col")
                .element("th", "as made", "scope", "col")
                .element("th", "left", "scope", "col")
                .element("th", "as made", "scope", "col")
                .close()
                .close()
                .open("tbody");
        fold("length, as long as the tube", FoldOpening::leg, true);
        fold("height when closed, to the wire's middle", FoldOpening::height, true);
        fold("wire in the fold", f -> c.geometry.marks(f.side()).foldWire(), false);
        fold("gap to open with the plier", FoldOpening::gap, true);
        fold("… forward travel per mm of gap", FoldOpening::gain, false);
        fold("… front sinks, unless levelled, by", FoldOpening::drop, false);
        fold("left for later visits, after the whole plan", FoldOpening::spare, false);
        fold(
                "tip that keeps 1 mm to the gingiva",
                f -> WireGeometry.tipNeeded(c.subject, f.side(), WireGeometry.CLEARANCE),
                false);
        fold("tip towards the cheek", f -> c.subject.bench().fold(f.side()).buccalTip(), true);
        out.close().close();
    }

    private void fold(String words, Function<FoldOpening, Measured> what, boolean made) {
        out.open("tr").element("th", words, "scope", "row");
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            cell(what.apply(c.geometry.planned(side)));
            out.open("td", "class", "fill")
                    .element("span", " ", made ? new String[] {"class", "rule"} : new String[] {"class", "no"})
                    .close();
        }
        out.close();
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
                    .text(" (" + newtons(b.low(), b.high()) + "), a quarter of it, as a mean, "
                            + range(b.low(), b.high(), 4) + " gf. With the usual modulus "
                            + range(b.hinged().forward(), b.held().forward(), 1)
                            + " gf, depending on whether the tail hinges in the tube or is held by it.")
                    .close();
            double peak = b.held().peak().inner()
                    * f.modulus().orElseThrow().high()
                    / f.modulus().get().usual();
            out.element(
                    "p",
                    "Peak bending stress " + Numbers.text(peak, Unit.MPA)
                            + (f.proof().known()
                                    ? ", " + Numbers.text(Math.abs(f.proof().value() - peak), Unit.MPA)
                                            + (peak <= f.proof().value() ? " below" : " over") + " the proof strength."
                                    : "; the proof strength is not known."));
        } else if (!f.missing().isEmpty()) {
            out.element(
                    "p",
                    "Not assessed; missing: "
                            + f.missing().stream()
                                    .map(Missing::of)
                                    .map(Missing::words)
                                    .collect(Collectors.joining("; "))
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
