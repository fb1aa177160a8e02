package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Pointers;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.Memo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The facts of one case, and what is ruled on each by each criterion that is asked for. Of one thread. */
final class Hearing {
    /** A fact at its place, with its components, which are read once, and only where a criterion looks at them. */
    private static final class Placed {
        final CaseFact fact;

        private CaseValue @Nullable [] parts;

        /** What the engine is asked about: a copy, so that it can be told which component a verdict shows. */
        @Nullable
        CaseFact copy;

        Placed(CaseFact fact) {
            this.fact = fact;
        }

        CaseValue[] parts() {
            CaseValue[] read = parts;
            if (read == null) {
                read = fact.components();
                parts = read;
            }
            return read;
        }
    }

    private static final Comparator<Placed> IN_ORDER = (a, b) -> a.fact.getClass() == b.fact.getClass()
            ? a.fact.place().compareTo(b.fact.place())
            : a.fact.getClass().getName().compareTo(b.fact.getClass().getName());

    private final List<Criterion> criteria;
    private final Limits limits;
    private final Map<Class<?>, List<Placed>> places = new HashMap<>();
    /** By criterion, place by place; null for one that is not asked for. */
    private final Ruling[][] rulings;

    private final Set<Criterion> failed = new LinkedHashSet<>();
    private final List<OwnError> errors = new ArrayList<>();
    private final List<Placed> open = new ArrayList<>();

    Hearing(List<Criterion> criteria, Limits limits, List<? extends CaseFact> facts) {
        this.criteria = criteria;
        this.limits = limits;
        this.rulings = new Ruling[criteria.size()][];
        for (CaseFact fact : facts) {
            places.computeIfAbsent(fact.getClass(), t -> new ArrayList<>(4)).add(new Placed(fact));
        }
        places.values().forEach(here -> here.sort(IN_ORDER));
    }

    private List<Placed> places(int criterion) {
        return places.getOrDefault(criteria.get(criterion).about(), List.of());
    }

    /** Rules by a criterion as far as the memo goes. */
    void remember(int criterion, @Nullable Memo<Ruling> memo) {
        List<Placed> here = places(criterion);
        Ruling[] known = new Ruling[here.size()];
        for (int p = 0; p < known.length; p++) {
            Placed placed = here.get(p);
            Ruling ruling = memo == null ? null : memo.of(criterion, placed.parts());
            if (ruling != null && ruling.fits(placed.parts())) {
                known[p] = ruling;
            } else if (placed.copy == null) {
                placed.copy = FactEdit.distinct(placed.fact);
                open.add(placed);
            }
        }
        rulings[criterion] = known;
    }

    /** Rules by what the engine says wherever nothing was remembered. */
    void ask(Engine engine, @Nullable Memo<Ruling> memo) {
        if (open.isEmpty()) {
            return;
        }
        Engine.Heard heard =
                engine.ask(open.stream().sorted(IN_ORDER).map(o -> o.copy).toList(), limits);
        for (int i = 0; i < rulings.length; i++) {
            Criterion c = criteria.get(i);
            Ruling[] known = rulings[i];
            if (known == null) {
                continue;
            }
            if (heard.failed().containsKey(c.id())) {
                errors.add(
                        new OwnError(c.id(), "a rule failed: " + heard.failed().get(c.id())));
                failed.add(c);
                continue;
            }
            for (int p = 0; p < known.length; p++) {
                CaseFact copy = known[p] == null ? places(i).get(p).copy : null;
                if (copy == null) {
                    continue;
                }
                FillIn at = new FillIn(c, copy, limits);
                known[p] = at.ruling(heard.verdicts().getOrDefault(c.id(), List.of()));
                errors.addAll(at.errors());
                if (!at.errors().isEmpty()) {
                    failed.add(c);
                } else if (memo != null) {
                    memo.keep(i, places(i).get(p).parts(), known[p]);
                }
            }
        }
    }

    /** What went wrong on our side. */
    List<OwnError> errors() {
        return errors;
    }

    boolean asked(int criterion) {
        return rulings[criterion] != null;
    }

    /** How a criterion ends over all places. */
    Ending ending(int criterion) {
        if (failed.contains(criteria.get(criterion))) {
            return Ending.FAILED;
        }
        Ending heaviest = rulings[criterion].length == 0 ? Ending.NOT_ASSESSED : Ending.FAILED;
        for (Ruling r : rulings[criterion]) {
            heaviest = r.ending().compareTo(heaviest) < 0 ? r.ending() : heaviest;
        }
        return heaviest;
    }

    /** JSON Pointers of all that a criterion lacks, each once. */
    List<String> missing(int criterion) {
        List<Placed> here = places(criterion);
        if (here.isEmpty()) {
            return PlaceResult.absent(criteria.get(criterion)).missing();
        }
        List<String> missing = List.of();
        for (int p = 0; p < here.size(); p++) {
            missing = Pointers.union(
                    missing, rulings[criterion][p].missing(here.get(p).parts()));
        }
        return missing;
    }

    /** How a criterion ends, with every place. */
    CriterionResult result(int criterion) {
        Criterion c = criteria.get(criterion);
        Ending ending = ending(criterion);
        List<PlaceResult> all = new ArrayList<>();
        for (int p = 0; p < rulings[criterion].length && ending != Ending.FAILED; p++) {
            Placed placed = places(criterion).get(p);
            all.add(rulings[criterion][p].at(placed.fact, placed.parts()));
        }
        if (rulings[criterion].length == 0 && ending != Ending.FAILED) {
            all.add(PlaceResult.absent(c));
        }
        return new CriterionResult(c, ending.status(), all, ending == Ending.FAILED);
    }
}
