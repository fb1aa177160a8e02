package dev.fairlead.rules.language;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Outcome;
import java.util.ArrayList;
import java.util.List;

/** What one rule says of one criterion at one place, with the values it looked at; never a sentence. */
public final class Verdict {
    /** A value seen, and the full name of the threshold that it was held against. */
    public record Seen(String limit, Measured value) {}

    private final String criterion;
    private final CaseFact fact;
    private final Outcome outcome;
    private final String reason;
    private List<Seen> seen = List.of();

    public Verdict(String criterion, CaseFact fact, Outcome outcome, String reason) {
        this.criterion = criterion;
        this.fact = fact;
        this.outcome = outcome;
        this.reason = reason;
    }

    /** Adds a value that was held against the threshold {@code limit} (full name). */
    public Verdict seen(String limit, Measured value) {
        Seen more = new Seen(limit, value);
        switch (seen.size()) {
            case 0 -> seen = List.of(more);
            case 1 -> seen = List.of(seen.get(0), more);
            default -> {
                List<Seen> all = new ArrayList<>(seen);
                all.add(more);
                seen = List.copyOf(all);
            }
        }
        return this;
    }

    public String criterion() {
        return criterion;
    }

    public CaseFact fact() {
        return fact;
    }

    public Outcome outcome() {
        return outcome;
    }

    /** Key of the reason in the criterion's texts; empty for a pass. */
    public String reason() {
        return reason;
    }

    public List<Seen> seen() {
        return seen;
    }
}
