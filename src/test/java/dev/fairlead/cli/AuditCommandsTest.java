package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Audits as a director calls them. */
class AuditCommandsTest {
    private static final String CLEAN = "cases/heron-07-clean.yaml";
    private static final String SLIPS = "cases/gull-13-full-of-slips.yaml";

    @TempDir
    Path folder;

    @Test
    void exitCodesFollowTheWorstOfAllCases() {
        assertThat(CasesTest.run("audit", CLEAN).code()).isZero();
        CasesTest.Run warned = CasesTest.run("audit", CLEAN, "cases/avocet-03-thin-and-steep.yaml");
        assertThat(warned.code()).isEqualTo(4);
        assertThat(warned.out()).contains("2 cases judged").contains("avocet-03");
        assertThat(CasesTest.run("audit", "--fail-on", "never", "cases/avocet-03-thin-and-steep.yaml")
                        .code())
                .isZero();
        CasesTest.Run unread = CasesTest.run("audit", CLEAN, SLIPS);
        assertThat(unread.code()).isEqualTo(3);
        assertThat(unread.out()).contains("1 case judged, 1 unreadable").contains(SLIPS);
        assertThat(CasesTest.run("audit", "nowhere.json").code()).isEqualTo(3);
        assertThat(CasesTest.run("audit", "--format", "xlsx", CLEAN).code())
                .as("a workbook needs a file")
                .isEqualTo(2);
        assertThat(CasesTest.run("audit", "--threads", "0", CLEAN).code()).isEqualTo(2);
        assertThat(CasesTest.run("audit", "--truth", "nowhere.ndjson", CLEAN).code())
                .isEqualTo(2);
    }

    @Test
    void anInventedCohortIsAuditedInEveryFormAndItsFaultsAreFound() throws IOException {
        Path cases = folder.resolve("c.ndjson");
        assertThat(CasesTest.run("cohort", "--n", "30", "--seed", "7", "-o", cases.toString())
                        .code())
                .isZero();
        assertThat(CasesTest.run("cohort", "--n", "30", "-o", cases.toString()).code())
                .as("existing files are kept")
                .isEqualTo(2);
        assertThat(CasesTest.run("cohort", "--n", "30", "--seed", "7").out()).isEqualTo(Files.readString(cases));
        Path many = folder.resolve("many");
        CasesTest.run("cohort", "--n", "30", "--seed", "7", "-o", many.toString());
        String truth = folder.resolve("c.truth.ndjson").toString();
        String text = CasesTest.run("audit", cases.toString(), "--truth", truth).out();
        assertThat(text)
                .contains("30 cases judged")
                .contains("PLANTED FAULTS FOUND")
                .contains("30 cases with a known truth");
        for (String form : new String[] {"json", "ndjson", "csv", "xlsx", "parquet", "html"}) {
            Path out = folder.resolve("o." + form);
            assertThat(CasesTest.run("audit", cases.toString(), "--resume", "--format", form, "-o", out.toString())
                            .code())
                    .as(form)
                    .isEqualTo(4);
            assertThat(out).isNotEmptyFile();
        }
        try (var left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString()))
                    .noneMatch(n -> n.endsWith(".part") || n.endsWith(".journal"));
        }
        Path pages = folder.resolve("pages");
        CasesTest.run(
                "audit",
                cases.toString(),
                "--cases",
                "2",
                "--pages",
                pages.toString(),
                "--format",
                "html",
                "-o",
                folder.resolve("p.html").toString());
        try (var reports = Files.list(pages)) {
            assertThat(reports.map(p -> "pages/" + p.getFileName()))
                    .hasSize(2)
                    .allMatch(link -> read("p.html").contains("href=\"" + link + "\""));
        }
        // one file a case gives the same counts as one line a case
        String all = CasesTest.run("audit", many.toString()).out();
        assertThat(all.substring(all.indexOf("\nSTAGE"), all.indexOf("\nWHO FIRST")))
                .isEqualTo(text.substring(text.indexOf("\nSTAGE"), text.indexOf("\nWHO FIRST")));
    }

    @Test
    void forcesLeftOutAreSaidAndNeverAPass() throws IOException {
        Path out = folder.resolve("quick.csv");
        assertThat(CasesTest.run("audit", "--without-forces", CLEAN).out())
                .contains("The beam model of the wire was")
                .contains("not assessed");
        CasesTest.run(
                "audit", "--without-forces", "--fail-on", "never", "--format", "csv", "-o", out.toString(), CLEAN);
        assertThat(Files.readString(out))
                .containsPattern("no-permanent-set[^\n]*not-assessed")
                .doesNotContainPattern("no-permanent-set[^\n]*,pass,");
        Path with = folder.resolve("whole.csv");
        CasesTest.run("audit", "--fail-on", "never", "--format", "csv", "-o", with.toString(), CLEAN);
        assertThat(Files.readString(with)).containsPattern("no-permanent-set[^\\n]*,pass,");
    }

    @Test
    void tablesToBeginWithAreAuditedAsTheyAre() {
        for (String form : new String[] {"csv", "xlsx"}) {
            Path table = folder.resolve("t." + form);
            assertThat(CasesTest.run("start", "--table", "-o", table.toString()).code())
                    .isZero();
            assertThat(CasesTest.run("audit", "--fail-on", "never", table.toString())
                            .out())
                    .contains("1 case judged");
        }
        assertThat(CasesTest.run("start", "--table").out()).startsWith("id,stage,date,resident");
        Path mapping = folder.resolve("m.json");
        assertThat(CasesTest.run("start", "--table", "-o", mapping.toString()).code())
                .isZero();
        assertThat(CasesTest.run("audit", "--mapping", mapping.toString(), CLEAN)
                        .code())
                .isZero();
    }

    @Test
    void aChangeOfAThresholdIsTriedAndSwept() throws IOException {
        CasesTest.Run tried = CasesTest.run("compare", "--threshold", "overjet-after.min=3", CLEAN);
        assertThat(tried.code()).as(tried.err()).isZero();
        assertThat(tried.out())
                .contains("overjet-after.min = 3 mm instead of 1")
                .contains("overjet-after");
        CasesTest.Run swept = CasesTest.run("compare", "--sweep", "overjet-after.min=0:3:4", "--format", "html", CLEAN);
        assertThat(swept.out()).contains("sweep-overjet-after-title").contains("<table");
        assertThat(CasesTest.run("compare", "--sweep", "overjet-after.min", "--format", "json", CLEAN)
                        .out())
                .contains("\"inForce\" : 1.0");
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(rules.resolve("thresholds.json"), "{\"overjet-after.min\": 3}");
        CasesTest.Run two = CasesTest.run("compare", "built-in", rules.toString(), CLEAN);
        assertThat(two.out().lines().skip(1).toList())
                .isEqualTo(tried.out()
                        .lines()
                        .skip(tried.out()
                                .lines()
                                .toList()
                                .indexOf(two.out().lines().toList().get(1)))
                        .toList());
        assertThat(CasesTest.run("compare", "built-in", CLEAN).code()).isEqualTo(2);
        assertThat(CasesTest.run("compare", "--threshold", "overjet-after.min=99", CLEAN)
                        .code())
                .isEqualTo(2);
        assertThat(CasesTest.run("compare", "--sweep", "nothing", CLEAN).code()).isEqualTo(2);
        assertThat(CasesTest.run("compare", "--sweep", "overjet-after.min=3:1", CLEAN)
                        .code())
                .isEqualTo(2);
    }

    private String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void anAuditOfNothingIsNotClean(@TempDir Path empty) {
        CasesTest.Run run = CasesTest.run("audit", empty.toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("No case was found in").contains(".ndjson");
    }

    @Test
    void noOutputOfAnAuditIsWrittenOverWhatItReads() throws IOException {
        Path table = folder.resolve("mine.csv");
        String text = "id,stage\na,records\n";
        for (String option : new String[] {"--problems", "--propose-mapping"}) {
            Files.writeString(table, text);
            CasesTest.Run run = CasesTest.run("audit", table.toString(), option, table.toString(), "--force");
            assertThat(run.code()).as(option).isEqualTo(2);
            assertThat(table).as(option).hasContent(text);
        }
        CasesTest.Run drawn =
                CasesTest.run("audit", table.toString(), "--sample", "1", "-o", table.toString(), "--force");
        assertThat(drawn.code()).isEqualTo(2);
        assertThat(table).hasContent(text);
    }

    @Test
    void aRulebaseBesideATriedThresholdIsNoPathOfCases() {
        CasesTest.Run run = CasesTest.run("compare", "built-in", "cases", "--threshold", "overjet-after.min=1.5");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("name the cases alone", "--rules DIR");
    }
}
