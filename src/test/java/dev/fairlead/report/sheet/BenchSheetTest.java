package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Numbers;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.mechanics.geometry.ArchPath;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.report.pdf.Pdfs;
import dev.fairlead.report.pdf.Strokes;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * What is printed is measured in the PDF by a reader that did not write it: 100 mm are 100 ± 0.1 mm, and so is the
 * wire.
 */
class BenchSheetTest {
    private static Checker checker;
    private static BenchSheet sheet;
    private static final Map<String, byte[]> MADE = new HashMap<>();

    @BeforeAll
    static void load() {
        Rulebase rulebase = Rulebase.load(null);
        checker = new Checker(rulebase);
        sheet = new BenchSheet(rulebase.catalogue());
    }

    static Checked checked(String name) throws IOException {
        Path file = Path.of("cases").resolve(name + ".yaml");
        return check(CaseReader.read(Files.readAllBytes(file), file.toString(), CaseFormat.BY_NAME)
                .value()
                .orElseThrow());
    }

    /** The sheet of a demo case, made once. */
    private static byte[] pdf(String name, Paper paper) {
        return MADE.computeIfAbsent(name + " " + paper, key -> {
            try {
                return sheet.pdf(checked(name), paper);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }

    private static Checked check(Case c) {
        return checker.check(c, "0".repeat(64), CheckOptions.USUAL.withoutWorkings());
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void ruleIsAHundredMillimetres(Paper paper) throws IOException {
        byte[] pdf = pdf("heron-07-clean", paper);
        List<Strokes.Path> bars = Strokes.of(pdf, 2).stream()
                .filter(p -> p.points().size() == 4 && p.height() < 0.4 && p.width() > 95 && p.width() < 105)
                .toList();
        assertThat(bars).hasSize(1);
        assertThat(bars.get(0).width()).isCloseTo(100, within(0.1));
        List<Strokes.Path> strokes = Strokes.of(pdf, 2).stream()
                .filter(p ->
                        p.width() < 0.3 && Math.abs(p.bottom() - bars.get(0).bottom()) < 0.3 && p.height() > 1.5)
                .toList();
        assertThat(strokes).as("a stroke for each mm").hasSize(101);
        assertThat(strokes.stream().mapToDouble(Strokes.Path::left).min().orElseThrow())
                .isCloseTo(bars.get(0).left(), within(0.02));
        assertThat(strokes.stream().mapToDouble(Strokes.Path::right).max().orElseThrow())
                .isCloseTo(bars.get(0).right(), within(0.02));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void archAndBlankAreTrueToSize(Paper paper) throws IOException {
        Checked checked = checked("heron-07-clean");
        byte[] pdf = pdf("heron-07-clean", paper);
        WireGeometry g = WireGeometry.of(checked.subject());
        ArchPath path = new ArchPath(g.line().curve());
        Strokes.Path arch = Strokes.of(pdf, 2).stream()
                .filter(p -> p.points().size() > 100 && p.width() > 30)
                .findFirst()
                .orElseThrow();
        assertThat(arch.width()).isCloseTo(path.x(path.leftLength()) - path.x(-path.rightLength()), within(0.1));
        double distal = g.right().end().value() - g.right().tube().value();
        assertThat(arch.height())
                .isCloseTo(g.arch().depth().value() + g.line().front().value() + distal, within(0.1));
        assertThat(length(arch)).as("wire along the arch").isCloseTo(g.blank().value(), within(0.1));
        List<Double> lines = Strokes.of(pdf, 2).stream()
                .filter(p -> p.height() < 0.01)
                .map(Strokes.Path::width)
                .toList();
        assertThat(lines)
                .as("the straight blank")
                .anySatisfy(w -> assertThat(w).isCloseTo(g.blank().value(), within(0.1)));
    }

    private static double length(Strokes.Path path) {
        double sum = 0;
        for (int i = 1; i < path.points().size(); i++) {
            sum += path.points().get(i).distance(path.points().get(i - 1));
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron-07-clean", "knot-08-half-missing"})
    void keepsWhatPdfAAndPdfUaAsk(String name) throws IOException {
        byte[] pdf = pdf(name, Paper.A4);
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
        assertThat(Pdfs.fonts(pdf)).containsExactlyInAnyOrder("DejaVuSans", "DejaVuSans-Bold");
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron-07-clean", "knot-08-half-missing", "turnstone-11-over-advanced"})
    void nothingIsCutOffAndNoDrawingIsSplit(String name) throws IOException {
        for (Paper paper : Paper.values()) {
            byte[] pdf = pdf(name, paper);
            int pages;
            try (PDDocument document = Pdfs.open(pdf)) {
                pages = document.getNumberOfPages();
                assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4)
                        .isCloseTo(paper.width(), within(0.1));
                assertThat(document.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                        .isCloseTo(paper.height(), within(0.1));
            }
            assertThat(pages).isBetween(4, 8);
            for (int page = 1; page <= pages; page++) {
                for (Strokes.Path p : Strokes.of(pdf, page)) {
                    assertThat(p.left()).isGreaterThan(10);
                    assertThat(p.right()).isLessThan(paper.width() - 10);
                    assertThat(p.bottom()).isGreaterThan(8);
                    assertThat(p.top()).isLessThan(paper.height() - 10);
                }
            }
        }
    }

    private static String everyPage(byte[] pdf) throws IOException {
        StringBuilder text = new StringBuilder();
        int pages;
        try (PDDocument document = Pdfs.open(pdf)) {
            pages = document.getNumberOfPages();
        }
        for (int page = 1; page <= pages; page++) {
            text.append(Pdfs.text(pdf, page)).append('\n');
        }
        return text.toString();
    }

    @Test
    void saysInTextWhatTheDrawingsSay() throws IOException {
        byte[] pdf = pdf("heron-07-clean", Paper.A4);
        WireGeometry g = WireGeometry.of(checked("heron-07-clean").subject());
        assertThat(Pdfs.text(pdf, 1))
                .as("the first page is enough to bend from")
                .contains(
                        "Order of bending",
                        "12 At the chair: open, level",
                        Numbers.plain(g.right().firstBend().value(), 1) + " ± 0.5 mm",
                        Numbers.plain(g.left().offset().value(), 1) + " ± 0.5",
                        "inside",
                        "outside");
        assertThat(Pdfs.text(pdf, 2)).contains("Measure this rule first");
        assertThat(everyPage(pdf))
                .contains(
                        "gap at its free end, opened, inside",
                        "0.508 ± 0.005 mm",
                        "0.020 in",
                        "first bend, its middle",
                        "Here: ",
                        "MPa below the proof",
                        "20 ± 5°",
                        "Order of bending",
                        Numbers.plain(g.right().firstBend().value(), 1) + " mm")
                .containsPattern("\\d+ ± \\d+ to \\d+ ± \\d+ gf")
                .contains(
                        "Lay out before you start",
                        "a hard-wire cutter that",
                        "At the bench",
                        "The midline is marked on the wire");
        assertThat(everyPage(pdf)).contains("At the chair", "Activations", "Checked by (initials)");
    }

    @Test
    void namesWhatIsMissingAndLeavesBlanks() throws IOException {
        byte[] pdf = pdf("knot-08-half-missing", Paper.A4);
        assertThat(everyPage(pdf)).contains("What is missing").doesNotContain("The straight blank");
        assertThat(everyPage(pdf)).contains("Not assessed; missing:").doesNotContain("All four incisors together");
    }

    @Test
    void refusesWhenNothingCanBeDrawn() throws IOException {
        Checked nothing =
                check(Edit.forget(Edit.forget(checked("knot-08-half-missing").subject(), "/arch"), "/landmarks"));
        assertThat(sheet.refusal(nothing))
                .isNotEmpty()
                .allSatisfy(m -> assertThat(m.words()).isNotBlank());
        assertThatThrownBy(() -> sheet.pdf(nothing, Paper.A4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("missing");
        assertThat(sheet.refusal(checked("heron-07-clean"))).isEmpty();
    }

    /** Of the chair's and the bench's criteria only these ask for nothing that a case has a number of. */
    @Test
    void theChecklistTellsThisCasesNumbers() throws IOException {
        SheetCase c = new SheetCase(checked("heron-07-clean"));
        ChecklistNumbers numbers = new ChecklistNumbers(c);
        List<String> without = Stream.of(Stage.BENCH, Stage.INSERTION)
                .flatMap(s -> Rulebase.load(null).catalogue().criteria(s).stream())
                .map(Criterion::id)
                .filter(id -> numbers.of(id).isEmpty())
                .toList();
        assertThat(without).containsExactlyInAnyOrder("few-rebends", "eye-and-airway-protection", "no-cinch-needed");
        // blank in hand of 116.0, cut 51.3 mm from its middle
        assertThat(numbers.of("cut-end-caught")).contains("pieces of about 6.7 mm");
        assertThat(numbers.of("all-tied")).contains("brackets on 42, 41, 31, 32");
        assertThat(numbers.of("distal-ends-flush")).contains("tail of 3.0 mm in the tube");
        assertThat(numbers.of("instructions-given")).contains("next visit in 5 weeks");
    }

    /** 7 pt are 7 x 25.4 / 72 = 2.47 mm. */
    private static final double SEVEN_POINTS = 7 * 25.4 / 72;

    private static double length(String svg, String name) {
        Matcher m = Pattern.compile("\\b" + name + "=\"([\\d.]+)(mm|)\"").matcher(svg);
        assertThat(m.find()).isTrue();
        return Double.parseDouble(m.group(1)) * (m.group(2).isEmpty() ? 25.4 / 96 : 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heron-07-clean",
                "oystercatcher-04-sided-plan",
                "brambling-27-sided-plan-wide-arch",
                "snipe-14-ends-left-long",
                "turnstone-11-over-advanced"
            })
    void drawingsHaveLettersOfSevenPointsAndNameTheirDirections(String name) throws IOException {
        String html = sheet.html(checked(name), Paper.LETTER);
        Matcher drawings = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL).matcher(html);
        int steps = 0;
        while (drawings.find()) {
            String svg = drawings.group();
            Matcher box = Pattern.compile("viewBox=\"0 0 ([\\d.]+)").matcher(svg);
            assertThat(box.find()).isTrue();
            double scale = length(svg, "width") / Double.parseDouble(box.group(1));
            Matcher letters = Pattern.compile("font-size=\"([\\d.]+)\"").matcher(svg);
            while (letters.find()) {
                assertThat(Double.parseDouble(letters.group(1)) * scale)
                        .as(svg.substring(0, 120))
                        .isGreaterThanOrEqualTo(SEVEN_POINTS - 0.005);
            }
            if (svg.contains("id=\"step")) {
                steps++;
                boolean side = svg.contains(">occlusal<") && svg.contains(">gingival<");
                boolean above = svg.contains(">right<") && svg.contains(">left<");
                assertThat(side || above)
                        .as("directions of " + svg.substring(0, 60))
                        .isTrue();
                assertThat(!side || svg.contains(">mesial<") && svg.contains(">distal<"))
                        .as("mesial and distal of " + svg.substring(0, 60))
                        .isTrue();
            }
        }
        assertThat(steps).isEqualTo(12);
        assertThat(html).doesNotContainPattern("font-size: ?[0-6](\\.\\d+)?pt");
    }

    @Test
    void aSidedPlanPrintsTwoOpenings() throws IOException {
        Case c = Edit.set(
                Edit.set(
                        Edit.forget(checked("heron-07-clean").subject(), "/plan/standOff"), "/plan/standOffRight", 2.0),
                "/plan/standOffLeft",
                1.0);
        String html = sheet.html(check(c), Paper.A4);
        assertThat(html)
                .contains("R 2.0, L 1.0 ± 0.")
                .containsPattern("R 3\\d, L 2\\d ± \\d°")
                .containsPattern("stand-off</th><td class=\"allowed\">± 0.\\d</td><td class=\"number\">2.0 mm");
    }

    @Test
    void whatIsOpenStandsInABoxAtTheTop() throws IOException {
        byte[] pdf = pdf("turnstone-11-over-advanced", Paper.A4);
        String first = Pdfs.text(pdf, 1);
        assertThat(first).contains("Open before this wire is made or goes in");
        assertThat(first.indexOf("Open before")).isLessThan(first.indexOf("Order of bending"));
    }

    @Test
    void sameCaseIsSameBytes() throws IOException {
        assertThat(pdf("heron-07-clean", Paper.A4)).isEqualTo(sheet.pdf(checked("heron-07-clean"), Paper.A4));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void svgIsInMillimetres(Paper paper) throws IOException {
        String svg = sheet.svg(checked("heron-07-clean"), paper);
        assertThat(svg)
                .contains(
                        "width=\"" + trim(paper.width()) + "mm\"",
                        "height=\"" + trim(paper.height()) + "mm\"",
                        "viewBox=\"0 0 " + trim(paper.width()) + " " + trim(paper.height()) + "\"")
                .as("the drawings alone: no checklist is in it")
                .doesNotContain("checklist")
                .contains("a rule of 100 mm", "both folds from the cheek");
    }

    private static String trim(double v) {
        return String.valueOf(v).replaceAll("\\.0$", "");
    }
}
