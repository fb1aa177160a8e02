package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Reach;
import dev.fairlead.findings.Report;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is recorded is judged, wherever the writer of the case believes to be. */
class ReachTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final CheckOptions BARE =
            new CheckOptions(Optional.empty(), Optional.empty(), false, Doubting.NONE, false);

    private static Case demo(String name) throws IOException {
        try (Stream<Path> all = Files.list(Path.of("cases"))) {
            Path file = all.filter(p -> p.getFileName().toString().startsWith(name))
                    .findFirst()
                    .orElseThrow();
            return CaseReader.read(file).value().orElseThrow();
        }
    }

    private static List<Case> many() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> all = Files.list(Path.of("cases"))) {
            for (Path file : all.sorted().toList()) {
                CaseReader.read(file).value().ifPresent(cases::add);
            }
        }
        for (long i = 0; i < 60; i++) {
            cases.add(Cohort.one(11, i).made());
        }
        return cases;
    }

    private static Report report(Case c, CheckOptions options) {
        return CHECKER.check(c, "", options).report();
    }

    private static Set<String> warned(Case c) {
        Set<String> ids = new TreeSet<>();
        for (Finding f : report(c, BARE).findings().all()) {
            if (f.warns()) {
                ids.add(f.id());
            }
        }
        return ids;
    }

    @Test
    void movingTheStageBackOrLeavingItOutNeverRemovesAWarning() throws IOException {
        int warnings = 0;
        for (Case c : many()) {
            Set<String> before = warned(c);
            warnings += before.size();
            for (Stage stage : Stage.values()) {
                if (!stage.hasReached(c.stage().get())) {
                    assertThat(warned(Edit.set(c, "/stage", stage))).as(c.id()).isEqualTo(before);
                }
            }
            assertThat(warned(Edit.forget(c, "/stage"))).as(c.id()).isEqualTo(before);
        }
        assertThat(warnings).isGreaterThan(60);
    }

    @ParameterizedTest
    @CsvSource({
        "/visits/0/newRecession, tissue-and-root-signs",
        "/visits/0/lastingPain, tissue-and-root-signs",
        "/visits/0/blanching, tissue-and-root-signs",
        "/insertion/left/cheekSore, cheek-clearance",
        "/insertion/blanching, gingival-clearance",
        "/insertion/right/bentBehind, no-cinch-needed"
    })
    void aFactOfHarmIsJudgedWhateverTheStage(String pointer, String criterion) throws IOException {
        Case harmed = Edit.set(demo("godwit-02"), pointer, true);
        for (Stage stage : Stage.values()) {
            assertThat(warned(Edit.set(harmed, "/stage", stage)))
                    .as(stage.word())
                    .contains(criterion);
        }
    }

    @Test
    void aCaseLeftAtTheBenchIsJudgedToItsLastVisitAndSaysSo() throws IOException {
        Case c = Edit.set(demo("redshank-15"), "/stage", Stage.BENCH);
        Report report = report(c, BARE);
        assertThat(report.stages()).endsWith(Stage.ACTIVATION);
        assertThat(report.subject().note())
                .isEqualTo("The case says bench; facts of activation are recorded, so they are judged too.");
        assertThat(report.counts().stop()).isPositive();
    }

    @Test
    void lessIsJudgedOnlyWhenAskedForAndThenTheReportSaysWhatIsLeftOut() throws IOException {
        Case c = demo("redshank-15");
        Report all = report(c, BARE);
        Report less = report(c, BARE.at(Stage.BENCH));
        long beyond = all.findings().all().stream()
                .filter(f -> f.warns() && !Stage.BENCH.hasReached(f.stage()))
                .count();
        assertThat(beyond).isGreaterThan(1);
        assertThat(less.stages()).endsWith(Stage.BENCH);
        assertThat(less.subject().note())
                .isEqualTo("Judged only as far as bench, as asked: insertion to activation are left out, with " + beyond
                        + " warnings there.");
        assertThat(all.subject().note()).isEmpty();
    }

    @Test
    void anEmptySectionOfATemplateIsNoFact() {
        Case blank = CaseReader.read(
                        BlankCase.text(Stage.HOLDING).getBytes(StandardCharsets.UTF_8), "blank", CaseFormat.YAML)
                .value()
                .orElseThrow();
        Reach reach = BARE.reach(blank);
        assertThat(reach.recorded()).isEqualTo(Stage.RECORDS);
        assertThat(reach.judged()).isEqualTo(Stage.RECORDS);
        assertThat(reach.stated()).isEmpty();
        // a recall that is only planned says nothing of where the child is
        assertThat(BARE.reach(Edit.set(blank, "/holding/recall", 6)).recorded()).isEqualTo(Stage.RECORDS);
        assertThat(BARE.reach(Edit.set(blank, "/holding/passive", false)).recorded())
                .isEqualTo(Stage.HOLDING);
        assertThat(BARE.reach(Edit.set(blank, "/hardware/modelOverBands", true)).recorded())
                .isEqualTo(Stage.READINESS);
    }

    @Test
    void aStageThatIsAheadOfTheFactsIsStillJudgedAndTold() throws IOException {
        Case c = Edit.set(demo("avocet-03"), "/stage", Stage.BENCH);
        Report report = report(c, BARE);
        assertThat(report.stages()).endsWith(Stage.BENCH);
        assertThat(report.subject().note()).isEqualTo("The case says bench; nothing is recorded beyond indication.");
    }

    @Test
    void theDayIsTheLatestThatIsRecordedUnlessOneIsGiven() throws IOException {
        Case c = demo("redshank-15");
        LocalDate last = c.visits().stream()
                .map(v -> v.date().get())
                .max(LocalDate::compareTo)
                .orElseThrow();
        assertThat(Arrays.asList(
                        BARE.reach(Edit.set(c, "/date", "2026-01-05")).day(),
                        BARE.reach(Edit.forget(c, "/date")).day(),
                        BARE.reach(Edit.set(c, "/date", "2031-01-05")).day(),
                        BARE.on(LocalDate.of(2026, 1, 7)).reach(c).day()))
                .containsExactly(
                        Optional.of(last),
                        Optional.of(last),
                        Optional.of(LocalDate.of(2031, 1, 5)),
                        Optional.of(LocalDate.of(2026, 1, 7)));
        assertThat(report(Edit.set(c, "/date", "2026-01-05"), BARE).subject().note())
                .contains("It is dated 2026-01-05; judged for the last recorded day.");
    }
}
