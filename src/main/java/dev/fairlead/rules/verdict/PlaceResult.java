package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.StandsAt;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.language.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a criterion ends at one place.
 *
 * @param fact what was looked at; null when the case yields no such fact at all
 * @param verdicts what the rules said that counts here, heaviest first
 * @param missing JSON Pointers of what is missing; empty unless not assessed
 */
public record PlaceResult(
        Place place, @Nullable CaseFact fact, Ending ending, List<Verdict> verdicts, List<String> missing) {
    public PlaceResult {
        verdicts = List.copyOf(verdicts);
        missing = List.copyOf(missing);
    }

    /** How a criterion ends where the case yields nothing that it could look at. */
    static PlaceResult absent(Criterion criterion) {
        String section = criterion.about().getAnnotation(StandsAt.class).value();
        return new PlaceResult(new Place(section, ""), null, Ending.NOT_ASSESSED, List.of(), List.of(section));
    }

    public Status status() {
        return ending.status();
    }
}
