package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import dev.fairlead.rules.language.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is remembered of the engine's answers is what the engine says. */
class MemoTest {
    private static final long SEED = 1947;
    private static final int FACT_SETS = 20_000;

    @TempDir
    java.nio.file.Path folder;

    private final Rulebase rulebase = ProjectRules.rulebase();
    private final RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());

    /** Word for word, with values, places and what is missing; on several threads that learn from one another. */
    @Test
    void whatIsRememberedIsWhatTheEngineSays() {
        Queue<Integer> differ = new ConcurrentLinkedQueue<>();
        Judge judge = rulebase.judge();
        Judge engine = judge.withoutMemo();
        IntStream.range(0, FACT_SETS).parallel().forEach(i -> {
            List<CaseFact> facts = random.facts(new Random(SEED + i));
            Stage reached = Stage.values()[i % Stage.values().length];
            String first = JudgementText.of(judge.judge(facts, reached));
            if (!first.equals(JudgementText.of(engine.judge(facts, reached)))) {
                differ.add(i);
            }
        });
        assertThat(differ).isEmpty();
        assertThat(judge.remembered()).isGreaterThan(500);
    }

    @Test
    void itIsWhatTheEngineSaysOfWholeCasesAndUnderOtherThresholds() {
        var threshold = rulebase.catalogue().thresholds().values().iterator().next();
        double other = threshold.value() == threshold.low() ? threshold.high() : threshold.low();
        for (Judge judge : List.of(
                rulebase.judge(),
                rulebase.withThresholds(Map.of(threshold.name(), other)).judge())) {
            Cohort.generate(300, SEED).forEach(planted -> {
                List<CaseFact> facts = Measures.of(planted.made(), Optional.empty(), Workbook.none())
                        .facts();
                Stage reached = planted.made().stage().get();
                assertThat(JudgementText.of(judge.judge(facts, reached)))
                        .isEqualTo(JudgementText.of(judge.withoutMemo().judge(facts, reached)));
            });
        }
    }

    /** Alternatives in a condition see no more than a condition without. */
    @Test
    void alternativesAreRememberedAlike() {
        Judge judge = TestFolder.whole(folder)
                .replace(
                        TestFolder.HYGIENE + "/criterion.drl",
                        "untreatedCaries.yes()",
                        "untreatedCaries.yes() || activeGingivitis.yes()")
                .load()
                .judge();
        List<CaseFact> facts = ProjectRules.base()
                .with(Map.of("Mouth.activeGingivitis", "yes"))
                .all();
        for (int i = 0; i < 3; i++) {
            assertThat(JudgementText.of(judge.judge(facts)))
                    .isEqualTo(JudgementText.of(judge.withoutMemo().judge(facts)));
        }
    }

    /** What a verdict shows at a place are the values that the rules saw there, taken from the engine itself. */
    @Test
    void whatIsShownIsWhatTheRulesSaw() {
        Engine engine = new Engine(BuiltIn.onClassPath().rules());
        int shown = 0;
        for (int i = 0; i < 300; i++) {
            List<CaseFact> facts = random.facts(new Random(SEED - i));
            Map<String, List<Verdict>> said =
                    engine.ask(facts, rulebase.catalogue().limits()).verdicts();
            for (CriterionResult r : rulebase.judge().judge(facts).results()) {
                List<Verdict> own = said.getOrDefault(r.criterion().id(), List.of());
                for (PlaceResult p : r.places()) {
                    Set<String> saw = own.stream()
                            .filter(v -> v.fact() == p.fact())
                            .map(v -> v.ending() + v.reason() + v.seen())
                            .collect(Collectors.toSet());
                    assertThat(p.verdicts().stream()
                                    .map(v -> v.ending() + v.reason() + v.seen())
                                    .toList())
                            .as(r.criterion().id())
                            .isSubsetOf(saw);
                    assertThat(p.verdicts().isEmpty()).isEqualTo(saw.isEmpty());
                    shown += p.verdicts().size();
                }
            }
        }
        assertThat(shown).isGreaterThan(10_000);
    }
}
