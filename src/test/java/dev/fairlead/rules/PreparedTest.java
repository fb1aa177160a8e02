package dev.fairlead.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the build makes ready says what texts and engine say, and leaves nothing for the engine to be asked. */
class PreparedTest {
    private static final long SEED = 2027;
    private static final Engine.Later NONE = new Engine.Later(() -> {
        throw new AssertionError("the engine was asked what the build should have asked it");
    });

    private static byte[] bytes;
    private static Rulebase byTexts;

    @BeforeAll
    static void prepare() throws IOException {
        RuleFiles files = RuleFiles.of(Path.of("rules"));
        Map<String, BuiltIn.Entry> entries = new TreeMap<>();
        RulebaseCheck.check(files).criteria().forEach(c -> {
            List<PlainRule> rules = PlainRule.in(files.text(c.folder() + "/" + RuleFiles.DRL), c.about());
            entries.put(c.folder() + "/" + RuleFiles.DRL, new BuiltIn.Entry(rules.size(), rules, ""));
        });
        bytes = Preparation.of(files, BuiltIn.of(files, entries), Path.of("target", "rule-cache"));
        byTexts = ProjectRules.rulebase();
    }

    private static Rulebase withoutEngine(Map<String, Double> changed) {
        Prepared p = Prepared.of(bytes);
        return new Rulebase(p.catalogue(), NONE, p.hash(), changed, new Terms(p.terms(), p.decided()));
    }

    @Test
    void holdsTheCatalogueOfTheTexts() {
        Prepared p = Prepared.of(bytes);
        assertThat(p.hash()).isEqualTo(byTexts.hash());
        assertThat(p.rules()).isEqualTo(byTexts.ruleCount());
        assertThat(p.catalogue().version()).isEqualTo(byTexts.version());
        assertThat(p.catalogue().criteria()).isEqualTo(byTexts.catalogue().criteria());
        assertThat(List.copyOf(p.catalogue().sources().values()))
                .isEqualTo(List.copyOf(byTexts.catalogue().sources().values()));
        byTexts.catalogue()
                .criteria()
                .forEach(c -> assertThat(p.terms().get(c.id())).as(c.id()).isEqualTo(byTexts.terms(c.id())));
    }

    @Test
    void decidesAsTheEngineDoesAndAsksItNothing() {
        RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());
        Judge prepared = withoutEngine(Map.of()).judge();
        for (int i = 0; i < 400; i++) {
            List<CaseFact> facts = random.facts(new Random(SEED + i));
            Stage reached = Stage.values()[i % Stage.values().length];
            assertThat(JudgementText.of(prepared.judge(facts, reached)))
                    .isEqualTo(JudgementText.of(byTexts.judge().byEngine(facts, reached)));
        }
        Cohort.generate(100, SEED).forEach(planted -> {
            List<CaseFact> facts = Measures.of(planted.made(), Optional.empty(), Workbook.none())
                    .facts();
            assertThat(JudgementText.of(prepared.judge(facts)))
                    .isEqualTo(JudgementText.of(byTexts.judge().byEngine(facts, Stage.HOLDING)));
        });
    }

    @Test
    void thresholdsOfASiteAreHeldAgainstTheSameAnswers() {
        RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());
        Threshold t = byTexts.catalogue().thresholds().values().iterator().next();
        Map<String, Double> changed = Map.of(t.name(), t.value() == t.low() ? t.high() : t.low());
        Judge prepared = withoutEngine(changed).judge();
        Judge engine = byTexts.withThresholds(changed).judge();
        for (int i = 0; i < 50; i++) {
            List<CaseFact> facts = random.facts(new Random(SEED - i));
            assertThat(JudgementText.of(prepared.judge(facts)))
                    .isEqualTo(JudgementText.of(engine.byEngine(facts, Stage.HOLDING)));
        }
    }

    @Test
    void whatIsNotWholeIsRefused() {
        assertThatThrownBy(() -> Prepared.of(Arrays.copyOf(bytes, bytes.length / 2)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("build again");
    }
}
