package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.model.CaseValue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * On many generated cases: to leave a fact out never makes anything better, and touches no criterion that does not need
 * it.
 */
class RemovalTest {
    private static final int CASES = 2500;
    private static final int REMOVALS = 20;
    private static final long SEED = 20261125;

    private final Judge judge = ProjectRules.rulebase().judge();
    private final RandomFacts generator = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());
    private final Queue<String> faults = new ConcurrentLinkedQueue<>();

    @Test
    void aFactThatIsLeftOutNeverMakesAPass() {
        IntStream.range(0, CASES).parallel().forEach(i -> {
            Random random = new Random(SEED + i);
            List<CaseFact> facts = generator.facts(random);
            Judgement judged = judge.judge(facts);
            judged.errors().forEach(e -> faults.add("case " + i + ": " + e));
            List<CriterionResult> whole = judged.results();
            for (int k = 0; k < REMOVALS; k++) {
                int at = random.nextInt(facts.size());
                CaseFact fact = facts.get(at);
                List<String> known = RandomFacts.components(fact.getClass()).stream()
                        .filter(c -> ((CaseValue) FactEdit.get(c, fact)).known())
                        .map(c -> c.getName())
                        .toList();
                if (!known.isEmpty()) {
                    String component = known.get(random.nextInt(known.size()));
                    List<CaseFact> fewer = new ArrayList<>(facts);
                    CaseFact without = ExampleFacts.with(fact, Map.of(component, "unknown"));
                    fewer.set(at, without);
                    compare(
                            "case " + i + " without " + component + " of " + fact,
                            whole,
                            judge.judge(fewer),
                            fact,
                            component);
                }
            }
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void theOrderOfFactsDoesNotMatter() {
        for (int i = 0; i < 200; i++) {
            Random random = new Random(SEED - i);
            List<CaseFact> facts = generator.facts(random);
            String before = text(judge.judge(facts));
            Collections.shuffle(facts, random);
            assertThat(text(judge.judge(facts))).isEqualTo(before);
        }
    }

    /**
     * Warn or not assessed may not become pass, nothing may become a new warning, and criteria that do not need the
     * fact keep their result.
     */
    private void compare(String what, List<CriterionResult> whole, Judgement judged, CaseFact fact, String component) {
        judged.errors().forEach(e -> faults.add(what + ": " + e));
        List<CriterionResult> fewer = judged.results();
        for (int i = 0; i < whole.size(); i++) {
            CriterionResult before = whole.get(i);
            CriterionResult after = fewer.get(i);
            Criterion c = before.criterion();
            boolean needs = c.about() == fact.getClass()
                    && c.needs().stream().anyMatch(n -> n.component().equals(component));
            boolean mayLack = c.needs().stream().anyMatch(n -> n.component().equals(component) && n.mayLack());
            for (int p = 0; p < before.places().size(); p++) {
                PlaceResult was = before.places().get(p);
                PlaceResult is = after.places().get(p);
                boolean here = needs && was.fact() == fact;
                boolean allowed = was.status() == is.status()
                                && (here
                                        || was.verdicts().size()
                                                == is.verdicts().size())
                        || here && is.status() == Status.NOT_ASSESSED;
                boolean passOnNothing = here && is.status() == Status.PASS && !mayLack;
                if (!allowed || passOnNothing) {
                    faults.add(what + ": " + c.id() + " turned from " + was.status() + " to " + is.status());
                }
            }
        }
    }

    private static String text(Judgement judgement) {
        StringBuilder all = new StringBuilder();
        for (CriterionResult r : judgement.results()) {
            all.append(r.criterion().id())
                    .append(' ')
                    .append(r.status())
                    .append(r.reasons())
                    .append(r.missing());
            r.places().forEach(p -> all.append(p.place()).append(p.status()).append(p.missing()));
        }
        return all.append(judgement.errors()).toString();
    }
}
