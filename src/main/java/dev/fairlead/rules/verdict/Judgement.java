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
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * All that a rulebase says of one case by the criteria that were asked for. Verdicts, values and what is missing are
 * put together when they are asked for: audits of many cases do with how each criterion ends.
 */
public final class Judgement {
    /**
     * A failure of the program or of a rule, not of the case.
     *
     * @param criterion the criterion that could not be judged
     */
    public record OwnError(String criterion, String message) {}

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

    private final @Nullable Ending[] endings;
    private final List<OwnError> errors = new ArrayList<>();

    Judgement(List<Criterion> criteria, List<? extends CaseFact> facts) {
        this.criteria = criteria;
        this.facts = facts;
        this.rulings = new Ruling[criteria.size()][];
        this.endings = new Ending[criteria.size()];
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

    /** Rules by a criterion as far as the memo goes; adds what the engine is to be asked about. */
    void remember(int criterion, Memo<Ruling> memo, List<CaseFact> open) {
        List<Placed> here = places(criterion);
        Ruling[] known = new Ruling[here.size()];
        for (int p = 0; p < known.length; p++) {
            Placed placed = here.get(p);
            known[p] = memo.of(placed.parts);
            if (known[p] == null && placed.copy == null) {
                placed.copy = FactEdit.distinct(placed.fact);
                open.add(placed.copy);
            }
        }
        rulings[criterion] = known;
    }

    /** Rules by what the engine says wherever nothing was remembered, and ends all that is asked for. */
    void hear(Engine.Heard heard, Limits limits, List<Memo<Ruling>> memos) {
        for (int i = 0; i < rulings.length; i++) {
            if (rulings[i] != null) {
                int before = errors.size();
                Ending heaviest = heaviest(i, heard, limits, memos.get(i));
                endings[i] = errors.size() > before ? Ending.FAILED : heaviest;
            }
        }
    }

    private Ending heaviest(int criterion, Engine.Heard heard, Limits limits, Memo<Ruling> memo) {
        Criterion c = criteria.get(criterion);
        String failure = heard.failed().get(c.id());
        if (failure != null) {
            errors.add(new OwnError(c.id(), "a rule failed: " + failure));
            return Ending.FAILED;
        }
        Ruling[] here = rulings[criterion];
        Ending heaviest = here.length == 0 ? Ending.NOT_ASSESSED : Ending.FAILED;
        for (int p = 0; p < here.length; p++) {
            if (here[p] == null) {
                Placed placed = places(criterion).get(p);
                List<Verdict> said = heard.verdicts().getOrDefault(c.id(), List.of());
                here[p] = new Ruling(c, Objects.requireNonNull(placed.copy), said, limits);
                errors.addAll(here[p].errors());
                if (here[p].errors().isEmpty()) {
                    memo.keep(placed.parts, here[p]);
                }
            }
            heaviest = here[p].ending().compareTo(heaviest) < 0 ? here[p].ending() : heaviest;
        }
        return heaviest;
    }

    /** What went wrong on our side; the criteria named there were not judged. */
    public List<OwnError> errors() {
        return Collections.unmodifiableList(errors);
    }

    /** How each criterion of the catalogue ends, in its order; null for one that was not asked for. */
    public @Nullable Ending[] endings() {
        return endings.clone();
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
        List<PlaceResult> all = new ArrayList<>();
        if (endings[criterion] != Ending.FAILED) {
            List<Placed> here = places(criterion);
            for (int p = 0; p < here.size(); p++) {
                all.add(rulings[criterion][p].at(here.get(p).fact, here.get(p).parts));
            }
            if (here.isEmpty()) {
                all.add(PlaceResult.absent(c));
            }
        }
        return new CriterionResult(c, endings[criterion], all);
    }
}
