package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Outcome;
import dev.fairlead.rules.language.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How a criterion ended at one place, without the values of that place: it holds for every fact that the rules cannot
 * tell from that one.
 */
record Ruling(Criterion criterion, Status status, Ending ending, List<Said> said) {
    /** One verdict; each value that it shows stands at that number among the components. */
    private record Said(Outcome outcome, String reason, List<Limit> limits, List<Integer> components) {}

    /** What can be kept of a result; null when a value that it shows cannot be told from another of the same fact. */
    static @Nullable Ruling of(Criterion criterion, PlaceResult result, CaseValue[] fact, Limits limits) {
        List<Said> all = new ArrayList<>();
        for (Verdict v : result.verdicts()) {
            List<Limit> held = new ArrayList<>();
            List<Integer> at = new ArrayList<>();
            for (Verdict.Seen seen : v.seen()) {
                held.add(limits.of(seen.limit()));
                int only = only(seen.value(), fact);
                if (only < 0) {
                    return null;
                }
                at.add(only);
            }
            all.add(new Said(v.outcome(), v.reason(), held, at));
        }
        return new Ruling(criterion, result.status(), Ending.of(result), all);
    }

    private static int only(Measured value, CaseValue[] fact) {
        int found = -1;
        for (int i = 0; i < fact.length; i++) {
            if (fact[i] == value) {
                found = found == -1 ? i : -2;
            }
        }
        return found;
    }

    /** False for a value in another unit than its limit, of which the engine's way makes an error. */
    boolean fits(CaseValue[] fact) {
        for (Said s : said) {
            for (int i = 0; i < s.components.size(); i++) {
                if (!FillIn.comparable(
                        ((Measured) fact[s.components.get(i)]).unit(),
                        s.limits.get(i).unit())) {
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
            Verdict verdict = new Verdict(criterion.id(), fact, s.outcome, s.reason);
            for (int i = 0; i < s.components.size(); i++) {
                verdict.seen(s.limits.get(i).name(), (Measured) parts[s.components.get(i)]);
            }
            verdicts.add(verdict);
        }
        return new PlaceResult(fact.place(), fact, status, verdicts, missing(parts));
    }

    /** What is missing at the place of a fact with these components; nothing where a rule has decided. */
    List<String> missing(CaseValue[] parts) {
        return said.isEmpty() ? missing(criterion, parts) : List.of();
    }

    /** All that is missing of what a criterion needs, each once. */
    static List<String> missing(Criterion criterion, CaseValue[] parts) {
        Set<String> missing = new LinkedHashSet<>();
        for (Need need : criterion.needs()) {
            missing.addAll(parts[need.at()].missing());
        }
        return List.copyOf(missing);
    }
}
