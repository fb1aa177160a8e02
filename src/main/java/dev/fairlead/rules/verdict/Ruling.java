package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.Judgement.OwnError;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the rules of a criterion said of one fact, completed so that silence of a rule can never look like a pass, and
 * held to what a verdict may be. It holds for every fact that the rules cannot tell from that one.
 */
final class Ruling {
    private final Criterion criterion;
    private final CaseFact fact;
    private final CaseValue[] parts;
    private final List<Verdict> said;
    private final Ending ending;
    private final List<OwnError> errors = new ArrayList<>(0);

    /** On a fact of whose numbers each is an object of its own; {@code given} are the verdicts on any facts. */
    Ruling(Criterion criterion, CaseFact fact, List<Verdict> given, Limits limits) {
        this.criterion = criterion;
        this.fact = fact;
        this.parts = fact.components();
        // two rules that say the same of a fact are one verdict: what the first saw is shown
        Map<String, Verdict> once = new LinkedHashMap<>();
        for (Verdict v : given) {
            if (v.fact() == fact) {
                once.putIfAbsent(v.ending() + " " + v.reason(), v);
            }
        }
        List<String> order = new ArrayList<>(criterion.reasons().keySet());
        said = new ArrayList<>(once.values());
        said.sort(Comparator.comparing(Verdict::ending).thenComparing(v -> order.indexOf(v.reason())));
        ending = said.isEmpty() ? undecided() : said.get(0).ending();
        for (Verdict v : said) {
            errorIf(v.ending().status() != ending.status(), "the rules contradict each other");
            v.seen().forEach(seen -> checkUnit(seen.value().unit(), limits.of(seen.limit())));
        }
        for (Need need : criterion.needs()) {
            boolean unknown = !parts[need.at()].known() && parts[need.at()].applies();
            errorIf(
                    ending == Ending.PASS && unknown && !need.mayLack(),
                    "a rule passes it although " + need.component() + " is not known");
        }
    }

    /**
     * What is missing comes before what does not apply: with the missing fact a rule might still warn, and to leave a
     * fact out must never make a warning go away.
     */
    private Ending undecided() {
        boolean lacks = !missing(parts).isEmpty();
        boolean applies = criterion.needs().stream().allMatch(need -> parts[need.at()].applies());
        errorIf(!lacks && applies, "nothing is missing, and yet no rule decides");
        return lacks || applies ? Ending.NOT_ASSESSED : Ending.DOES_NOT_APPLY;
    }

    /** A number held against a limit in another unit would be a verdict on nothing; bare numbers are of one kind. */
    private void checkUnit(Unit unit, Limit limit) {
        boolean bare = unit.symbol().isEmpty() && limit.unit().symbol().isEmpty();
        errorIf(
                unit != limit.unit() && !bare,
                "a value in " + unit + " was held against " + limit.name() + " in " + limit.unit());
    }

    private void errorIf(boolean wrong, String message) {
        if (wrong) {
            String words = fact.place().words();
            errors.add(new OwnError(criterion.id(), message + (words.isEmpty() ? "" : " (" + words + ")")));
        }
    }

    /** What the rules did wrong; where there is anything, the ruling counts for nothing. */
    List<OwnError> errors() {
        return errors;
    }

    Ending ending() {
        return ending;
    }

    /** All that is missing of a fact with these components, each once; nothing where a rule has decided. */
    private List<String> missing(CaseValue[] of) {
        List<String> missing = List.of();
        for (Need need : said.isEmpty() ? criterion.needs() : List.<Need>of()) {
            missing = Pointers.union(missing, of[need.at()].missing());
        }
        return missing;
    }

    /** The result at the place of another such fact, with its components. */
    PlaceResult at(CaseFact other, CaseValue[] of) {
        List<Verdict> verdicts = new ArrayList<>(said.size());
        for (Verdict v : said) {
            Verdict verdict = new Verdict(v.criterion(), other, v.ending(), v.reason());
            v.seen().forEach(seen -> verdict.seen(seen.limit(), (Measured) of[component(seen.value())]));
            verdicts.add(verdict);
        }
        return new PlaceResult(other.place(), other, ending, verdicts, missing(of));
    }

    /** The lint lets a rule show components alone; equal ones are told apart, for each is an object of its own. */
    private int component(Measured seen) {
        int component = 0;
        while (parts[component] != seen) {
            component++;
        }
        return component;
    }
}
