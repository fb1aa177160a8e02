package dev.fairlead.rules.verdict;

import dev.fairlead.model.Pointers;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Status;
import java.util.List;

/**
 * How a criterion ends over all places: a warning outweighs what is not assessed, that outweighs a pass, and a pass
 * what does not apply.
 *
 * @param places one result a place, in the order of their pointers; none where it failed
 */
public record CriterionResult(Criterion criterion, Ending ending, List<PlaceResult> places) {
    public CriterionResult {
        places = List.copyOf(places);
    }

    public Status status() {
        return ending.status();
    }

    /** True when it could not be judged because of an error of our own. */
    public boolean failed() {
        return ending == Ending.FAILED;
    }

    /** Keys of the reasons of all warnings, each once, in the order of the criterion's texts. */
    public List<String> reasons() {
        return criterion.reasons().keySet().stream()
                .filter(reason -> places.stream()
                        .filter(p -> p.ending().warns())
                        .flatMap(p -> p.verdicts().stream())
                        .anyMatch(v -> v.reason().equals(reason)))
                .toList();
    }

    /** JSON Pointers of all that is missing, each once. */
    public List<String> missing() {
        List<String> all = List.of();
        for (PlaceResult p : places) {
            all = Pointers.union(all, p.missing());
        }
        return all;
    }
}
