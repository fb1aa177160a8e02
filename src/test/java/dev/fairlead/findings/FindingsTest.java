package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.Example;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** From verdicts to findings: the numbers, the margin, the texts over several places. */
class FindingsTest {
    private static Findings findings(Rulebase rulebase, List<CaseFact> facts) {
        return Findings.of(rulebase.judge().judge(facts), rulebase.catalogue(), List.of(), Optional.empty());
    }

    private static Findings findings(Map<String, String> patch) {
        return findings(ProjectRules.rulebase(), ProjectRules.base().with(patch).all());
    }

    static List<CaseFact> overjetAfter(double mm, double sd) {
        List<CaseFact> facts = new ArrayList<>(ProjectRules.base().all());
        facts.replaceAll(f -> f instanceof Bite b
                ? BiteBuilder.builder(b)
                        .overjetAfter(Measured.of(mm, Unit.MM, "/bite/overjet", sd))
                        .overjetSoFar(Measured.of(mm, Unit.MM, "/bite/overjet", sd))
                        .build()
                : f);
        return facts;
    }

    @Test
    void aWarningSaysWhatIsSeenAgainstWhatIsAsked() {
        Finding f = findings(ProjectRules.rulebase(), overjetAfter(0.2, 0.5)).of("overjet-after");
        assertThat(f.outcome()).isEqualTo(Status.WARN);
        assertThat(f.weight()).isEqualTo(Weight.CAUTION);
        assertThat(f.asks()).isEqualTo("The overjet less the planned advancement leaves at least 1.0 mm.");
        assertThat(f.seen())
                .contains("0.2 ± 0.5 mm")
                .contains("1.0 mm")
                .startsWith("A")
                .endsWith(".");
        SeenValue v = f.places().get(0).values().get(0);
        assertThat(v.limitName()).isEqualTo("overjet-after.min");
        assertThat(v.text()).isEqualTo("0.2 ± 0.5 mm");
        assertThat(v.margin()).isCloseTo(-0.8, within(1e-12));
        assertThat(v.error()).isEqualTo(0.5);
        assertThat(f.close()).isFalse();
        assertThat(f.usedFields()).containsExactly("/bite/overjet");
        assertThat(f.sources()).extracting(Source::key).containsExactly("common-practice");
    }

    @Test
    void itIsCloseWhenTheErrorReachesAcrossTheLimit() {
        assertThat(findings(ProjectRules.rulebase(), overjetAfter(1.4, 0.5))
                        .of("overjet-after")
                        .close())
                .isTrue();
        assertThat(findings(ProjectRules.rulebase(), overjetAfter(0.6, 0.5))
                        .of("overjet-after")
                        .close())
                .isTrue();
        Findings onTheError = findings(ProjectRules.rulebase(), overjetAfter(1.5, 0.5));
        assertThat(onTheError.of("overjet-after").close()).isTrue();
        assertThat(new Findings(List.of(onTheError.of("overjet-after"), onTheError.of("hygiene-and-caries")), List.of())
                        .counts()
                        .close())
                .isEqualTo(1);
        assertThat(findings(ProjectRules.rulebase(), overjetAfter(1.6, 0.5))
                        .of("overjet-after")
                        .close())
                .isFalse();
        assertThat(findings(ProjectRules.rulebase(), overjetAfter(1.0, 0))
                        .of("overjet-after")
                        .close())
                .isFalse();
    }

    @Test
    void theMarginIsPositiveOnTheSideThatPasses() {
        Finding upper = findings(Map.of("Mouth.plaqueScore", "12 %")).of("hygiene-and-caries");
        assertThat(upper.places().get(0).values().get(0).margin()).isEqualTo(18);
        Finding lower = findings(ProjectRules.rulebase(), overjetAfter(2.5, 0)).of("overjet-after");
        assertThat(lower.places().get(0).values().get(0).margin()).isEqualTo(1.5);
    }

    @Test
    void asksSpeakOfTheThresholdsInForce() {
        Rulebase stricter = ProjectRules.rulebase().withThresholds(Map.of("overjet-after.min", 1.5));
        Finding f = findings(stricter, overjetAfter(1.2, 0)).of("overjet-after");
        assertThat(f.asks()).contains("1.5 mm");
        assertThat(f.outcome()).isEqualTo(Status.WARN);
    }

    @Test
    void whatIsMissingIsNamedInWords() {
        List<CaseFact> facts = new ArrayList<>(ProjectRules.base().all());
        facts.replaceAll(f ->
                f instanceof dev.fairlead.facts.Mouth ? ExampleFacts.with(f, Map.of("plaqueScore", "unknown")) : f);
        Finding f = findings(ProjectRules.rulebase(), facts).of("hygiene-and-caries");
        assertThat(f.outcome()).isEqualTo(Status.NOT_ASSESSED);
        assertThat(f.missing()).containsExactly(new Missing("/mouth/plaqueScore", "plaque score, mouth"));
        assertThat(f.seen()).isEqualTo("Not assessed, missing: plaque score, mouth.");
    }

    @Test
    void placesThatShowTheSameAreNamedTogether() {
        Finding f = findings(Map.of(
                        "LowerIncisor[tooth 41].keratinised",
                        "0.5 mm",
                        "LowerIncisor[tooth 32].keratinised",
                        "unknown"))
                .of("keratinised-width");
        assertThat(f.outcome()).isEqualTo(Status.WARN);
        assertThat(f.seen())
                .startsWith("Tooth 41: ")
                .contains("Not assessed, missing: keratinised gingiva of tooth 32.")
                .contains("Tooth 31 and tooth 42: ");
        assertThat(f.missing()).extracting(Missing::pointer).containsExactly("/teeth/32/keratinised");
    }

    @Test
    void everyTextOfEveryExampleIsFilledAndIsASentence() {
        for (Example e : ProjectRules.allExamples()) {
            for (Finding f : findings(e.set()).all()) {
                assertThat(f.seen())
                        .as(f.id() + ", " + e.name())
                        .isNotBlank()
                        .doesNotContain("{", "}", "null", "NaN", "Infinity", "E-")
                        .endsWith(".");
                assertThat(f.asks()).doesNotContain("{", "}");
            }
        }
    }

    @Test
    void theOrderOfFactsChangesNothingAndTheFingerprintTellsFindingsApart() {
        List<CaseFact> shuffled = new ArrayList<>(ProjectRules.base().all());
        Collections.shuffle(shuffled, new Random(7));
        Findings base = findings(Map.of());
        assertThat(findings(ProjectRules.rulebase(), shuffled)).isEqualTo(base);
        assertThat(base.all())
                .extracting(Finding::fingerprint)
                .doesNotHaveDuplicates()
                .allMatch(p -> p.matches("[0-9a-f]{16}"));
        assertThat(findings(Map.of("Mouth.untreatedCaries", "yes"))
                        .of("hygiene-and-caries")
                        .fingerprint())
                .isNotEqualTo(base.of("hygiene-and-caries").fingerprint());
    }

    @Test
    void peopleReadStopsFirstWithinAStage() {
        Findings f = findings(Map.of(
                "IncisorPosition.inclination",
                "104 °",
                "Mouth.untreatedCaries",
                "yes",
                "Bite.overjetAfter",
                "unknown"));
        List<Finding> stage = f.forReading().stream()
                .filter(x -> x.stage() == dev.fairlead.model.Stage.INDICATION)
                .toList();
        assertThat(stage.get(0).weight()).isEqualTo(Weight.STOP);
        assertThat(stage).extracting(Finding::outcome).isSorted();
        assertThat(f.counts().all())
                .isEqualTo(ProjectRules.rulebase().catalogue().criteria().size());
        assertThat(f.counts().stop()).isPositive();
        Counts counts = new Counts(1, 2, 4, 8, 16, 32, 64);
        assertThat(counts.warn()).isEqualTo(1 + 2);
        assertThat(counts.all()).as("waived and close are counted already").isEqualTo(1 + 2 + 4 + 8 + 16);
    }

    @Test
    void aProbabilityLiesBetweenNoughtAndOne() {
        Finding f = findings(Map.of()).of("overjet-after");
        assertThat(f.flip()).isEmpty();
        assertThat(f.withFlip(0.2).flip()).hasValue(0.2);
        assertThatThrownBy(() -> f.withFlip(1.2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> f.withFlip(-0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> f.withFlip(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(f.withFlip(0).flip()).hasValue(0);
        assertThat(f.withFlip(1).flip()).hasValue(1);
    }

    @Test
    void aPassThatMoreLikelyFailsIsNoneToRelyOn() {
        Finding pass = findings(Map.of()).of("overjet-after");
        Finding warning =
                findings(ProjectRules.rulebase(), overjetAfter(0.2, 0.5)).of("overjet-after");
        assertThat(pass.onTheLimit()).isFalse();
        assertThat(pass.withFlip(0.5).onTheLimit()).isFalse();
        assertThat(pass.withFlip(0.51).onTheLimit()).isTrue();
        assertThat(warning.withFlip(0.9).onTheLimit()).isFalse();
        assertThat(warning.open()).isTrue();
        assertThat(pass.open()).isFalse();
    }
}
