package dev.fairlead.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checked;
import dev.fairlead.report.Demo;
import dev.fairlead.report.sheet.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class OnePageTest {
    private static final Pattern DRAWN = Pattern.compile(
            "<svg alt=\"[^\"]*\" width=\"(88)mm\"[^>]*viewBox=\"0 0 ([0-9.]+) [0-9.]+\".*?</svg>", Pattern.DOTALL);
    private static final Pattern SIZE = Pattern.compile("font-size=\"([0-9.]+)\"");
    private static final double POINTS_PER_MM = 72 / 25.4;

    static List<Path> files() throws IOException {
        return Demo.files().stream()
                .filter(p -> p.toString()
                        .matches(".*(heron-07|knot-08|avocet-03|crake-29|linnet-25|turnstone-11|dotterel-30).*"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aCaseIsPresentedOnOnePage(Path file) throws IOException {
        Checked checked = Demo.checked(file);
        try (PDDocument pdf = Loader.loadPDF(ReportPdf.onePage(List.of(checked), List.of()))) {
            assertThat(pdf.getNumberOfPages()).as(file.toString()).isOne();
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Case " + checked.subject().id(), "What decides", "Key numbers")
                    .containsPattern("(Girl|Boy|Child) of \\d+\\.\\d years");
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void labelsOnTheFirstPageAreSevenPointsOrMore(Path file) {
        String pages = ReportPdf.pages(List.of(Demo.checked(file)), List.of(), false);
        Matcher svg = DRAWN.matcher(pages);
        int drawings = 0;
        while (svg.find()) {
            drawings++;
            double points = Double.parseDouble(svg.group(1)) * POINTS_PER_MM / Double.parseDouble(svg.group(2));
            Matcher size = SIZE.matcher(svg.group());
            while (size.find()) {
                assertThat(Double.parseDouble(size.group(1)) * points).isGreaterThanOrEqualTo(7);
            }
        }
        assertThat(drawings).isBetween(0, 2);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theFamilyGetsOnePageWithTheSignsThatMeanEmergencyHelp(Paper paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(FamilySheet.pdf("heron-07", paper))) {
            assertThat(pdf.getNumberOfPages()).isOne();
            assertThat((float) (pdf.getPage(0).getMediaBox().getWidth() / POINTS_PER_MM))
                    .isBetween((float) paper.width() - 0.5f, (float) paper.width() + 0.5f);
            assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "))
                    .contains("What to avoid", "A wire pokes", "band or bracket is loose", "swallowed")
                    .contains("Call the emergency number", "cannot breathe freely", "Whom to call", "heron-07");
        }
    }

    @Test
    void onPaperUnknownNumbersOfLaterStagesAreLeftOut() throws IOException {
        Checked checked = Demo.checked("knot-08");
        String pages = ReportPdf.pages(List.of(checked), List.of(), false);
        String screen = ReportHtml.of(checked);
        assertThat(screen).contains("room to spare at the end, left");
        assertThat(pages).doesNotContain("room to spare at the end, left");
    }
}
