package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;

/**
 * On whole cases: a known hazard is never masked, and nothing waits for what cannot change it. Each fact is left out in
 * turn; where a criterion then waits, every value that the fact can have is put through the criterion. If all of them
 * warn, it ought to have warned; if all of them pass, it need not have waited.
 */
class HazardTest {
    private static final int COHORT = 40;
    /** Values of a quantity over its whole range, and shares of the value that was recorded. */
    private static final int GRID = 6;

    private static final double[] SHARES = {0.5, 0.9, 1.1, 1.5};
    /** How far days are tried to either side where a warning is put to the proof, and in what steps. */
    private static final int DAY_REACH = 800;

    private static final int DAY_STEP = 10;
    private static final int[] DAYS = {-800, -45, -7, 7, 45, 800};

    /** Values with which a warning that all those give is put to the proof. */
    private static final int FINE = 400;

    /**
     * Waits that a clinician would want though no value of the fact could change the outcome, as a pattern of
     * criterion, kind and fact, with the reason: a pass would tell a number that nobody measured, or judge a plan that
     * nobody made. A warning is never among them. Each has to be met at least once.
     */
    private static final Map<String, String> WANTED = Map.of(
            ".* waits needlessly without /visits/n/activated",
            "a pass would say of readings that they fit what was opened, where nobody wrote down whether anything was",
            "(arch-form-fits|blank-long-enough|first-bend-offset|bends-small|fold-wire-left|sides-balanced"
                    + "|readings-agree|response-seen) waits needlessly without"
                    + " /(wire/size|arch/\\w+|hardware/side/length|bench/side/\\w+)",
            "a pass shows a number that is computed for this wire: without one of its inputs there is none to show",
            "plan-meets-need waits needlessly without /arch/\\w+",
            "two millimetres of arch for each of advance stand in for a warning, never for a pass",
            "(incisor-\\S+|inclination-relative-\\S+|overbite-after|not-past-plan|fold-wire-left) waits needlessly without /plan/advanceside",
            "a pass would speak for a plan of which one side was never written down",
            "overbite-after waits needlessly without /headFilm/\\w+",
            "a pass would show a prediction from an angle that nobody measured",
            "(not-overdone|advancement-needed) waits needlessly without /teeth/n/width",
            "what this child needs is not known without its own incisors, whatever the others are");

    private final Checker checker = new Checker(ProjectRules.rulebase(), Calculations.full());
    private final CheckOptions options =
            CheckOptions.USUAL.at(Stage.HOLDING).withoutWorkings().withoutForces();
    private final Map<String, String> examples = new ConcurrentHashMap<>();
    private final Map<String, Integer> counts = new ConcurrentHashMap<>();
    private final Set<String> excused = ConcurrentHashMap.newKeySet();
    private final Set<String> waited = ConcurrentHashMap.newKeySet();

    @Test
    void aKnownHazardIsNeverMaskedAndNothingWaitsForWhatCannotChangeIt() {
        List<Case> cases = WholeCases.demos();
        cases.addAll(WholeCases.cohort(COHORT));
        cases.parallelStream().forEach(this::tryEach);
        TreeMap<String, String> told = new TreeMap<>();
        examples.forEach((kind, example) -> told.put(kind, counts.get(kind) + " times, first " + example));
        assertThat(told.entrySet()).isEmpty();
        assertThat(excused).containsExactlyInAnyOrderElementsOf(WANTED.keySet());
        // criteria that waited for something at least once: the test would be empty otherwise
        assertThat(waited).hasSizeGreaterThan(85);
    }

    private void tryEach(Case c) {
        for (String pointer : Edit.factPointers(c)) {
            if (!pointer.equals("/stage") && Edit.get(c, pointer) instanceof CaseValue read) {
                tryOne(c, pointer, read);
            }
        }
    }

    private void tryOne(Case c, String pointer, CaseValue read) {
        Case without = Edit.forget(c, pointer);
        Map<String, EnumSet<Status>> ends = new HashMap<>();
        places(checker.judge(without, options)).forEach((key, p) -> {
            if (p.status() == Status.NOT_ASSESSED && p.missing().contains(pointer)) {
                ends.put(key, EnumSet.noneOf(Status.class));
            }
        });
        if (ends.isEmpty()) {
            return;
        }
        ends.keySet().forEach(k -> waited.add(k.substring(0, k.indexOf(' '))));
        tryAll(c, pointer, range(CasePaths.field(pointer).orElseThrow(), read, GRID), ends);
        ends.values().removeIf(all -> !one(all));
        if (ends.values().stream().anyMatch(all -> all.contains(Status.WARN))) {
            tryAll(c, pointer, range(CasePaths.field(pointer).orElseThrow(), read, FINE), ends);
        }
        ends.forEach((k, all) -> {
            if (one(all)) {
                fault(c, k, all.contains(Status.WARN) ? " masks a warning" : " waits needlessly", pointer);
            }
        });
    }

    private static boolean one(EnumSet<Status> all) {
        return all.equals(EnumSet.of(Status.WARN)) || all.equals(EnumSet.of(Status.PASS));
    }

    private void fault(Case c, String key, String how, String pointer) {
        String kind = key.substring(0, key.indexOf(' ')) + how + " without "
                + pointer.replaceAll("/\\d+", "/n").replaceAll("left|right|Left|Right", "side");
        for (String exception : WANTED.keySet()) {
            if (kind.matches(exception)) {
                excused.add(exception);
                return;
            }
        }
        counts.merge(kind, 1, Integer::sum);
        examples.putIfAbsent(kind, c.id() + " without " + pointer + " at " + key);
    }

    private void tryAll(Case c, String pointer, List<Object> values, Map<String, EnumSet<Status>> ends) {
        for (Object value : values) {
            Map<String, PlaceResult> places = places(checker.judge(Edit.set(c, pointer, value), options));
            ends.keySet().retainAll(places.keySet());
            ends.forEach((key, all) -> all.add(places.get(key).status()));
        }
    }

    private static Map<String, PlaceResult> places(Judgement judgement) {
        Map<String, PlaceResult> all = new HashMap<>();
        for (CriterionResult r : judgement.results()) {
            for (PlaceResult p : r.places()) {
                all.put(
                        r.criterion().id() + " " + p.place().pointer() + " "
                                + p.place().words(),
                        p);
            }
        }
        return all;
    }

    /** Values that a fact may have: all choices, both answers, quantities over the range that reading allows. */
    private static List<Object> range(FieldShape field, CaseValue read, int grid) {
        List<Object> values = new ArrayList<>();
        if (read.known()) {
            values.add(read);
        }
        switch (field.kind()) {
            case ANSWER -> values.addAll(List.of(Answer.YES, Answer.NO));
            case CHOICE -> field.choices().forEach(choice -> values.add(Fact.of(choice)));
            case QUANTITY -> {
                double low = field.about().low();
                double high = field.about().high();
                for (int i = 0; i <= grid; i++) {
                    values.add(low + (high - low) * i / grid);
                }
                double middle = ((Measured) read).known() ? ((Measured) read).value() : (low + high) / 2;
                for (double share : SHARES) {
                    values.add(Math.max(low, Math.min(high, middle * share)));
                }
            }
            case DATE -> {
                if (read.known()) {
                    LocalDate day = (LocalDate) ((Fact<?>) read).get();
                    for (int days : DAYS) {
                        values.add(day.plusDays(days).toString());
                    }
                    for (int days = -DAY_REACH; grid == FINE && days <= DAY_REACH; days += DAY_STEP) {
                        values.add(day.plusDays(days).toString());
                    }
                }
            }
            default -> {}
        }
        return values;
    }
}
