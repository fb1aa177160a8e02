package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Outcome;
import dev.fairlead.rules.language.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * How a criterion ended at one place, without the values of that place: it holds for every fact that the rules cannot
 * tell from that one.
 */
record Ruling(Criterion criterion, Ending ending, List<Said> said) {
    /** One verdict. */
    record Said(Outcome outcome, String reason, List<Seen> seen) {}

    /** A value that a verdict shows: the limit, and the number of the component among all of the fact. */
    record Seen(Limit limit, int component) {}

    /** False for a value in another unit than its limit, of which the engine's way makes an error. */
    boolean fits(CaseValue[] parts) {
        for (Said s : said) {
            for (Seen seen : s.seen()) {
                if (!FillIn.comparable(
                        ((Measured) parts[seen.component()]).unit(),
                        seen.limit().unit())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The result at the place of {@code fact}, whose components are {@code parts}. */
    PlaceResult at(CaseFact fact, CaseValue[] parts) {
        List<Verdict> verdicts = new ArrayList<>(said.size());
        for (Said s : said) {
            Verdict verdict = new Verdict(criterion.id(), fact, s.outcome(), s.reason());
            for (Seen seen : s.seen()) {
                verdict.seen(seen.limit().name(), (Measured) parts[seen.component()]);
            }
            verdicts.add(verdict);
        }
        return new PlaceResult(fact.place(), fact, ending.status(), verdicts, missing(parts));
    }

    /** All that is missing at the place of a fact with these components; nothing where a rule has decided. */
    List<String> missing(CaseValue[] parts) {
        return said.isEmpty() ? missing(criterion, parts) : List.of();
    }

    /** All that is missing of what a criterion needs, each once. */
    static List<String> missing(Criterion criterion, CaseValue[] parts) {
        List<String> missing = List.of();
        for (Need need : criterion.needs()) {
            missing = Pointers.union(missing, parts[need.at()].missing());
        }
        return missing;
    }
}
