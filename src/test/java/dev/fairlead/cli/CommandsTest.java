package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/** Each command as a person calls it. */
class CommandsTest {
    private static final Path ZSH = Path.of("/usr/bin/zsh");

    private static final Path CLEAN = Path.of("cases/heron-07-clean.yaml");

    @TempDir
    Path folder;

    @Test
    @ResourceLock(Resources.SYSTEM_PROPERTIES)
    void standardInputIsReadLikeAFile() throws IOException {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(Files.readAllBytes(CLEAN)));
            assertThat(CasesTest.run("check", "-")).isEqualTo(CasesTest.run("check", CLEAN.toString()));
        } finally {
            System.setIn(before);
        }
    }

    /**
     * A check without options does not go through the command line; it must be the check with the defaults that the
     * help tells.
     */
    @Test
    void aPlainCheckIsTheCheckWithTheDefaults() {
        CasesTest.Run plain = CasesTest.run("check", CLEAN.toString(), "cases/avocet-03-thin-and-steep.yaml");
        assertThat(plain)
                .isEqualTo(CasesTest.run(
                        "check",
                        "--format",
                        "text",
                        "--fail-on",
                        "warn",
                        "--seed",
                        "20260101",
                        CLEAN.toString(),
                        "cases/avocet-03-thin-and-steep.yaml"));
        assertThat(CasesTest.run("check", "--help").out())
                .contains("(default text)", "(default warn)", "(default 20260101)")
                .containsPattern("corrected\\s+by\\s+a\\s+few\\s+draws");
        assertThat(CasesTest.run("--version")).isEqualTo(CasesTest.run("check", "--version"));
        assertThat(CasesTest.run("check", "no-such.yaml")).isEqualTo(CasesTest.run("check", "--all", "no-such.yaml"));
    }

    @Test
    void theWorstOfSeveralCasesDecidesAndNoneIsLost() {
        CasesTest.Run run = CasesTest.run(
                "check", CLEAN.toString(), "cases/gull-13-full-of-slips.yaml", "cases/avocet-03-thin-and-steep.yaml");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("Case heron-07", "Case avocet-03");
        assertThat(run.err()).contains("gull-13-full-of-slips.yaml: refused");
    }

    @Test
    void theBlankCaseCanBeReadAndNothingOfItPasses() throws IOException {
        Path blank = folder.resolve("blank.yaml");
        CasesTest.Run wrote = CasesTest.run("start", "-o", blank.toString());
        assertThat(wrote.code()).as(wrote.err()).isZero();
        CasesTest.Run run = CasesTest.run("check", "--stage", "holding", blank.toString());
        assertThat(run.out()).doesNotContain("\n  pass ").contains("not assessed");
        assertThat(CasesTest.run("start", "-o", blank.toString()).code())
                .as("an existing file is kept")
                .isEqualTo(2);
    }

    @Test
    void theMinimalCaseIsReadAndChecked() throws IOException {
        Path minimal = folder.resolve("minimal.yaml");
        assertThat(CasesTest.run("start", "--minimal", "-o", minimal.toString()).code())
                .isZero();
        assertThat(CasesTest.run("check", "--fail-on", "never", minimal.toString())
                        .code())
                .isZero();
    }

    @Test
    void whatDoesNotApplyIsListedOnDemand() {
        String file = "cases/oystercatcher-04-sided-plan.yaml";
        assertThat(CasesTest.run("check", file).out()).doesNotContain("\n  does not apply ");
        assertThat(CasesTest.run("check", "--all", file).out()).contains("does not apply");
    }

    @Test
    void anotherDayIsJudgedForThatDay() {
        // before the start of treatment records grow old with the day that is judged
        CasesTest.Run late =
                CasesTest.run("check", "--stage", "records", "--date", "2028-01-01", "cases/knot-08-half-missing.yaml");
        assertThat(late.out()).contains("for 2028-01-01", "records-fresh");
        assertThat(late.code()).isEqualTo(4);
    }

    @Test
    void worksShowFormulaSubstitutionAndSource() {
        CasesTest.Run run = CasesTest.run("work", CLEAN.toString());
        assertThat(run.code()).isZero();
        // Tanaka & Johnston 1974 by hand for an incisor sum of 22.5 mm
        assertThat(run.out()).contains("formula  LI / 2 + 10.5", "here     22.5 / 2 + 10.5", "Tanaka & Johnston 1974");
        assertThat(run.out()
                        .lines()
                        .filter(l -> l.codePointCount(0, l.length()) > 80
                                && l.strip().contains(" ")
                                && !l.contains("/"))
                        .toList())
                .isEmpty();
    }

    @Test
    void criteriaAreListedAndExplained() {
        assertThat(CasesTest.run("criteria").out()).contains("overjet-after", "no-permanent-set");
        assertThat(CasesTest.run("criteria", "overjet-after").out())
                .contains("asked", "threshold   overjet-after.min", "source");
        assertThat(CasesTest.run("criteria", "overjet-afetr").err())
                .contains("No criterion is called overjet-afetr. Is overjet-after meant?");
    }

    @Test
    void aWordThatIsNoCommandIsSaid() {
        CasesTest.Run run = CasesTest.run("chek");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("check");
        assertThat(CasesTest.run("--version").out()).startsWith("fairlead ");
    }

    @Test
    void aPortOrFolderThatCannotBeServedIsToldBeforeAnythingStarts(@TempDir Path dir) {
        for (String port : new String[] {"65536", "99999", "-1"}) {
            CasesTest.Run run =
                    CasesTest.run("serve", "--port", port, dir.resolve("none").toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("--port takes 0 (a free one) to 65535, not " + port);
        }
        assertThat(dir.resolve("none")).doesNotExist();
        CasesTest.Run folder = CasesTest.run("serve", "a\0b");
        assertThat(folder.code()).isEqualTo(2);
        assertThat(folder.err()).contains("FOLDER", "fairlead serve --help").doesNotContain("Exception in thread");
    }

    @Test
    void aWrongCallIsToldInAFewLines() {
        CasesTest.Run date = CasesTest.run("check", "--date", "01.02.2026", "cases/heron-07-clean.yaml");
        assertThat(date.code()).isEqualTo(2);
        assertThat(date.err())
                .contains("2026-10-01", "found 01.02.2026", "fairlead check --help")
                .doesNotContain("java.time");
        for (String[] call : new String[][] {
            {"check", "--frobnicate", "x"}, {"check"}, {"chek", "x"}, {"check", "--stage", "bending", "x"}
        }) {
            CasesTest.Run run = CasesTest.run(call);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err().lines())
                    .as(String.join(" ", call))
                    .hasSizeBetween(2, 6)
                    .allMatch(l -> l.length() <= 80);
        }
        assertThat(CasesTest.run().err()).contains("Usage: fairlead", "check", "whatif");
    }

    @Test
    void aShellCompletesCommandsOptionsAndTheirWords() throws Exception {
        String script = CasesTest.run("completion").out();
        Path file = Files.writeString(folder.resolve("completion.bash"), script);
        Process bash = new ProcessBuilder(
                        "bash",
                        "-c",
                        "source " + file
                                + "; for line in 'fairlead che' 'fairlead start --st' 'fairlead start --stage ho'; do"
                                + " COMP_WORDS=($line); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); COMPREPLY=();"
                                + " _complete_fairlead; echo \"${COMPREPLY[@]}\"; done")
                // without a terminal bash says that it is completing nothing
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(new String(bash.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                        .lines()
                        .map(String::strip))
                .containsExactly("check", "--stage", "holding");
    }

    /** By its own keys: what a person sees behind the prompt after pressing the tabulator. */
    @Test
    void zshCompletesToo() throws Exception {
        assumeTrue(Files.isExecutable(ZSH), "zsh is installed");
        Path script = Files.writeString(
                folder.resolve("completion"), CasesTest.run("completion").out());
        // the module for pseudo-terminals is zsh's own, so that no other program has to play the person
        Path typed = Files.writeString(folder.resolve("typed.zsh"), """
                zmodload zsh/zpty
                zpty shell 'TERM=dumb PS1= zsh -f'
                zpty -w shell 'unsetopt zle_bracketed_paste; fairlead() { print -r -- "<$*>" }; source %s; print -r -- re""ady'
                zpty -r -m shell line '*ready*'
                for words in 'fairlead che' 'fairlead start --sta' 'fairlead start --stage hol'; do
                  zpty -w -n shell "$words"$'\t\n'
                  zpty -r -m shell line '*<*>*'
                  print -r -- "${${line##*<}%%%%>*}"
                done
                zpty -d shell
                """.formatted(script));
        Process zsh = new ProcessBuilder(ZSH.toString(), "-f", typed.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(zsh.waitFor(60, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
        assertThat(new String(zsh.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                        .lines()
                        .map(String::strip))
                .containsExactly("check", "start --stage", "start --stage holding");
    }

    @Test
    void aBlankCaseNamesTheSchemaThatLiesBesideIt() throws IOException {
        Path blank = folder.resolve("new.yaml");
        assertThat(CasesTest.run("start", "-o", blank.toString()).err()).contains(".fairlead-case.schema.json");
        String first = Files.readAllLines(blank).get(0);
        assertThat(first).startsWith("# yaml-language-server: $schema=");
        Path schema = blank.resolveSibling(first.substring(first.indexOf('=') + 1));
        assertThat(Files.readString(schema))
                .isEqualTo(CasesTest.run("start", "--schema").out());
        // beside a second one it is left as it is
        Files.writeString(schema, "mine");
        CasesTest.run(
                "start",
                "--stage",
                "records",
                "-o",
                folder.resolve("second.yaml").toString());
        assertThat(Files.readString(schema)).isEqualTo("mine");
    }

    @Test
    void aTableCanBeAsShortAsTheFirstStagesOrTheExample() {
        String whole =
                CasesTest.run("start", "--table").out().lines().findFirst().orElseThrow();
        String records = CasesTest.run("start", "--table", "--stage", "records").out();
        assertThat(whole).contains("wire.size", "visits.1.date", "holding.recall");
        assertThat(records.lines().findFirst().orElseThrow())
                .contains("teeth.42.width", "bite.overjet")
                .doesNotContain("wire.", "visits.", "insertion.", "holding.");
        String minimal = CasesTest.run("start", "--table", "--minimal").out();
        String[] lines = minimal.split("\n");
        assertThat(lines[0].split(",")).hasSizeBetween(15, 40).contains("plan.standOff");
        assertThat(lines[1]).doesNotContain(",,").contains("demo-minimal");
    }

    @Test
    void theHelpOfRulesShowsWhatAnOverlayHolds() {
        assertThat(CasesTest.run("check", "--help").out().replaceAll("\\s+", " "))
                .contains(
                        "thresholds.json",
                        "{\"overjet-after.min\": 2.0}",
                        "criterion.json",
                        "every criterion that differs");
    }

    /** The log of the local page lies beside the case file. */
    @Test
    void aReportTellsTheLastChangesShortly() throws IOException {
        Path file = Files.copy(CLEAN, folder.resolve("heron.yaml"));
        Path log =
                Files.createDirectories(folder.resolve(".history/heron.yaml")).resolve("log.ndjson");
        for (int i = 1; i <= 20; i++) {
            Files.writeString(
                    log,
                    "{\"when\":\"2026-07-20T09:%02d:00\",\"who\":\"resident ab\",\"field\":\"/bite/overjet\",\"old\":\"%d\",\"now\":\"%d\",\"why\":\"\"}%n"
                            .formatted(i, i, i + 1),
                    java.nio.file.StandardOpenOption.CREATE,
                    java.nio.file.StandardOpenOption.APPEND);
        }
        assertThat(CasesTest.run("check", file.toString()).out())
                .contains("LAST CHANGES", "2026-07-20 09:20:00, resident ab: overjet, bite, 20 → 21", "09:18:00")
                .doesNotContain("09:17:00");
        assertThat(CasesTest.run("check", "--brief", file.toString()).out()).doesNotContain("LAST CHANGES");
        Path pdf = folder.resolve("heron.pdf");
        CasesTest.run("check", "--format", "pdf", "-o", pdf.toString(), file.toString());
        byte[] bytes = Files.readAllBytes(pdf);
        StringBuilder all = new StringBuilder();
        try (var document = dev.fairlead.report.pdf.Pdfs.open(bytes)) {
            for (int p = document.getNumberOfPages() - 2; p <= document.getNumberOfPages(); p++) {
                all.append(dev.fairlead.report.pdf.Pdfs.text(bytes, p));
            }
        }
        String told = all.toString();
        assertThat(told).contains("Last changes", "09:09:00", "resident ab").doesNotContain("09:08:00");
        assertThat(CasesTest.run("check", CLEAN.toString()).out()).doesNotContain("LAST CHANGES");
    }
}
