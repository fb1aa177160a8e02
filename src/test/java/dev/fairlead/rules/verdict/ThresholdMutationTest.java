package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Limit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.guard.ProjectRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A threshold that is a step off, or whose own value counts on the other side, breaks an example: no number stands
 * there by chance.
 */
class ThresholdMutationTest {
    @Test
    void everyChangeOfAThresholdBreaksAnExample() {
        List<String> survivors = new ArrayList<>();
        Rulebase rulebase = ProjectRules.rulebase();
        for (Criterion c : rulebase.catalogue().criteria()) {
            List<Example> examples = ProjectRules.allExamples().stream()
                    .filter(e -> e.criterion().equals(c))
                    .toList();
            for (Threshold t : c.thresholds().values()) {
                Limit l = t.limit();
                for (Limit changed : List.of(
                        new Limit(l.name(), l.value() + t.step(), l.unit(), l.inclusive()),
                        new Limit(l.name(), l.value() - t.step(), l.unit(), l.inclusive()),
                        new Limit(l.name(), l.value(), l.unit(), !l.inclusive()))) {
                    Map<String, Limit> limits =
                            new HashMap<>(rulebase.catalogue().limits().all());
                    limits.put(l.name(), changed);
                    Judge judge = rulebase.judge(new Limits(limits));
                    if (examples.stream()
                            .allMatch(e ->
                                    e.differences(judge, ProjectRules.base()).isEmpty())) {
                        survivors.add(changed + " instead of " + l);
                    }
                }
            }
        }
        assertThat(survivors).isEmpty();
    }
}
