package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.model.CaseValue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.Memo;
import dev.fairlead.rules.language.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that a rulebase says of one case by the criteria that were asked for. Verdicts, values and what is missing are
 * put together when they are asked for: audits of many cases do with how each criterion ends.
 */
public final class Judgement {
    /** A fact at its place, with its components, which are read once. */
    private static final class Placed {
        final CaseFact fact;
        final CaseValue[] parts;

        /** What the engine is asked about: a copy, so that it can be told which component a verdict shows. */
        @Nullable
        CaseFact copy;

        Placed(CaseFact fact) {
            this.fact = fact;
            this.parts = fact.components();
        }
    }

    private static final Comparator<Placed> IN_ORDER = Comparator.comparing(p -> p.fact.place());

    private final List<Criterion> criteria;
    private final List<? extends CaseFact> facts;
    private final Map<Class<?>, List<Placed>> places = new HashMap<>();
    /** By criterion, place by place; null for one that is not asked for. */
    private final Ruling[][] rulings;

    private final List<OwnError> errors = new ArrayList<>();
    private final List<CaseFact> open = new ArrayList<>();

    Judgement(List<Criterion> criteria, List<? extends CaseFact> facts) {
        this.criteria = criteria;
        this.facts = facts;
        this.rulings = new Ruling[criteria.size()][];
    }

    /** The facts that a criterion is about, in the order of their places. */
    private List<Placed> places(int criterion) {
        Class<?> about = criteria.get(criterion).about();
        List<Placed> here = places.get(about);
        if (here == null) {
            here = new ArrayList<>(4);
            for (CaseFact fact : facts) {
                if (fact.getClass() == about) {
                    here.add(new Placed(fact));
                }
            }
            here.sort(IN_ORDER);
            places.put(about, here);
        }
        return here;
    }

    /** Rules by a criterion as far as the memo goes. */
    void remember(int criterion, Memo<Ruling> memo) {
        List<Placed> here = places(criterion);
        Ruling[] known = new Ruling[here.size()];
        for (int p = 0; p < known.length; p++) {
            Placed placed = here.get(p);
            known[p] = memo.of(criterion, placed.parts);
            if (known[p] == null && placed.copy == null) {
                placed.copy = FactEdit.distinct(placed.fact);
                open.add(placed.copy);
            }
        }
        rulings[criterion] = known;
    }

    /** Rules by what the engine says wherever nothing was remembered. */
    void ask(Engine engine, Limits limits, Memo<Ruling> memo) {
        if (open.isEmpty()) {
            return;
        }
        Engine.Heard heard = engine.ask(open, limits);
        for (int i = 0; i < rulings.length; i++) {
            Criterion c = criteria.get(i);
            Ruling[] known = rulings[i];
            if (known == null) {
                continue;
            }
            if (heard.failed().containsKey(c.id())) {
                errors.add(
                        new OwnError(c.id(), "a rule failed: " + heard.failed().get(c.id())));
                continue;
            }
            List<Verdict> said = heard.verdicts().getOrDefault(c.id(), List.of());
            for (int p = 0; p < known.length; p++) {
                Placed placed = places(i).get(p);
                if (known[p] == null && placed.copy != null) {
                    known[p] = new Ruling(c, placed.copy, said, limits);
                    errors.addAll(known[p].errors());
                    if (known[p].errors().isEmpty()) {
                        memo.keep(i, placed.parts, known[p]);
                    }
                }
            }
        }
    }

    /** What went wrong on our side; the criteria named there were not judged. */
    public List<OwnError> errors() {
        return Collections.unmodifiableList(errors);
    }

    /** How each criterion of the catalogue ends, in its order; null for one that was not asked for. */
    public @Nullable Ending[] endings() {
        Ending[] endings = new Ending[rulings.length];
        for (int i = 0; i < endings.length; i++) {
            endings[i] = rulings[i] == null ? null : ending(i);
        }
        return endings;
    }

    private Ending ending(int criterion) {
        for (OwnError e : errors) {
            if (e.criterion().equals(criteria.get(criterion).id())) {
                return Ending.FAILED;
            }
        }
        Ending heaviest = rulings[criterion].length == 0 ? Ending.NOT_ASSESSED : Ending.FAILED;
        for (Ruling r : rulings[criterion]) {
            heaviest = r.ending().compareTo(heaviest) < 0 ? r.ending() : heaviest;
        }
        return heaviest;
    }

    /** The results of all criteria that were asked for, in catalogue order. */
    public List<CriterionResult> results() {
        List<CriterionResult> results = new ArrayList<>(rulings.length);
        for (int i = 0; i < rulings.length; i++) {
            if (rulings[i] != null) {
                results.add(result(i));
            }
        }
        return results;
    }

    /** The result of a criterion that was asked for, by its number in the catalogue. */
    public CriterionResult result(int criterion) {
        Criterion c = criteria.get(criterion);
        Ending ending = ending(criterion);
        List<PlaceResult> all = new ArrayList<>();
        if (ending != Ending.FAILED) {
            List<Placed> here = places(criterion);
            for (int p = 0; p < here.size(); p++) {
                all.add(rulings[criterion][p].at(here.get(p).fact, here.get(p).parts));
            }
            if (here.isEmpty()) {
                all.add(PlaceResult.absent(c));
            }
        }
        return new CriterionResult(c, ending, all);
    }

    /** The result of a criterion; throws when it was not asked for. */
    public CriterionResult of(String criterion) {
        return results().stream()
                .filter(r -> r.criterion().id().equals(criterion))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no result for " + criterion));
    }
}
