package dev.fairlead.bench;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.Limits;
import dev.fairlead.rules.Outcome;
import dev.fairlead.rules.Status;
import java.util.ArrayList;
import java.util.List;

/**
 * The same criteria in plain Java, without an engine: what a person would write who knew them all beforehand. The
 * yardstick of benchmarks.
 */
public abstract class PlainTwin {
    /** One verdict with the values that it shows. */
    public record Said(Outcome outcome, String reason, List<Measured> seen, List<Limit> limits) {}

    /** How a criterion ends at one place. */
    public record At(CaseFact fact, Status status, List<Said> said, List<String> missing) {}

    /** Results by criterion, in catalogue order; null where no fact is of its type. */
    public final List<At>[] judge(List<CaseFact> facts) {
        @SuppressWarnings({"unchecked", "rawtypes"})
        List<At>[] results = new List[criteria()];
        for (CaseFact fact : facts) {
            judge(fact, results);
        }
        return results;
    }

    /** How many criteria there are. */
    protected abstract int criteria();

    /** Judges one fact by all criteria about its type. */
    protected abstract void judge(CaseFact fact, List<At>[] results);

    protected static Limit limit(Limits limits, String name) {
        return limits.of(name);
    }

    protected static List<Said> add(List<Said> all, Said said) {
        List<Said> more = all == null ? new ArrayList<>(2) : all;
        more.add(said);
        return more;
    }

    protected static void end(List<At>[] results, int criterion, CaseFact fact, List<Said> said, CaseValue... needs) {
        if (results[criterion] == null) {
            results[criterion] = new ArrayList<>(4);
        }
        results[criterion].add(
                said != null ? new At(fact, status(said.get(0).outcome()), said, List.of()) : undecided(fact, needs));
    }

    private static At undecided(CaseFact fact, CaseValue[] needs) {
        List<String> missing = new ArrayList<>();
        for (CaseValue k : needs) {
            for (String pointer : k.missing()) {
                if (!missing.contains(pointer)) {
                    missing.add(pointer);
                }
            }
        }
        return new At(fact, missing.isEmpty() ? Status.DOES_NOT_APPLY : Status.NOT_ASSESSED, List.of(), missing);
    }

    private static Status status(Outcome outcome) {
        return switch (outcome) {
            case PASS -> Status.PASS;
            case CAUTION, STOP -> Status.WARN;
            case DOES_NOT_APPLY -> Status.DOES_NOT_APPLY;
        };
    }
}
