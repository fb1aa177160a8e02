package dev.fairlead.rules.language;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Ending;
import java.util.ArrayList;
import java.util.List;

/**
 * What one rule says of one criterion at one place; never a sentence.
 *
 * @param reason key of the reason in the criterion's texts; empty for a pass
 * @param seen the values that it looked at; grows while the rule speaks
 */
public record Verdict(String criterion, CaseFact fact, Ending ending, String reason, List<Seen> seen) {
    /** A value seen, and the full name of the threshold that it was held against. */
    public record Seen(String limit, Measured value) {}

    public Verdict(String criterion, CaseFact fact, Ending ending, String reason) {
        this(criterion, fact, ending, reason, new ArrayList<>(2));
    }

    /** Adds a value that was held against the threshold {@code limit} (full name). */
    public Verdict seen(String limit, Measured value) {
        seen.add(new Seen(limit, value));
        return this;
    }
}
