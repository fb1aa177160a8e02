package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Completes what the rules said: every criterion gets a result at every place of its facts, so that silence of a rule
 * can never look like a pass; and holds the rules to what a verdict may be.
 */
final class FillIn {
    private final Catalogue catalogue;
    private final Limits limits;
    private final Map<Class<?>, List<CaseFact>> facts = new HashMap<>();
    private final Map<String, List<Verdict>> verdicts = new HashMap<>();
    private final List<OwnError> errors;
    private final Set<String> failed = new LinkedHashSet<>();

    /** Facts come sorted by place. */
    FillIn(Catalogue catalogue, Limits limits, List<CaseFact> sorted, List<Verdict> given, List<OwnError> errors) {
        this.catalogue = catalogue;
        this.limits = limits;
        this.errors = new ArrayList<>(errors);
        errors.forEach(e -> failed.add(e.criterion()));
        sorted.forEach(f ->
                facts.computeIfAbsent(f.getClass(), t -> new ArrayList<>(4)).add(f));
        given.forEach(v -> verdicts.computeIfAbsent(v.criterion(), id -> new ArrayList<>(4))
                .add(v));
    }

    Judgement judgement(Stage reached) {
        List<CriterionResult> results = new ArrayList<>();
        for (Criterion c : catalogue.criteria()) {
            if (reached.hasReached(c.stage())) {
                results.add(result(c));
            }
        }
        return new Judgement(results, errors);
    }

    private CriterionResult result(Criterion c) {
        if (failed.contains(c.id())) {
            return new CriterionResult(c, Status.NOT_ASSESSED, List.of(), true);
        }
        int errorsBefore = errors.size();
        List<CaseFact> about = facts.getOrDefault(c.about(), List.of());
        List<Verdict> given = verdicts.getOrDefault(c.id(), List.of());
        List<PlaceResult> places = new ArrayList<>(Math.max(1, about.size()));
        for (CaseFact fact : about) {
            places.add(place(c, fact, given));
        }
        if (about.isEmpty()) {
            places.add(PlaceResult.absent(c));
        }
        if (errors.size() > errorsBefore) {
            return new CriterionResult(c, Status.NOT_ASSESSED, List.of(), true);
        }
        return new CriterionResult(c, CriterionResult.overall(places), places, false);
    }

    private PlaceResult place(Criterion c, CaseFact fact, List<Verdict> given) {
        List<Verdict> here = new ArrayList<>(2);
        for (Verdict v : given) {
            if (v.fact() == fact) {
                here.add(v);
            }
        }
        if (!here.isEmpty()) {
            return judged(c, fact, here);
        }
        return undecided(c, fact);
    }

    /**
     * What is missing comes before what does not apply: with the missing fact a rule might still warn, and to leave a
     * fact out must never make a warning go away.
     */
    private PlaceResult undecided(Criterion c, CaseFact fact) {
        List<String> missing = new ArrayList<>();
        boolean applies = true;
        for (Need need : c.needs()) {
            CaseValue k = need.of(fact);
            applies &= k.applies();
            k.missing().stream().filter(p -> !missing.contains(p)).forEach(missing::add);
        }
        if (missing.isEmpty() && applies) {
            error(c, fact, "nothing is missing, and yet no rule decides");
        }
        Status status = missing.isEmpty() && !applies ? Status.DOES_NOT_APPLY : Status.NOT_ASSESSED;
        return new PlaceResult(fact.place(), fact, status, List.of(), missing);
    }

    private PlaceResult judged(Criterion c, CaseFact fact, List<Verdict> here) {
        if (here.size() > 1) {
            List<String> order = new ArrayList<>(c.reasons().keySet());
            here.sort(Comparator.comparing(Verdict::outcome).reversed().thenComparing(v -> order.indexOf(v.reason())));
        }
        Status status = status(here.get(0));
        for (Verdict v : here) {
            if (status(v) != status) {
                error(c, fact, "the rules contradict each other");
            }
            v.seen().forEach(seen -> sameUnit(c, fact, seen));
        }
        if (status == Status.PASS) {
            for (Need need : c.needs()) {
                CaseValue k = need.of(fact);
                if (!k.known() && k.applies()) {
                    error(c, fact, "a rule passes it although " + need + " is not known");
                }
            }
        }
        return new PlaceResult(fact.place(), fact, status, here, List.of());
    }

    /** A number held against a limit in another unit would be a verdict on nothing. */
    private void sameUnit(Criterion c, CaseFact fact, Verdict.Seen seen) {
        Limit limit = limits.of(seen.limit());
        Unit unit = seen.value().unit();
        if (!comparable(unit, limit.unit())) {
            error(c, fact, "a value in " + unit + " was held against " + limit.name() + " in " + limit.unit());
        }
    }

    /** True for the same unit, and for two kinds of bare number. */
    static boolean comparable(Unit unit, Unit other) {
        return unit == other || unit.symbol().isEmpty() && other.symbol().isEmpty();
    }

    private void error(Criterion c, CaseFact fact, String message) {
        String words = fact.place().words();
        errors.add(new OwnError(c.id(), message + (words.isEmpty() ? "" : " (" + words + ")")));
    }

    private static Status status(Verdict v) {
        return switch (v.outcome()) {
            case PASS -> Status.PASS;
            case CAUTION, STOP -> Status.WARN;
            case DOES_NOT_APPLY -> Status.DOES_NOT_APPLY;
        };
    }
}
