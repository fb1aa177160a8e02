package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.language.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Completes what the rules of a criterion said of one fact, so that silence of a rule can never look like a pass; and
 * holds the rules to what a verdict may be.
 */
final class FillIn {
    private final Criterion criterion;
    private final CaseFact fact;
    private final CaseValue[] parts;
    private final Limits limits;
    private final List<OwnError> errors = new ArrayList<>();

    FillIn(Criterion criterion, CaseFact fact, CaseValue[] parts, Limits limits) {
        this.criterion = criterion;
        this.fact = fact;
        this.parts = parts;
        this.limits = limits;
    }

    /** What the rules did wrong; where there is anything, the result counts for nothing. */
    List<OwnError> errors() {
        return errors;
    }

    /** How the criterion ends at the place of the fact; {@code given} are its verdicts on any facts. */
    PlaceResult result(List<Verdict> given) {
        List<Verdict> here = new ArrayList<>(2);
        for (Verdict v : given) {
            if (v.fact() == fact) {
                here.add(v);
            }
        }
        return here.isEmpty() ? undecided() : judged(here);
    }

    /**
     * What is missing comes before what does not apply: with the missing fact a rule might still warn, and to leave a
     * fact out must never make a warning go away.
     */
    private PlaceResult undecided() {
        List<String> missing = Ruling.missing(criterion, parts);
        boolean applies = true;
        for (Need need : criterion.needs()) {
            applies &= parts[need.at()].applies();
        }
        if (missing.isEmpty() && applies) {
            error("nothing is missing, and yet no rule decides");
        }
        Status status = missing.isEmpty() && !applies ? Status.DOES_NOT_APPLY : Status.NOT_ASSESSED;
        return new PlaceResult(fact.place(), fact, status, List.of(), missing);
    }

    private PlaceResult judged(List<Verdict> said) {
        List<Verdict> here = once(said);
        if (here.size() > 1) {
            List<String> order = new ArrayList<>(criterion.reasons().keySet());
            here.sort(Comparator.comparing(Verdict::outcome).reversed().thenComparing(v -> order.indexOf(v.reason())));
        }
        Status status = status(here.get(0));
        for (Verdict v : here) {
            if (status(v) != status) {
                error("the rules contradict each other");
            }
            v.seen().forEach(this::sameUnit);
        }
        if (status == Status.PASS) {
            for (Need need : criterion.needs()) {
                if (!parts[need.at()].known() && parts[need.at()].applies() && !need.mayLack()) {
                    error("a rule passes it although " + need + " is not known");
                }
            }
        }
        return new PlaceResult(fact.place(), fact, status, here, List.of());
    }

    /** Two rules that say the same of a fact are one verdict: what the first saw is shown. */
    private static List<Verdict> once(List<Verdict> all) {
        if (all.size() == 1) {
            return all;
        }
        Map<String, Verdict> once = new LinkedHashMap<>();
        all.forEach(v -> once.putIfAbsent(v.outcome() + " " + v.reason(), v));
        return new ArrayList<>(once.values());
    }

    /** A number held against a limit in another unit would be a verdict on nothing. */
    private void sameUnit(Verdict.Seen seen) {
        Limit limit = limits.of(seen.limit());
        Unit unit = seen.value().unit();
        if (!comparable(unit, limit.unit())) {
            error("a value in " + unit + " was held against " + limit.name() + " in " + limit.unit());
        }
    }

    /** True for the same unit, and for two kinds of bare number. */
    static boolean comparable(Unit unit, Unit other) {
        return unit == other || unit.symbol().isEmpty() && other.symbol().isEmpty();
    }

    private void error(String message) {
        String words = fact.place().words();
        errors.add(new OwnError(criterion.id(), message + (words.isEmpty() ? "" : " (" + words + ")")));
    }

    private static Status status(Verdict v) {
        return switch (v.outcome()) {
            case PASS -> Status.PASS;
            case CAUTION, STOP -> Status.WARN;
            case DOES_NOT_APPLY -> Status.DOES_NOT_APPLY;
        };
    }
}
