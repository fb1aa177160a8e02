package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Less to read where less is wanted. */
class ReadingCommandsTest {
    private static final String HALF = "cases/knot-08-half-missing.yaml";

    @Test
    void workedNumbersAreThoseOfAStageOrOfAName() {
        String bench = CasesTest.run("work", "--stage", "bench", "cases/heron-07-clean.yaml")
                .out();
        assertThat(bench).contains("blank to cut").doesNotContain("duplicate error", "overjet after");
        String overjet = CasesTest.run("work", "--name", "OVERJET", "cases/heron-07-clean.yaml")
                .out();
        assertThat(overjet).contains("overjet after advancement").doesNotContain("blank to cut");
    }

    @Test
    void whatIsNotKnownIsCountedAndShownWhenAsked() {
        String usual = CasesTest.run("work", HALF).out();
        assertThat(usual).doesNotContain(": unknown").containsPattern("\\d+ numbers are not known");
        assertThat(CasesTest.run("work", "--all", HALF).out())
                .contains(": unknown")
                .contains("missing");
    }

    @Test
    void inBriefTheReportTakesTwentyLines() {
        assertThat(CasesTest.run("check", "--brief", "cases/turnstone-11-over-advanced.yaml")
                        .out()
                        .lines())
                .hasSizeBetween(5, 20);
    }

    @Test
    void onePageAndTheFamilysPageAreWritten(@TempDir Path folder) throws IOException {
        Path page = folder.resolve("one.pdf");
        CasesTest.run("check", "--format", "pdf", "--pages", "one", "-o", page.toString(), HALF);
        assertThat(new String(Files.readAllBytes(page), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        Path family = folder.resolve("family.pdf");
        assertThat(CasesTest.run("sheet", HALF, "--family", "--paper", "LETTER", "-o", family.toString())
                        .code())
                .isZero();
        assertThat(Files.size(family)).isGreaterThan(5000);
        CasesTest.Run refused = CasesTest.run(
                "sheet", HALF, "--family", "-o", folder.resolve("family.svg").toString());
        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.err()).contains(".pdf");
    }
}
