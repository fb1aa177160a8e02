package dev.fairlead.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.build.RuleCache;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was kept of the engine's answers says what the engine says; and rules kept as data say what the engine's
 * compiler makes of the DRL.
 */
class KnownTest {
    private static final long SEED = 1947;

    @TempDir
    Path folder;

    private final Rulebase rulebase = ProjectRules.rulebase();
    private final RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());

    private static List<CaseFact> facts(Case c) {
        return Measures.of(c, Optional.empty(), Workbook.none()).facts();
    }

    /** Word for word, with values, places and what is missing; on several threads that learn from one another. */
    @Test
    void whatIsKeptIsWhatTheEngineSays() {
        Queue<Integer> differ = new ConcurrentLinkedQueue<>();
        Judge judge = rulebase.judge();
        IntStream.range(0, 1500).parallel().forEach(i -> {
            List<CaseFact> facts = random.facts(new Random(SEED + i));
            Stage reached = Stage.values()[i % Stage.values().length];
            String first = JudgementText.of(judge.judge(facts, reached));
            String again = JudgementText.of(judge.judge(facts, reached));
            String engine = JudgementText.of(judge.byEngine(facts, reached));
            if (!first.equals(engine) || !again.equals(engine)) {
                differ.add(i);
            }
        });
        assertThat(differ).isEmpty();
        assertThat(judge.known().size()).isGreaterThan(500);
    }

    @Test
    void whatIsKeptIsWhatTheEngineSaysOfWholeCases() {
        Judge judge = rulebase.judge();
        Cohort.generate(600, SEED).forEach(planted -> {
            List<CaseFact> facts = facts(planted.made());
            assertThat(JudgementText.of(
                            judge.judge(facts, planted.made().stage().get())))
                    .isEqualTo(JudgementText.of(
                            judge.byEngine(facts, planted.made().stage().get())));
        });
    }

    @Test
    void rulesAsDataSayWhatTheEnginesCompilerMakesOfTheFiles() {
        RuleFiles files = RuleFiles.of(Path.of("rules"));
        Rulebase compiled =
                new RulebaseLoader(new RuleCache(Path.of("target", "rule-cache"))).load(files, Map.of(), null);
        Rulebase plain = new RulebaseLoader(new RuleCache(folder)).load(files, Map.of(), asBuilt(files));
        assertThat(plain.ruleCount()).isEqualTo(compiled.ruleCount());
        assertThat(plain.hash()).isEqualTo(compiled.hash());
        assertThat(folder).isEmptyDirectory();
        for (int i = 0; i < 300; i++) {
            List<CaseFact> facts = random.facts(new Random(SEED - i));
            assertThat(JudgementText.of(plain.judge().byEngine(facts, Stage.HOLDING)))
                    .isEqualTo(JudgementText.of(compiled.judge().byEngine(facts, Stage.HOLDING)));
        }
        List<CaseFact> base = ProjectRules.base().all();
        assertThat(IntStream.range(0, 3)
                        .mapToObj(i -> JudgementText.of(compiled.judge().judge(base)))
                        .distinct())
                .hasSize(1);
    }

    /** The index as the build writes it: every rule of the project is plain. */
    private static RulebaseLoader.Packaged asBuilt(RuleFiles files) {
        Map<String, BuiltIn.Entry> entries = new java.util.TreeMap<>();
        for (Criterion c : RulebaseCheck.check(files).criteria()) {
            String path = c.folder() + "/" + RuleFiles.DRL;
            List<PlainRule> rules = PlainRule.in(files.text(path), c.about());
            assertThat(rules).as(path).isNotEmpty();
            entries.put(path, new BuiltIn.Entry(rules.size(), rules, ""));
        }
        return new RulebaseLoader.Packaged(BuiltIn.of(files, entries), files);
    }

    @Test
    void aPartOfTheRulesIsNeverTakenForTheWhole() {
        RuleFiles files = RuleFiles.of(Path.of("rules"));
        RulebaseLoader.Packaged whole = asBuilt(files);
        String some = files.rules().get(7);
        BuiltIn.Entry entry = whole.index().rules().get(some);
        Map<String, BuiltIn.Entry> fewer = new java.util.TreeMap<>(whole.index().rules());
        fewer.put(
                some,
                new BuiltIn.Entry(
                        entry.rules(), entry.plain().subList(1, entry.plain().size()), ""));
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new RulebaseLoader(new RuleCache(folder))
                        .load(files, Map.of(), new RulebaseLoader.Packaged(BuiltIn.of(files, fewer), files)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("not whole");
    }

    /** Alternatives are no plain rule: they stay with the engine's compiler, and what it says is kept all the same. */
    @Test
    void alternativesAreCompiled() {
        TestFolder edited = TestFolder.whole(folder)
                .replace(
                        TestFolder.HYGIENE + "/criterion.drl",
                        "untreatedCaries.yes()",
                        "untreatedCaries.yes() || activeGingivitis.yes()");
        Judge judge = edited.load().judge();
        List<CaseFact> facts = ProjectRules.base()
                .with(Map.of("Mouth.activeGingivitis", "yes"))
                .all();
        List<String> said = IntStream.range(0, 3)
                .mapToObj(i -> JudgementText.of(judge.judge(facts)))
                .distinct()
                .toList();
        assertThat(said).containsExactly(JudgementText.of(judge.byEngine(facts, Stage.HOLDING)));
        assertThat(PlainRule.in(
                        "rule \"a\"\nwhen\n $f : Mouth( untreatedCaries.yes() || activeGingivitis.yes() )\nthen\n verdicts.stop(\"a\", $f, \"b\");\nend\n",
                        dev.fairlead.facts.Mouth.class))
                .isEmpty();
    }
}
