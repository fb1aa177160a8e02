package dev.fairlead.report.sheet;

import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.report.pdf.PdfWriter;
import dev.fairlead.report.picture.FoldDrawing;
import dev.fairlead.report.picture.StepDrawing;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Status;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/** The pages of a sheet as XHTML. */
final class SheetHtml {
    private static final String DESCRIPTION =
            "Wire of a lower advancing utility arch true to size, with marks, folds, and the checklist for bench and chair.";
    /** Left and right margin of the page together, mm, as in the style sheet. */
    private static final double SIDES = 28;

    private static final int VISITS = 6;
    private static final String CSS = resource("/look/sheet.css");

    private final SheetCase c;
    private final Catalogue catalogue;
    private final Paper paper;
    private final Markup out = new Markup();
    private final SheetTables tables;

    SheetHtml(SheetCase c, Catalogue catalogue, Paper paper) {
        this.c = c;
        this.catalogue = catalogue;
        this.paper = paper;
        this.tables = new SheetTables(c, Tolerances.of(catalogue), out);
    }

    String html() {
        out.open("html", "lang", "en")
                .open("head")
                .element("title", "Bench sheet, case " + c.subject.id())
                .empty("meta", "name", "subject", "content", DESCRIPTION)
                .open("style")
                .whole(page() + CSS)
                .close()
                .close()
                .open("body");
        head();
        open();
        layOut();
        order();
        missing();
        rule();
        arch();
        strip();
        tables.marks();
        folds();
        tables.force();
        checklist(Stage.BENCH, "At the bench", "Answered before the wire leaves the bench.", true);
        checklist(Stage.INSERTION, "At the chair", "Answered as the wire goes in.", false);
        cautions();
        visits();
        signatures();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + out.close().close().done();
    }

    private String page() {
        String foot = "case " + c.subject.id() + " · " + day() + "Fairlead "
                + c.checked.report().tool() + " · rulebase "
                + c.checked.report().rulebase().version() + " "
                + c.checked.report().rulebase().hash().substring(0, 8);
        return "@page { size: " + Svg.num(paper.width()) + "mm " + Svg.num(paper.height())
                + "mm; @bottom-left { content: '" + foot
                + "'; font-family: 'DejaVu Sans'; font-size: 7pt; color: #556270; white-space: nowrap } }\n";
    }

    private String day() {
        return c.checked.report().subject().date().map(d -> d + " · ").orElse("");
    }

    private void head() {
        out.open("div", "class", "head")
                .open("p", "class", "who")
                .element("b", "Case " + c.subject.id())
                .empty("br")
                .text("stage " + c.subject.stage().value().map(s -> s.word()).orElse("not named"))
                .empty("br")
                .text(c.checked.report().subject().date().map(d -> "as of " + d).orElse("no day given"))
                .close()
                .element("h1", "Bench sheet")
                .element("p", "Lower advancing utility arch with a fold at each molar tube", "class", "sub")
                .close();
    }

    /** Warnings of the check that are still open, before anything is bent. */
    private void open() {
        List<Finding> warnings = c.checked.report().findings().forReading().stream()
                .filter(f -> f.outcome() == Status.WARN && f.waiver().isEmpty())
                .toList();
        if (warnings.isEmpty()) {
            return;
        }
        out.open("div", "class", "missing keep")
                .element("h2", "Open before this wire is made or goes in")
                .open("ul");
        warnings.stream()
                .filter(f -> f.weight() == Weight.STOP)
                .forEach(f -> out.open("li")
                        .element("b", "Stop: ")
                        .text(f.title() + ".")
                        .close());
        List<String> cautions = warnings.stream()
                .filter(f -> f.weight() == Weight.CAUTION)
                .map(Finding::title)
                .toList();
        if (!cautions.isEmpty()) {
            out.open("li")
                    .element("b", cautions.size() == 1 ? "Caution: " : cautions.size() + " cautions: ")
                    .text(String.join("; ", cautions) + ".")
                    .close();
        }
        out.close()
                .element("p", "See the report for each; a licensed clinician decides.", "class", "hint")
                .close();
    }

    /** The order of bending with this case's numbers, each step with its drawing. */
    private void order() {
        Tolerances allowed = Tolerances.of(catalogue);
        out.open("div", "class", "keep")
                .element("h2", "Order of bending")
                .element(
                        "p",
                        "Common practice, no source. Behind ± or + stands what is allowed or how well it can be read. Lengths in mm. The drawings show the right side; the left is its mirror image.",
                        "class",
                        "hint");
        List<BendingOrder.Step> steps = new BendingOrder(c.subject, c.geometry, allowed).steps();
        for (int i = 0; i < steps.size(); i++) {
            int step = i;
            out.open("div", "class", i % 4 == 0 ? "step row" : "step")
                    .element("h3", (i + 1) + " " + steps.get(i).title());
            if (c.foldsKnown()) {
                drawing(
                        "step" + (i + 1),
                        "Step " + (i + 1) + ": " + steps.get(i).title(),
                        StepDrawing.words(i),
                        StepDrawing.WIDTH,
                        StepDrawing.HEIGHT,
                        svg -> c.step().draw(svg, step, 0, 0));
            }
            out.element("p", steps.get(i).text()).close();
        }
        out.empty("div", "class", "clear").close();
    }

    private void rule() {
        out.open("div", "class", "first newpage");
        drawing(
                "rule",
                "Check rule",
                "A rule of 100 mm with a stroke at each mm.",
                RuleDrawing.LENGTH + 2 * RuleDrawing.MARGIN,
                RuleDrawing.HEIGHT,
                svg -> RuleDrawing.draw(svg, 0, 0));
        out.open("div", "class", "say")
                .open("p")
                .element("b", "Measure this rule first.")
                .text(
                        " It is 100 mm from edge to edge. If it is not, print again at 100 % (“actual size”), not fitted to the page.")
                .close();
        out.open("p")
                .text("Measured ")
                .element("span", " ", "class", "line short")
                .text(" mm by ")
                .element("span", " ", "class", "line short")
                .close();
        out.close().empty("div", "class", "clear").close();
    }

    private void arch() {
        if (!c.archKnown()) {
            tables.wire("whole");
            return;
        }
        out.open("div", "class", "pair").open("div", "class", "arch").element("h2", "The arch, true to size");
        drawing(
                "arch",
                "The arch, true to size",
                "The middle of the unbent wire from tube to tube, through the slots, with the midline and all marks.",
                c.arch().width(),
                c.arch().height(),
                svg -> c.arch().draw(svg, 0, 0));
        out.element(
                        "p",
                        "Seen from above, facing the child. The line is the middle of the wire through slots and tubes, "
                                + Numbers.text(c.geometry.line().front(), 2) + " before the incisors"
                                + (c.geometry.line().slotsMeasured() ? "" : " (assumed)")
                                + ". Numbers are mm along it from the midline.",
                        "class",
                        "hint")
                .close();
        tables.wire("beside");
        out.empty("div", "class", "clear").close();
    }

    private void strip() {
        if (!c.marksKnown()) {
            return;
        }
        out.open("div", "class", "keep").element("h2", "The straight blank, true to size");
        double middle = Math.max(0, (paper.width() - SIDES - c.strip().width()) / 2);
        out.open("div", "style", "margin-left: " + Svg.num(middle) + "mm");
        drawing(
                "strip",
                "The straight blank, true to size",
                "The blank with midline, tubes, both bends, cut and ends marked on each side.",
                c.strip().width(),
                c.strip().height(),
                svg -> c.strip().draw(svg, 0, 0));
        out.close();
        out.element(
                        "p",
                        "Lay the wire on the line and carry the marks of the right side over; a mark is the middle of its bend. The left: step 10.",
                        "class",
                        "hint")
                .close();
    }

    private void folds() {
        out.open("div", "class", "keep").element("h2", "The folds");
        if (c.foldsKnown()) {
            drawing(
                    "folds",
                    "The folds, enlarged",
                    "Both folds from the cheek, closed and opened for the wanted stand-off, with their sizes.",
                    2 * FoldDrawing.WIDTH,
                    FoldDrawing.HEIGHT,
                    svg -> {
                        c.fold(Side.RIGHT).draw(svg, 0, 0);
                        c.fold(Side.LEFT).draw(svg, FoldDrawing.WIDTH, 0);
                    });
        }
        tables.folds();
        out.close();
    }

    /** A drawing whose size is whole pixels, so that it stays true to size. */
    private void drawing(String id, String title, String description, double width, double height, Consumer<Svg> draw) {
        Svg svg = new Svg(id, title, description, PdfWriter.wholePixels(width), PdfWriter.wholePixels(height), "mm");
        draw.accept(svg);
        out.open("div", "class", "drawing").whole(svg.done()).close();
    }

    private void missing() {
        List<Missing> missing = c.missing();
        if (!missing.isEmpty()) {
            out.open("div", "class", "missing keep")
                    .element("h2", "What is missing")
                    .element("p", "Left blank on this sheet; " + Missing.line(missing, Integer.MAX_VALUE) + ".")
                    .close();
        }
    }

    /** What lies ready before the first mark is made; common practice, no source. */
    private void layOut() {
        out.open("div", "class", "keep")
                .element("h2", "Lay out before you start")
                .element(
                        "p",
                        "The wire · a light-wire plier with one round and one square beak · a fine marker · a ruler in mm · a hard-wire cutter that"
                                + " holds the cut end · eye protection · the working model taken over the bands.")
                .element("p", "Whoever bends this fold for the first time practises it on a model.", "class", "hint")
                .close();
    }

    private void cautions() {
        out.open("div", "class", "cautions keep").element("h2", "Mind").open("ul");
        for (String line : List.of(
                "Eye protection for everybody near, and every cut end caught and counted.",
                "Round the end of the wire, and try it on the model before the mouth: it lies passive in every bracket before a fold is opened.",
                "Opening a fold sinks the front towards the gingiva: level it, and look from the side.",
                "Folds swing towards the cheek when the wire is tied in: feel for room.",
                "The molars get the same force backwards. Look at them at every visit.")) {
            out.element("li", line);
        }
        out.close().element("p", Report.CAUTION, "class", "hint").close();
    }

    private void checklist(Stage stage, String title, String when, boolean newPage) {
        new SheetChecklist(catalogue, out, new ChecklistNumbers(c)).write(stage, title, when, newPage);
    }

    private void visits() {
        out.open("div", "class", "keep")
                .element("h2", "Activations")
                .element(
                        "p",
                        "Gap opened (its free end less its bend) and stand-off in mm, each side; total force on the gauge in gf.",
                        "class",
                        "hint")
                .open("table", "class", "log")
                .open("thead")
                .open("tr");
        for (String head : List.of(
                "day",
                "gap right",
                "gap left",
                "stand-off right",
                "stand-off left",
                "gauge",
                "moved since start",
                "initials")) {
            out.element("th", head, "scope", "col");
        }
        out.close().close().open("tbody");
        for (int i = 0; i < VISITS; i++) {
            out.open("tr");
            for (int k = 0; k < 8; k++) {
                out.open("td").element("span", " ", "class", "rule").close();
            }
            out.close();
        }
        out.close().close().close();
    }

    private void signatures() {
        out.open("table", "class", "sign keep").open("tr");
        for (String who : List.of("Made by (initials)", "Day", "Checked by (initials)", "Day")) {
            out.open("td")
                    .element("span", " ", "class", "line long")
                    .empty("br")
                    .text(who)
                    .close();
        }
        out.close().close();
    }

    private static String resource(String name) {
        try (InputStream in = SheetHtml.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("a style sheet of the program cannot be read: " + name, e);
        }
    }
}
