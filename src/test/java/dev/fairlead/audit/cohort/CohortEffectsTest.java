package dev.fairlead.audit.cohort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.audit.outcome.Attained;
import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An audit of invented residents finds what is known about them. */
class CohortEffectsTest {
    private static final int CASES = 240;

    @TempDir
    private Path folder;

    @Test
    void whoGoesWithoutConsentAndWhoLeavesFactsOutIsNamedAndStatesAreTold() throws IOException {
        Path lines = folder.resolve("c.ndjson");
        try (Writer cases = Files.newBufferedWriter(lines)) {
            CohortFiles.withEffects(CASES, 3, cases, n -> {});
        }
        Checker checker = new Checker(Rulebase.builtIn());
        Tally[] tally = new Tally[1];
        Audit.Settings settings =
                new Audit.Settings(CheckOptions.USUAL.withoutForces(), 2, Duration.ofSeconds(30), Optional.empty());
        new Audit(checker, settings)
                .run(
                        new Sources(List.of(lines), Mapping.NONE),
                        () -> {
                            tally[0] = new Tally(checker, 5);
                            return tally[0]::add;
                        },
                        n -> {});
        Summary s = tally[0].summary();
        assertThat(s.judged()).isEqualTo(CASES);
        assertThat(s.earlier().count()).isEqualTo((CASES + CohortEffects.STATES - 1) / CohortEffects.STATES);
        assertThat(s.named()).hasSize(CohortEffects.RESIDENTS);
        List<Signal> out = s.comparisons().out();
        assertThat(out)
                .anyMatch(x -> x.resident().equals(CohortEffects.NO_CONSENT)
                        && x.item().equals("consent-recorded"));
        assertThat(out).anyMatch(x -> x.resident().equals(CohortEffects.GAPS) && x.family() == Signal.Family.MISSING);
        assertThat(out)
                .extracting(Signal::resident)
                .isSubsetOf(CohortEffects.NO_CONSENT, CohortEffects.GAPS, CohortEffects.LEARNS);
        assertThat(s.trends().lines())
                .filteredOn(l -> l.name().equals(CohortEffects.LEARNS))
                .singleElement()
                .satisfies(l -> assertThat(l.trend().ratio()).isLessThan(1));
        Outturn.Line angle = s.outturn().lines().stream()
                .filter(l -> l.kind() == Attained.Kind.INCLINATION)
                .findFirst()
                .orElseThrow();
        // faults planted in others' cases widen their spread, so this one is held to what was planted
        assertThat(angle.residents())
                .filteredOn(r -> r.name().equals(CohortEffects.TIPS_LESS))
                .singleElement()
                .satisfies(r -> {
                    assertThat(r.difference().bias()).isCloseTo(-CohortEffects.DEGREES_LESS, within(1.0));
                    assertThat(r.difference().biasHigh()).isLessThan(-1);
                });
        // beside fewer warnings stands what is missing: fewer facts are given than by anybody else
        assertThat(s.named().stream().filter(g -> g.name().equals(CohortEffects.GAPS)))
                .allMatch(g -> g.completeness().high() < s.completeness().share());
    }
}
