package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.JudgementText;
import dev.fairlead.rules.verdict.PlaceResult;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;

/**
 * On what is known of whole cases of which much was forgotten: where a criterion waits for up to three things, all that
 * they can be is put through the criterion itself, on each side of each of its limits. If every way warns, it ought to
 * have warned; if every way passes, it need not have waited.
 */
class DecidedTest {
    private static final int COHORT = 60;
    private static final int MOST_UNKNOWN = 3;
    private static final double[] FORGOTTEN = {0.05, 0.2, 0.5, 0.8};

    /**
     * Numbers whose bound has another name than the number with "SoFar" for its last word. Once a number is known it is
     * its own bound, so the two are never apart.
     */
    private static final Map<String, String> BOUNDS =
            Map.of("molarDistalNow", "molarDistal", "pastPlanNow", "pastPlan", "standOff", "standOffMost");

    private final Rulebase rulebase = ProjectRules.rulebase();
    private final Judge judge = rulebase.judge();
    private final Checker checker = new Checker(rulebase, Calculations.full());
    private final CheckOptions options =
            CheckOptions.USUAL.at(Stage.HOLDING).withoutWorkings().withoutForces();
    private final Map<String, Unit> units = new ConcurrentHashMap<>();
    private final Map<String, String> examples = new ConcurrentHashMap<>();
    private final Map<String, Integer> counts = new ConcurrentHashMap<>();
    private final Map<String, Boolean> tried = new ConcurrentHashMap<>();

    @Test
    void whatIsDecidedDoesNotWait() {
        List<Case> cases = WholeCases.demos();
        cases.addAll(WholeCases.cohort(COHORT));
        cases.forEach(c -> checker.facts(c, options).forEach(this::noteUnits));
        ProjectRules.base().all().forEach(this::noteUnits);
        cases.parallelStream().forEach(c -> {
            for (double share : FORGOTTEN) {
                Random random = new Random(c.id().hashCode() + Double.hashCode(share));
                tryAll(forgetting(c, share, random));
            }
        });
        TreeMap<String, String> told = new TreeMap<>();
        examples.forEach((kind, example) -> told.put(kind, counts.get(kind) + " times, first " + example));
        assertThat(told.entrySet()).isEmpty();
        assertThat(tried).hasSizeGreaterThan(2000);
    }

    private void noteUnits(CaseFact fact) {
        for (RecordComponent c : RandomFacts.components(fact.getClass())) {
            if (FactEdit.get(c, fact) instanceof Measured m && m.known()) {
                units.put(fact.getClass() + "." + c.getName(), m.unit());
            }
        }
    }

    private static Case forgetting(Case c, double share, Random random) {
        Case fewer = c;
        for (String pointer : Edit.factPointers(c)) {
            if (!pointer.equals("/stage") && random.nextDouble() < share) {
                fewer = Edit.forget(fewer, pointer);
            }
        }
        return fewer;
    }

    private void tryAll(Case c) {
        for (CriterionResult r : checker.judge(c, options).results()) {
            for (PlaceResult p : r.places()) {
                if (p.status() == Status.NOT_ASSESSED && p.fact() != null) {
                    tryOne(c, r.criterion(), p.fact());
                }
            }
        }
    }

    private void tryOne(Case c, Criterion criterion, CaseFact fact) {
        List<Need> unknown = criterion.needs().stream()
                .filter(n -> !n.of(fact).known() && n.of(fact).applies())
                .toList();
        if (unknown.size() > MOST_UNKNOWN || tried.putIfAbsent(criterion.id() + unknown + fact, true) != null) {
            return;
        }
        EnumSet<Status> ends = EnumSet.noneOf(Status.class);
        complete(criterion, fact, unknown, 0, new HashMap<>(), ends);
        if (ends.size() == 1 && (ends.contains(Status.WARN) || ends.contains(Status.PASS))) {
            String kind = criterion.id() + (ends.contains(Status.WARN) ? " masks a warning" : " waits needlessly")
                    + " without " + unknown;
            counts.merge(kind, 1, Integer::sum);
            examples.putIfAbsent(kind, c.id() + ": " + fact);
        }
    }

    private void complete(
            Criterion criterion,
            CaseFact fact,
            List<Need> unknown,
            int from,
            Map<String, String> values,
            EnumSet<Status> ends) {
        if (from == unknown.size()) {
            CaseFact whole = ExampleFacts.with(fact, values);
            ends.add(JudgementText.result(judge.judge(List.of(whole)), criterion.id())
                    .status());
            return;
        }
        Need need = unknown.get(from);
        for (String value : range(criterion, fact, need)) {
            if (ends.size() < 2) {
                values.put(need.component(), value);
                bound(fact, need).ifPresent(b -> values.put(b, value));
                complete(criterion, fact, unknown, from + 1, values, ends);
            }
        }
    }

    private static Optional<String> bound(CaseFact fact, Need need) {
        String regular = need.component().replaceAll("(After|Now)$", "") + "SoFar";
        String name = BOUNDS.getOrDefault(need.component(), regular);
        return RandomFacts.components(fact.getClass()).stream()
                .map(RecordComponent::getName)
                .filter(name::equals)
                .findFirst();
    }

    /** Every state, and values on each side of each limit that the criterion holds anything against. */
    private List<String> range(Criterion criterion, CaseFact fact, Need need) {
        List<String> all = new ArrayList<>();
        if (rules(criterion).contains(need.component() + ".doesNotApply()")) {
            all.add("does-not-apply");
        }
        if (need.type() != Measured.class) {
            all.add("yes");
            all.add("no");
            return all;
        }
        Unit unit = units.getOrDefault(fact.getClass() + "." + need.component(), Unit.COUNT);
        List<Double> limits = new ArrayList<>();
        for (String name : criterion.limits()) {
            Limit limit = rulebase.catalogue().limits().of(name);
            if (limit.unit() == unit
                    || limit.unit().symbol().isEmpty() && unit.symbol().isEmpty()) {
                limits.add(limit.value());
            }
        }
        limits.add(0.0);
        limits.sort(Double::compare);
        for (int i = 0; i < limits.size(); i++) {
            all.add(quantity(limits.get(i), unit));
            all.add(quantity(i == 0 ? limits.get(0) - 100 : (limits.get(i - 1) + limits.get(i)) / 2, unit));
        }
        all.add(quantity(limits.get(limits.size() - 1) + 100, unit));
        return all.stream().distinct().toList();
    }

    private static String quantity(double value, Unit unit) {
        return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).toPlainString() + " " + unit.symbol();
    }

    private final Map<String, String> drl = new ConcurrentHashMap<>();

    private String rules(Criterion criterion) {
        return drl.computeIfAbsent(criterion.drl(), f -> {
            try {
                return Files.readString(Path.of("rules", f));
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }
}
