package dev.fairlead.audit.agree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.write.DetectionText;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgreeTest {
    private static final Catalogue CATALOGUE = Rulebase.builtIn().catalogue();

    @TempDir
    private Path folder;

    private static CaseRow row(String id, Ending first) {
        byte[] endings = new byte[CATALOGUE.criteria().size()];
        Arrays.fill(endings, (byte) Ending.PASS.ordinal());
        endings[0] = (byte) first.ordinal();
        return new CaseRow(
                id,
                CaseRow.Kind.JUDGED,
                "",
                id,
                "",
                Stage.HOLDING,
                "",
                "",
                endings,
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                0,
                List.of(),
                "",
                CaseRow.Course.BEFORE_WIRE,
                CaseRow.Details.NONE,
                false);
    }

    /**
     * Fleiss 1981, Statistical Methods for Rates and Proportions, table 13.1, with pass, caution and stop for the
     * diagnoses.
     */
    @Test
    void kappaOfAPublishedTableComesOutOfRowsAndVerdicts() throws IOException, TableException {
        long[][] counts = {{75, 1, 4}, {5, 4, 1}, {0, 0, 10}};
        Ending[] ours = {Ending.PASS, Ending.CAUTION, Ending.STOP};
        String[] theirs = {"pass", "caution", "stop"};
        StringBuilder table = new StringBuilder("case;verdict\n");
        java.util.List<CaseRow> rows = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int n = 0; n < counts[i][j]; n++) {
                    String id = "c" + i + j + n;
                    rows.add(row(id, ours[i]));
                    table.append(id).append(';').append(theirs[j]).append('\n');
                }
            }
        }
        table.append("unknown-1;pass\n");
        Agreement agreement = new Agreement(
                Reviewer.read(Files.writeString(folder.resolve("v.csv"), table.toString()), CATALOGUE), CATALOGUE);
        rows.forEach(agreement::add);
        agreement.add(row("not-reviewed", Ending.STOP));
        Agreement.Result r = agreement.result();
        assertThat(r.lines()).singleElement().satisfies(l -> {
            assertThat(l.pairs()).isEqualTo(100);
            assertThat(l.same()).isEqualTo(89);
            assertThat(l.plain().value()).isCloseTo(0.6765, within(5e-5));
            assertThat(l.linear().value()).isCloseTo(0.7222, within(5e-5));
        });
        assertThat(r.differ()).isEqualTo(11);
        assertThat(r.differences().get(0))
                .isEqualTo(new Agreement.Difference("c010", "c010", "", Word.PASS, Word.CAUTION));
        assertThat(r.unknown()).containsExactly("unknown-1");
    }

    @Test
    void verdictsOnCriteriaAndPlainWarningsAreTaken() throws IOException, TableException {
        String id = CATALOGUE.criteria().get(0).id();
        Agreement agreement = new Agreement(
                Reviewer.read(
                        Files.writeString(
                                folder.resolve("v.csv"),
                                "Case,Criterion,Verdict\na," + id + ",warn\nb," + id + ",not assessed\n"),
                        CATALOGUE),
                CATALOGUE);
        agreement.add(row("a", Ending.STOP));
        agreement.add(row("b", Ending.PASS));
        assertThat(agreement.result().lines())
                .extracting(Agreement.Line::criterion)
                .containsExactly("all", id);
        assertThat(agreement.result().differences())
                .singleElement()
                .satisfies(d -> assertThat(d.reviewer()).isEqualTo(Word.NOT_ASSESSED));
        for (String bad : List.of(
                "case,verdict\na,fine\n",
                "case,verdict,criterion\na,pass,nothing\n",
                "case,verdict\na,pass\na,stop\n",
                "id,verdict\na,pass\n",
                "case,verdict\na,warn\nb,stop\n")) {
            assertThatThrownBy(() -> Reviewer.read(Files.writeString(folder.resolve("w.csv"), bad), CATALOGUE))
                    .as(bad)
                    .isInstanceOf(TableException.class);
        }
    }

    /** Two reviewers of one published table (Fleiss 1981, table 13.1), and a third who leaves most blank. */
    @Test
    void reviewersAreHeldAgainstEachOtherAndAgainstTheProgram() throws IOException, TableException {
        long[][] counts = {{75, 1, 4}, {5, 4, 1}, {0, 0, 10}};
        String[] words = {"pass", "caution", "stop"};
        StringBuilder table = new StringBuilder("case,verdict,reviewer\n");
        java.util.List<CaseRow> rows = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int n = 0; n < counts[i][j]; n++) {
                    String id = "c" + i + j + n;
                    rows.add(row(id, Ending.PASS));
                    table.append(id).append(',').append(words[i]).append(",anna\n");
                    table.append(id).append(',').append(words[j]).append(",ben\n");
                    table.append(id).append(',').append(n == 0 ? words[i] : "").append(",carl\n");
                }
            }
        }
        Agreement agreement = new Agreement(
                Reviewer.read(Files.writeString(folder.resolve("v.csv"), table.toString()), CATALOGUE), CATALOGUE);
        rows.forEach(agreement::add);
        ReviewPanel.Result p = agreement.result().panel();
        assertThat(p.names()).containsExactly("anna", "ben", "carl");
        assertThat(p.pairs().get(0)).satisfies(x -> {
            assertThat(x.a() + " " + x.b()).isEqualTo("anna ben");
            assertThat(x.same().count()).isEqualTo(89);
            assertThat(x.kappa().value()).isCloseTo(0.6765, within(5e-5));
            assertThat(x.kappa().error()).isBetween(0.05, 0.15);
        });
        assertThat(p.reviewers().estimable()).isTrue();
        assertThat(p.reviewers().value()).isGreaterThan(p.withProgram().value());
        assertThat(p.calibration()).hasSize(10);
        // carl against anna is the same throughout: seven verdicts of three kinds
        assertThat(p.pairs().get(1).kappa().value()).isEqualTo(1);
        String text = dev.fairlead.audit.write.AgreementText.of(agreement.result());
        assertThat(text).contains("REVIEWERS AMONG EACH OTHER").doesNotContain("0.00 (");
    }

    @Test
    void aBlindSampleIsTheSameForASeedAndTellsNoVerdict() {
        BlindSample a = new BlindSample(3, 7);
        BlindSample b = new BlindSample(3, 7);
        for (int i = 0; i < 50; i++) {
            a.add(row("c" + i, i % 2 == 0 ? Ending.STOP : Ending.PASS));
            b.add(row("c" + i, Ending.PASS));
        }
        assertThat(a.table(CATALOGUE))
                .isEqualTo(b.table(CATALOGUE))
                .doesNotContain("stop,")
                .startsWith("case,criterion");
        assertThat(a.table(CATALOGUE).lines().skip(1).map(l -> l.split(",")[0]).distinct())
                .hasSize(3);
    }

    @Test
    void allThatWasPlantedIsFoundAndNothingElse() throws IOException, TableException {
        Path lines = folder.resolve("c.ndjson");
        Path beside = CohortFiles.truthBeside(lines);
        try (Writer cases = Files.newBufferedWriter(lines);
                Writer truth = Files.newBufferedWriter(beside)) {
            CohortFiles.lines(150, 8, cases, truth, n -> {});
        }
        Detection detection = Detection.read(beside, CATALOGUE);
        new Audit(new Checker(Rulebase.builtIn()), Audit.Settings.USUAL)
                .run(new Sources(List.of(lines), Mapping.NONE), () -> d -> detection.add(d.row()), n -> {});
        Detection.Result r = detection.result();
        assertThat(r.cases()).isEqualTo(150);
        long planted = r.lines().stream().mapToLong(l -> l.sensitivity().of()).sum();
        assertThat(planted).isGreaterThan(100);
        assertThat(r.misses()).isEmpty();
        assertThat(r.lines()).allMatch(Detection.Line::exact).allMatch(l -> l.leftOut() == 0);
        assertThat(DetectionText.verdict(r)).isEqualTo("Every fault and every gap was found, and nothing else.");
    }

    @Test
    void whatOnlyTheBeamModelCanTellCountsNowhereWhereItIsLeftOut() throws IOException, TableException {
        Path lines = folder.resolve("c.ndjson");
        Path beside = CohortFiles.truthBeside(lines);
        try (Writer cases = Files.newBufferedWriter(lines);
                Writer truth = Files.newBufferedWriter(beside)) {
            CohortFiles.lines(400, 9, cases, truth, n -> {});
        }
        Detection detection = Detection.read(beside, CATALOGUE);
        Audit.Settings settings =
                new Audit.Settings(CheckOptions.USUAL.withoutForces(), 2, Duration.ofSeconds(30), Optional.empty());
        new Audit(new Checker(Rulebase.builtIn()), settings)
                .run(new Sources(List.of(lines), Mapping.NONE), () -> d -> detection.add(d.row()), n -> {});
        Detection.Result r = detection.result();
        assertThat(r.misses()).isEmpty();
        assertThat(r.lines().stream().filter(l -> l.leftOut() > 0))
                .extracting(Detection.Line::criterion)
                .containsExactly("planned-force-fits", "no-permanent-set", "vertical-force");
        assertThat(DetectionText.of(r)).contains("counted nowhere: only the beam model of the wire could tell");
    }

    @Test
    void aMissedFaultAndAFalseAlarmAreCountedWhereTheyBelong() throws IOException, TableException {
        String id = CATALOGUE.criteria().get(0).id();
        Path truth = Files.writeString(
                folder.resolve("t.ndjson"),
                "{\"id\":\"a\",\"planted\":[{\"criterion\":\"" + id
                        + "\",\"kind\":\"warns\",\"says\":\"x\",\"follows\":[]}]}\n"
                        + "{\"id\":\"b\",\"planted\":[]}\n{\"id\":\"c\",\"planted\":[{\"criterion\":\"" + id
                        + "\",\"kind\":\"not-assessed\",\"says\":\"y\",\"follows\":[]}]}\n");
        Detection d = Detection.read(truth, CATALOGUE);
        d.add(row("a", Ending.PASS));
        d.add(row("b", Ending.STOP));
        d.add(row("c", Ending.NOT_ASSESSED));
        d.add(row("other", Ending.PASS));
        Detection.Line l = d.result().lines().get(0);
        assertThat(l.sensitivity().count()).isZero();
        assertThat(l.specificity())
                .satisfies(s -> assertThat(s.count() + " of " + s.of()).isEqualTo("1 of 2"));
        assertThat(l.open().count()).isEqualTo(1);
        assertThat(d.result().missed()).isEqualTo(2);
        assertThat(l.reasons())
                .extracting(m -> m.planted() + " " + m.found() + " " + m.cases() + " "
                        + m.first().caseId())
                .containsExactly("neither stop 1 b", "warn pass 1 a");
        assertThat(d.result().withoutTruth()).isEqualTo(1);
        assertThatThrownBy(() ->
                        Detection.read(Files.writeString(folder.resolve("u.ndjson"), "{\"id\":\"a\"}\n"), CATALOGUE))
                .isInstanceOf(TableException.class);
    }
}
