package dev.fairlead.audit.compare;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.audit.write.CompareText;
import dev.fairlead.check.Checker;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareTest {
    private static final String NAME = "overjet-after.min";
    private static final Rulebase RULES = Rulebase.builtIn();

    @TempDir
    private static Path folder;

    private static Path lines;

    @BeforeAll
    static void cohort() throws IOException {
        lines = folder.resolve("c.ndjson");
        try (Writer cases = Files.newBufferedWriter(lines)) {
            CohortFiles.lines(120, 6, cases, Writer.nullWriter(), n -> {});
            cases.write("{}\n");
        }
    }

    private static Sources sources() throws IOException {
        return new Sources(List.of(lines), Mapping.NONE);
    }

    /** Warnings of the criterion by an audit with that value of the threshold. */
    private static long warnings(double value) throws IOException {
        Tally tally = new Tally(new Checker(RULES), 0);
        new Audit(new Checker(RULES.withThresholds(Map.of(NAME, value))), Audit.Settings.USUAL)
                .run(sources(), () -> tally::add, n -> {});
        return tally.summary().criteria().stream()
                .filter(c -> c.id().equals("overjet-after"))
                .findFirst()
                .orElseThrow()
                .warn();
    }

    @Test
    void aSweepGivesWhatAuditsWithEachValueGive() throws IOException {
        Threshold t = RULES.catalogue().thresholds().get(NAME);
        Sweep.Result r = new Sweep(RULES, NAME, t.low(), t.high(), 7).run(sources(), Audit.Settings.USUAL, n -> {});
        assertThat(r.cases()).isEqualTo(120);
        assertThat(r.unread()).isEqualTo(1);
        assertThat(r.curves()).extracting(Sweep.Curve::criterion).contains("overjet-after");
        List<Sweep.Point> points = r.curves().get(0).points();
        assertThat(points).extracting(Sweep.Point::value).containsExactly(0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0);
        for (int i : new int[] {0, 2, 6}) {
            assertThat(points.get(i).warnRate().count())
                    .as("at " + points.get(i).value())
                    .isEqualTo(warnings(points.get(i).value()));
        }
        assertThat(points.get(6).warnRate().count())
                .isGreaterThan(points.get(2).warnRate().count());
        assertThat(CompareText.of(r)).contains("* ").contains("overjet-after").contains("#");
    }

    @Test
    void aStricterThresholdGainsWarningsAndTheWayBackLosesThem() throws IOException {
        Rulebase stricter = RULES.withThresholds(Map.of(NAME, 3.0));
        RulesComparison.Result there =
                new RulesComparison(RULES, stricter).run(sources(), Audit.Settings.USUAL, n -> {});
        RulesComparison.Result back =
                new RulesComparison(stricter, RULES).run(sources(), Audit.Settings.USUAL, n -> {});
        RulesComparison.Line gained = line(there, "overjet-after");
        assertThat(gained.gained()).isEqualTo(warnings(3) - warnings(1)).isPositive();
        assertThat(gained.lost()).isZero();
        assertThat(line(back, "overjet-after").lost()).isEqualTo(gained.gained());
        assertThat(there.lines())
                .filteredOn(RulesComparison.Line::changed)
                .extracting(RulesComparison.Line::criterion)
                .containsExactly("overjet-after");
        assertThat(there.changed()).isEqualTo(gained.gained());
        assertThat(gained.examples())
                .isNotEmpty()
                .allSatisfy(e -> assertThat(e.from()).isEqualTo("pass"));
        assertThat(there.unread()).isEqualTo(1);
        assertThat(CompareText.of("a", "b", there)).contains("pass → ");
    }

    @Test
    void theSameRulesChangeNothing() throws IOException {
        assertThat(new RulesComparison(RULES, RULES)
                        .run(sources(), Audit.Settings.USUAL, n -> {})
                        .changed())
                .isZero();
    }

    private static RulesComparison.Line line(RulesComparison.Result r, String criterion) {
        return r.lines().stream()
                .filter(l -> l.criterion().equals(criterion))
                .findFirst()
                .orElseThrow();
    }
}
