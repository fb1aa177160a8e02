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

    /** Of a fact of whose numbers each is an object of its own. */
    FillIn(Criterion criterion, CaseFact fact, Limits limits) {
        this.criterion = criterion;
        this.fact = fact;
        this.parts = fact.components();
        this.limits = limits;
    }

    /** What the rules did wrong; where there is anything, the ruling counts for nothing. */
    List<OwnError> errors() {
        return errors;
    }

    /** How the criterion ends at the place of the fact; {@code given} are its verdicts on any facts. */
    Ruling ruling(List<Verdict> given) {
        // two rules that say the same of a fact are one verdict: what the first saw is shown
        Map<String, Verdict> once = new LinkedHashMap<>();
        for (Verdict v : given) {
            if (v.fact() == fact) {
                once.putIfAbsent(v.outcome() + " " + v.reason(), v);
            }
        }
        return once.isEmpty() ? undecided() : decided(new ArrayList<>(once.values()));
    }

    /**
     * What is missing comes before what does not apply: with the missing fact a rule might still warn, and to leave a
     * fact out must never make a warning go away.
     */
    private Ruling undecided() {
        boolean lacks = !Ruling.missing(criterion, parts).isEmpty();
        boolean applies = criterion.needs().stream().allMatch(need -> parts[need.at()].applies());
        if (!lacks && applies) {
            error("nothing is missing, and yet no rule decides");
        }
        return new Ruling(criterion, lacks || applies ? Ending.NOT_ASSESSED : Ending.DOES_NOT_APPLY, List.of());
    }

    private Ruling decided(List<Verdict> here) {
        List<String> order = new ArrayList<>(criterion.reasons().keySet());
        here.sort(Comparator.comparing(Verdict::outcome).reversed().thenComparing(v -> order.indexOf(v.reason())));
        Ending ending = Ending.of(here.get(0).outcome());
        List<Ruling.Said> said = new ArrayList<>();
        for (Verdict v : here) {
            if (Ending.of(v.outcome()).status() != ending.status()) {
                error("the rules contradict each other");
            }
            said.add(new Ruling.Said(
                    v.outcome(), v.reason(), v.seen().stream().map(this::seen).toList()));
        }
        for (Need need : criterion.needs()) {
            CaseValue part = parts[need.at()];
            if (ending == Ending.PASS && !part.known() && part.applies() && !need.mayLack()) {
                error("a rule passes it although " + need + " is not known");
            }
        }
        return new Ruling(criterion, ending, said);
    }

    /** A number held against a limit in another unit would be a verdict on nothing. */
    private Ruling.Seen seen(Verdict.Seen seen) {
        Limit limit = limits.of(seen.limit());
        Unit unit = seen.value().unit();
        if (!comparable(unit, limit.unit())) {
            error("a value in " + unit + " was held against " + limit.name() + " in " + limit.unit());
        }
        // the lint lets a rule show components alone; equal ones are told apart, for each is an object of its own
        int component = 0;
        while (parts[component] != seen.value()) {
            component++;
        }
        return new Ruling.Seen(limit, component);
    }

    /** True for the same unit, and for two kinds of bare number. */
    static boolean comparable(Unit unit, Unit other) {
        return unit == other || unit.symbol().isEmpty() && other.symbol().isEmpty();
    }

    private void error(String message) {
        String words = fact.place().words();
        errors.add(new OwnError(criterion.id(), message + (words.isEmpty() ? "" : " (" + words + ")")));
    }
}
