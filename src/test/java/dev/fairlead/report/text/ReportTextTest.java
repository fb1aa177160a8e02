package dev.fairlead.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.report.Demo;
import dev.fairlead.report.summary.Headline;
import dev.fairlead.report.summary.MissingFact;
import dev.fairlead.report.text.ReportText.Detail;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReportTextTest {
    static List<Path> files() throws IOException {
        return Demo.files();
    }

    private static String flat(List<String> lines) {
        return String.join(" ", lines).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @MethodSource("files")
    void theFirstPageTellsWhetherToPresentWhatDecidesAndWhatToGetFirst(Path file) {
        Report report = Demo.checked(file).report();
        List<String> lines = ReportText.of(report, Detail.USUAL)
                .lines()
                .limit(ReportText.PAGE)
                .toList();
        String page = flat(lines);
        assertThat(lines).allMatch(l -> Wrap.columns(l) <= Wrap.WIDTH);
        assertThat(page.toLowerCase(java.util.Locale.ROOT))
                .contains(Headline.settle(report).toLowerCase(java.util.Locale.ROOT));
        assertThat(page).contains(Headline.meaning(report));
        for (Finding f : report.findings().all()) {
            if (f.open() && f.weight() == Weight.STOP) {
                assertThat(page).contains("STOP " + f.title());
            }
        }
        long open = report.findings().all().stream().filter(Finding::open).count();
        if (open <= 8) {
            assertThat(report.findings().all().stream().filter(Finding::open).map(Finding::title))
                    .allMatch(page::contains);
        }
        List<MissingFact> missing = MissingFact.of(report);
        if (!missing.isEmpty()) {
            assertThat(page).contains("GET FIRST " + missing.get(0).words());
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyWarningIsToldInFullAndNoneTwice(Path file) {
        Report report = Demo.checked(file).report();
        String text = flat(ReportText.of(report, Detail.USUAL).lines().toList());
        for (Finding f : report.findings().all()) {
            if (f.warns()) {
                assertThat(text.split(java.util.regex.Pattern.quote(f.stage().word() + ": " + f.id() + ")"), -1))
                        .hasSize(2);
                assertThat(text).contains(f.todo());
                if (f.under().isEmpty()) {
                    assertThat(text).contains(f.why());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void inBriefItTakesTwentyLinesAndUnfoldedItTellsOfEveryCriterion(Path file) {
        Report report = Demo.checked(file).report();
        assertThat(ReportText.of(report, Detail.BRIEF).lines())
                .hasSizeLessThanOrEqualTo(ReportText.BRIEF)
                .anyMatch(l -> !l.isBlank());
        String brief = ReportText.of(report, Detail.BRIEF).replaceAll("\\s+", " ");
        assertThat(brief).contains("does not replace it.");
        assertThat(brief.contains("DOUBTED in the case file: "))
                .as("a doubt is told, however short the report")
                .isEqualTo(!report.input().isEmpty());
        String all = ReportText.of(report, Detail.ALL);
        assertThat(report.findings().all()).allMatch(f -> all.contains(f.id()));
        report.findings()
                .all()
                .forEach(f -> f.missing().forEach(m -> assertThat(all).contains(m.pointer())));
    }

    @Test
    void aPassThatMoreLikelyFailsThanNotIsOnTheLimit() throws IOException {
        Checked checked = Demo.checked("redshank-15");
        Finding pass = checked.report().findings().of("records-fresh").withFlip(0.6);
        assertThat(pass.onTheLimit()).isTrue();
        assertThat(FindingText.inFull(pass)).startsWith("LIMIT").contains("Measure again");
        assertThat(checked.report().findings().of("records-fresh").withFlip(0.5).onTheLimit())
                .isFalse();
    }
}
