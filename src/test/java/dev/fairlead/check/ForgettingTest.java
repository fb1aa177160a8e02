package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * On whole cases: to leave out a fact, or two facts of one place, never reassures. What warned or was not assessed does
 * not pass, and does not cease to apply.
 */
class ForgettingTest {
    private static final int COHORT = 200;

    /**
     * Criteria that lose a warning with the reading that it was about, where that is a width on which nothing rests: of
     * a tooth that is no lower incisor and whose antimere was not measured either. What doubted the reading goes with
     * it.
     */
    private static final Set<String> ABOUT_A_WIDTH = Set.of("tooth-widths-plausible", "antimeres-agree");

    private static final Pattern WIDTH = Pattern.compile("/teeth/(\\d+)/width");

    private final Checker checker = new Checker(ProjectRules.rulebase(), Calculations.full());
    private final CheckOptions options =
            CheckOptions.USUAL.at(Stage.HOLDING).withoutWorkings().withoutForces();
    /** Kinds of fault with one example and how many there are. */
    private final Map<String, String> examples = new ConcurrentHashMap<>();

    private final Map<String, Integer> counts = new ConcurrentHashMap<>();

    @Test
    void whatIsForgottenNeverReassures() {
        List<Case> cases = WholeCases.demos();
        assertThat(cases).hasSizeGreaterThan(15);
        cases.addAll(WholeCases.cohort(COHORT));
        cases.parallelStream().forEach(this::forget);
        TreeMap<String, String> told = new TreeMap<>();
        examples.forEach((kind, example) -> told.put(kind, counts.get(kind) + " times, first " + example));
        assertThat(told.entrySet()).isEmpty();
    }

    private void forget(Case c) {
        List<CriterionResult> whole = checker.judge(c, options).results();
        Map<String, List<String>> places = new TreeMap<>();
        for (String pointer : Edit.factPointers(c)) {
            if (Edit.get(c, pointer) instanceof CaseValue k
                    && (k.known() || k.doesNotApply())
                    && !pointer.equals("/stage")) {
                places.computeIfAbsent(pointer.substring(0, pointer.lastIndexOf('/')), p -> new ArrayList<>())
                        .add(pointer);
            }
        }
        for (List<String> facts : places.values()) {
            for (int a = 0; a < facts.size(); a++) {
                Case one = Edit.forget(c, facts.get(a));
                compare(c, whole, checker.judge(one, options), facts.get(a));
                for (int b = a + 1; b < facts.size(); b++) {
                    compare(
                            c,
                            whole,
                            checker.judge(Edit.forget(one, facts.get(b)), options),
                            facts.get(a) + " " + facts.get(b));
                }
            }
        }
    }

    private void compare(Case c, List<CriterionResult> whole, Judgement judged, String left) {
        judged.errors().forEach(e -> fault(c, "error " + e, left));
        List<CriterionResult> fewer = judged.results();
        for (int i = 0; i < whole.size(); i++) {
            CriterionResult was = whole.get(i);
            CriterionResult is = fewer.get(i);
            if (reassures(was.status(), is.status())) {
                fault(c, was.criterion().id() + " " + was.status() + " -> " + is.status(), left);
                continue;
            }
            Map<String, PlaceResult> after = new HashMap<>();
            is.places().forEach(p -> after.put(p.place().toString(), p));
            for (PlaceResult p : was.places()) {
                PlaceResult now = after.get(p.place().toString());
                if (now != null && reassures(p.status(), now.status())) {
                    fault(c, was.criterion().id() + " at a place " + p.status() + " -> " + now.status(), left);
                }
            }
        }
    }

    private static boolean reassures(Status was, Status is) {
        boolean open = was == Status.WARN || was == Status.NOT_ASSESSED;
        return open && (is == Status.PASS || is == Status.DOES_NOT_APPLY);
    }

    private void fault(Case c, String kind, String left) {
        if (ABOUT_A_WIDTH.contains(kind.substring(0, kind.indexOf(' ')))
                && WIDTH.matcher(left).results().anyMatch(m -> alone(c, Tooth.of(Integer.parseInt(m.group(1)))))) {
            return;
        }
        String of = kind + " without " + left.replaceAll("/\\d+", "/n");
        counts.merge(of, 1, Integer::sum);
        examples.putIfAbsent(of, c.id() + " without " + left);
    }

    private static boolean alone(Case c, Tooth tooth) {
        return !Tooth.LOWER_INCISORS.contains(tooth)
                && !c.tooth(tooth.antimere()).width().known();
    }
}
