package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
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
    private final List<Seen> seen = new ArrayList<>(2);

    Verdict(String criterion, CaseFact fact, Outcome outcome, String reason) {
        this.criterion = criterion;
        this.fact = fact;
        this.outcome = outcome;
        this.reason = reason;
    }

    /** Adds a value that was held against the threshold {@code limit} (full name). */
    public Verdict seen(String limit, Measured value) {
        seen.add(new Seen(limit, value));
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
        return List.copyOf(seen);
    }
}
