package dev.fairlead.rules.verdict;

import dev.fairlead.model.Pointers;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.language.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * How a criterion ends over all places: a warning outweighs what is not assessed, that outweighs a pass, and a pass
 * what does not apply.
 *
 * @param places one result a place, in the order of their pointers
 * @param failed true when the criterion could not be judged because of an error of our own
 */
public record CriterionResult(Criterion criterion, Status status, List<PlaceResult> places, boolean failed) {
    public CriterionResult {
        places = List.copyOf(places);
    }

    /** True when it warns with weight stop. */
    public boolean stop() {
        for (PlaceResult p : places) {
            if (p.stop()) {
                return true;
            }
        }
        return false;
    }

    /** Keys of the reasons of all warnings, each once, in the order of the criterion's texts. */
    public List<String> reasons() {
        List<String> given = places.stream()
                .filter(p -> p.status() == Status.WARN)
                .flatMap(p -> p.verdicts().stream())
                .map(Verdict::reason)
                .toList();
        List<String> ordered = new ArrayList<>(criterion.reasons().keySet());
        ordered.retainAll(given);
        return ordered;
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
