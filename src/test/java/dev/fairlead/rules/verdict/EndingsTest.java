package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Endings without verdicts are those of the whole judgement by the engine, whatever the order of the facts. */
class EndingsTest {
    private static final long SEED = 1949;

    @Test
    void endingsAndWhatIsMissingAreThoseOfTheEngine() {
        Rulebase rules = ProjectRules.rulebase();
        Judge judge = rules.judge();
        RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());
        for (int i = 0; i < 400; i++) {
            List<CaseFact> facts = new ArrayList<>(random.facts(new Random(SEED + i)));
            if (i % 5 == 0) {
                facts.removeIf(f -> f.getClass() == facts.get(0).getClass());
            }
            Stage reached = Stage.values()[i % Stage.values().length];
            Judgement judged = judge.withoutMemo().judge(facts, reached);
            for (int again = 0; again < 2; again++) {
                Collections.shuffle(facts, new Random(again));
                Judgement quick = judge.judge(facts, reached);
                Ending[] endings = quick.endings();
                assertThat(quick.errors()).isEqualTo(judged.errors());
                int n = 0;
                for (int k = 0; k < endings.length; k++) {
                    Criterion c = rules.catalogue().criteria().get(k);
                    if (endings[k] == null) {
                        assertThat(reached.hasReached(c.stage())).as(c.id()).isFalse();
                        continue;
                    }
                    n++;
                    assertThat(endings[k]).as(c.id()).isEqualTo(judged.result(k).ending());
                    assertThat(quick.result(k).missing())
                            .as(c.id())
                            .isEqualTo(judged.result(k).missing());
                }
                assertThat(n).isEqualTo(judged.results().size());
            }
        }
    }
}
