package dev.fairlead.findings;

import dev.fairlead.base.Hash;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What tells where a finding comes from; worked out when it is asked for, as a report in plain text shows none of it.
 */
public final class Traces {
    private static final int DIGITS = 16;

    private final CriterionResult result;
    private @Nullable String fingerprint;
    private @Nullable List<String> usedFields;

    Traces(CriterionResult result) {
        this.result = result;
    }

    /** Stable mark of criterion, outcome and places. */
    String fingerprint() {
        if (fingerprint == null) {
            fingerprint = Hash.of(marks()).substring(0, DIGITS);
        }
        return fingerprint;
    }

    /** JSON Pointers of the measurements that the numbers rest on, and of what is missing; sorted. */
    List<String> usedFields() {
        if (usedFields == null) {
            usedFields = List.copyOf(used());
        }
        return usedFields;
    }

    private String marks() {
        StringBuilder all = new StringBuilder(result.criterion().id())
                .append('|')
                .append(result.status())
                .append('|')
                .append(result.failed());
        for (PlaceResult p : result.places()) {
            all.append('|')
                    .append(p.place().pointer())
                    .append(' ')
                    .append(p.place().words())
                    .append(' ')
                    .append(p.status());
            for (Verdict v : p.verdicts()) {
                all.append(' ').append(v.ending()).append(':').append(v.reason());
            }
        }
        return all.toString();
    }

    private Set<String> used() {
        Set<String> used = new TreeSet<>(result.missing());
        for (PlaceResult p : result.places()) {
            CaseFact fact = p.fact();
            if (fact == null) {
                continue;
            }
            for (Need need : result.criterion().needs()) {
                if (need.of(fact) instanceof Measured m) {
                    m.sources().stream().filter(s -> s.startsWith("/")).forEach(used::add);
                }
            }
        }
        return used;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Traces t
                && marks().equals(t.marks())
                && usedFields().equals(t.usedFields());
    }

    @Override
    public int hashCode() {
        return marks().hashCode();
    }
}
