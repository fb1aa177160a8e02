package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.uncertainty.Repeat;
import dev.fairlead.measure.uncertainty.Simulation;
import dev.fairlead.measure.uncertainty.VariantJudge;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Chances of another outcome for whole cases. */
class DoubtsTest {
    private static final Rulebase RULES = Rulebase.load(Path.of("rules"));
    /**
     * They look at an absolute difference, which near zero grows to both sides, or at the largest or smallest of
     * several, which may become another one.
     */
    private static final List<String> NOT_SMOOTH = List.of(
            "fold-length-is-tube-length",
            "antimeres-agree",
            "space-adds-up",
            "tooth-widths-plausible",
            "alignment-before-steel",
            "readings-agree",
            "target-before-holding-arch");

    /**
     * They look at the larger of two numbers, of which the smaller adds no error to first order: what a side needs and
     * none, the plan and the travel so far. First order tells too little of them; what is told is corrected by draws.
     */
    private static final List<String> LARGER_OF_TWO = List.of("plan-meets-need", "fold-wire-left");

    private static final Doubts DOUBTS = new Doubts(RULES, Calculations.plain());

    private static Doubt.Flip flip(Doubt d, String id) {
        return d.flips().stream()
                .filter(f -> f.criterion().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A film error of 2.5 degrees: areas of the normal distribution beyond 0.224 and 0.8 standard deviations. */
    @Test
    void theChanceIsTheTailBeyondTheLimit() {
        Case c = SampleCase.full()
                .set("/headFilm/incisorMandibular", 93.0)
                .set("/plan/advanceLeft", 0.4)
                .set("/plan/advanceRight", 0.4)
                .without("/headFilm/tippingRadius")
                .build();
        // by the steepest published figure 93 + 3.6 x 0.4 = 94.44: 0.56 degrees under the limit, 0.224 of the error of
        // 2.5
        // degrees; 100 lies behind it
        Doubt d = DOUBTS.of(c, CheckOptions.USUAL.with(Doubting.FIRST_ORDER));
        assertThat(flip(d, "incisor-inclination-after").analytic()).isEqualTo(0.411379, within(1e-4));
        assertThat(flip(d, "incisor-inclination-before").analytic()).isEqualTo(0.211855, within(1e-4));
        assertThat(d.repeat().get(0).pointer()).isEqualTo("/headFilm/incisorMandibular");
        assertThat(d.repeat().get(0).criteria()).contains("incisor-inclination-after", "incisor-inclination-before");
        assertThat(d.expected())
                .isEqualTo(d.flips().stream().mapToDouble(Doubt.Flip::analytic).sum(), within(1e-12));
    }

    @Test
    void simulationAgreesWithPropagation() {
        Doubt d = DOUBTS.of(SampleCase.full().build(), CheckOptions.USUAL.with(Doubting.drawn(2000, 1)));
        Doubt told = DOUBTS.of(SampleCase.full().build(), CheckOptions.USUAL.with(Doubting.CORRECTED));
        for (Doubt.Flip f : d.flips()) {
            double p = f.simulated().orElseThrow();
            double sampling = Math.sqrt(p * (1 - p) / 2000);
            assertThat(flip(told, f.criterion()).chance())
                    .as(f.criterion() + " as it is told")
                    .isCloseTo(p, within(0.05 + 2 * sampling));
            // first order, and chained where more than two values decide: 3 % on top of sampling error
            double slack = 4 * sampling + 0.03;
            double most = LARGER_OF_TWO.contains(f.criterion())
                    ? 1
                    : (NOT_SMOOTH.contains(f.criterion()) ? 2 : 1) * f.analytic() + slack;
            assertThat(p).as(f.criterion()).isBetween(f.analytic() - slack, most);
        }
        assertThat(d.drawn())
                .hasValueSatisfying(x -> assertThat(x.measurements()).isGreaterThan(50));
        assertThat(DOUBTS.of(SampleCase.full().build(), CheckOptions.USUAL.with(Doubting.drawn(2000, 1))))
                .isEqualTo(d);
    }

    /** The same draws, each judged by a session of the engine. */
    @Test
    void quickDrawsAreThoseOfTheEngine() {
        Case c = SampleCase.full().build();
        Judge engine = RULES.judge();
        VariantJudge slow = v ->
                engine.judge(Measures.of(v, Optional.empty(), Workbook.none()).facts()).results().stream()
                        .mapToInt(r -> r.ending().ordinal())
                        .toArray();
        double[] expected = drawn(c, slow);
        assertThat(drawn(c, DOUBTS.outcomes(c, Optional.empty(), Stage.HOLDING)))
                .containsExactly(expected);
    }

    private static double[] drawn(Case c, VariantJudge outcomes) {
        return Simulation.of(c, outcomes, measurements -> (criterion, deviations) -> false, 100, 9)
                .flips();
    }

    @Test
    void aValueThatDecidesNothingMakesNothingUncertain() {
        // with a sided plan the difference between the folds is not judged, however near to its limit
        Doubt d = DOUBTS.of(SampleCase.full().build(), CheckOptions.USUAL);
        assertThat(flip(d, "sides-match").analytic()).isZero();
    }

    @Test
    void findingsCarryTheirChance() {
        Checker checker = new Checker(RULES);
        Checked checked = checker.check(SampleCase.full().build(), "0", CheckOptions.USUAL);
        Doubt d = DOUBTS.of(checked.subject(), CheckOptions.USUAL);
        Findings marked = d.mark(checked.report().findings());
        assertThat(marked.all()).allMatch(f -> f.flip().isPresent());
        assertThat(marked.of("midline-marked").flip()).hasValue(0);
        // what is close, within one standard deviation, can hardly be less likely to flip than the tail beyond one
        assertThat(marked.all())
                .filteredOn(f -> f.close() && f.outcome() != dev.fairlead.rules.catalogue.Status.NOT_ASSESSED)
                .isNotEmpty();
        assertThat(marked.all())
                .filteredOn(f -> !f.close())
                .extracting(Finding::flip)
                .allMatch(p -> p.getAsDouble() < 0.9);
    }

    @Test
    void anEarlyStageHasOnlyItsOwnCriteria() {
        Doubt d = DOUBTS.of(new CaseBuilder().build(), CheckOptions.USUAL.at(Stage.INDICATION));
        assertThat(d.flips())
                .allMatch(
                        f -> RULES.catalogue().criterion(f.criterion()).stage().compareTo(Stage.INDICATION) <= 0);
        assertThat(d.repeat()).isEmpty();
        assertThat(d.repeat()).extracting(Repeat::drop).isEmpty();
    }
}
