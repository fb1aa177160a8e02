package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * On 200,000 pairs of a generated case and one fact forgotten in it: what warned or was not assessed never comes out as
 * a pass or as not applying: no figure stands in for a missing one where that could hide a warning.
 */
class ForgottenFactTest {
    private static final int CASES = 2000;
    private static final int FORGOTTEN = 100;
    private static final long SEED = 77;

    private final Judge judge = ProjectRules.rulebase().judge();
    private final Map<String, Integer> faults = new ConcurrentHashMap<>();
    private final AtomicInteger pairs = new AtomicInteger();

    @Test
    void toForgetAFactNeverMakesAPass() {
        IntStream.range(0, CASES).parallel().forEach(this::pairsOf);
        assertThat(pairs.get()).isGreaterThanOrEqualTo(CASES * FORGOTTEN);
        assertThat(new TreeMap<>(faults)).isEmpty();
    }

    private void pairsOf(int index) {
        Case whole = Cohort.one(SEED, index).made();
        Ending[] before = endings(whole, whole.stage().get());
        List<String> known = new ArrayList<>(Edit.factPointers(whole));
        known.removeIf(p -> !(Edit.get(whole, p) instanceof CaseValue k && k.known()));
        Collections.shuffle(known, new Random(SEED + index));
        for (int i = 0; i < FORGOTTEN; i++) {
            String pointer = known.get(i % known.size());
            Ending[] after = endings(Edit.forget(whole, pointer), whole.stage().get());
            pairs.incrementAndGet();
            for (int c = 0; c < before.length; c++) {
                if (before[c] != after[c] && !allowed(before[c], after[c])) {
                    faults.merge(
                            judge.criteria().get(c) + " " + pointer + " " + before[c] + " -> " + after[c]
                                    + ", such as case " + index,
                            1,
                            Integer::sum);
                }
            }
        }
    }

    private Ending[] endings(Case c, Stage reached) {
        return judge.judge(Measures.of(c, Optional.empty(), Workbook.none()).facts(), reached)
                .endings();
    }

    private static boolean allowed(Ending before, Ending after) {
        boolean open = before.warns() || before == Ending.NOT_ASSESSED;
        boolean closed = after == Ending.PASS || after == Ending.DOES_NOT_APPLY;
        return after != Ending.FAILED && !(open && closed);
    }
}
