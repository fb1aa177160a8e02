package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import java.util.List;

/**
 * How a criterion ends at one place.
 *
 * @param fact what was looked at; null when the case yields no such fact at all
 * @param verdicts what the rules said that counts here, heaviest first
 * @param missing JSON Pointers of what is missing; empty unless not assessed
 */
public record PlaceResult(Place place, CaseFact fact, Status status, List<Verdict> verdicts, List<String> missing) {
    public PlaceResult {
        verdicts = List.copyOf(verdicts);
        missing = List.copyOf(missing);
    }

    /** True when a verdict of weight stop stands here. */
    public boolean stop() {
        for (Verdict v : verdicts) {
            if (v.outcome() == Outcome.STOP) {
                return true;
            }
        }
        return false;
    }
}
