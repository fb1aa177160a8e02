package dev.fairlead.rules.verdict;

import dev.fairlead.rules.catalogue.Criterion;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a case ends criterion by criterion, and no more: no verdicts, no places, no values. For audits of many cases.
 *
 * @param endings in catalogue order; null for criteria of stages that are not reached
 * @param missing for each criterion that is not assessed, JSON Pointers of what it waits for; empty for others
 * @param errors what went wrong on our side
 */
public record Endings(List<@Nullable Ending> endings, List<List<String>> missing, List<OwnError> errors) {
    /** What a judgement says of endings; {@code criteria} is the whole catalogue, in whose order results stand. */
    public static Endings of(Judgement judgement, List<Criterion> criteria) {
        List<@Nullable Ending> endings = new ArrayList<>(criteria.size());
        List<List<String>> missing = new ArrayList<>(criteria.size());
        int next = 0;
        for (Criterion c : criteria) {
            CriterionResult r =
                    next < judgement.results().size() ? judgement.results().get(next) : null;
            if (r == null || !r.criterion().id().equals(c.id())) {
                endings.add(null);
                missing.add(List.of());
            } else {
                next++;
                endings.add(Ending.of(r));
                missing.add(Ending.of(r) == Ending.NOT_ASSESSED ? r.missing() : List.of());
            }
        }
        return new Endings(endings, missing, judgement.errors());
    }
}
