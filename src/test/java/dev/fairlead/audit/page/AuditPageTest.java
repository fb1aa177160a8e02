package dev.fairlead.audit.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditPageTest {
    @TempDir
    private static Path folder;

    private static String page;
    private static Summary summary;

    @BeforeAll
    static void audit() throws IOException {
        Path lines = folder.resolve("<b onclick=x>c.ndjson");
        try (Writer cases = Files.newBufferedWriter(lines)) {
            CohortFiles.lines(120, 4, cases, Writer.nullWriter(), n -> {});
            cases.write("{\"</script><script>alert(1)</script>\": 1}\n");
        }
        Checker checker = new Checker(Rulebase.builtIn());
        Tally tally = new Tally(checker, 20);
        new Audit(checker, Audit.Settings.USUAL)
                .run(new Sources(List.of(lines), Mapping.NONE), () -> tally::add, n -> {});
        summary = tally.summary();
        page = AuditPage.of(
                checker,
                CheckOptions.USUAL,
                new Heading(
                        "test",
                        RulebaseUsed.of(checker.rulebase()),
                        "",
                        "",
                        true,
                        List.of(lines.toString()),
                        List.of()),
                summary,
                Optional.empty(),
                Optional.empty(),
                "cases");
    }

    @Test
    void nothingIsLoadedFromElsewhereAndTheOnlyScriptIsItsOwn() {
        assertThat(page.replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("http://")
                .doesNotContain("https://")
                .doesNotContain("src=")
                .doesNotContain("@import");
        assertThat(Pattern.compile("<script").matcher(page).results().count()).isEqualTo(1);
        assertThat(page).containsPattern("script-src .{1,5}sha256-");
    }

    @Test
    void namesFromOutsideStayText() {
        assertThat(page).doesNotContain("<b onclick").contains("&lt;b onclick");
    }

    @Test
    void countsChartsAndCasesStandThere() {
        assertThat(page)
                .contains("120 cases judged")
                .contains("residents-burden-title")
                .contains("period-all-title")
                .contains("Holm 1979")
                .contains("nobody is ranked");
        assertThat(Pattern.compile("<details class=\"case ")
                        .matcher(page)
                        .results()
                        .count())
                .isEqualTo(20);
        assertThat(Pattern.compile("<details class=\"crit\"")
                        .matcher(page)
                        .results()
                        .count())
                .isEqualTo(summary.criteria().size());
        assertThat(page)
                .contains("Not read (1)")
                .contains("href=\"cases/" + summary.looks().get(0).row().id() + ".html\"");
    }

    @Test
    void aWireInTheMouthAndAStopComesFirstAndClosedCasesLast() {
        assertThat(summary.looks()).isSorted().hasSize(20);
        assertThat(summary.looks().get(0)).satisfies(l -> {
            assertThat(l.stops()).isPositive();
            assertThat(l.row().course()).isEqualTo(CaseRow.Course.WIRE_IN);
        });
        assertThat(page)
                .contains("Who first")
                .contains("Where teaching helps most")
                .contains("What is missing");
    }

    @Test
    void identifiersOnThePageAreUnique() {
        List<String> ids = Pattern.compile(" id=\"([^\"]*)\"")
                .matcher(page)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
    }
}
