package dev.fairlead.rules;

import java.util.List;

/**
 * How a case ends criterion by criterion, and no more: no verdicts, no places, no values. For audits of many cases.
 *
 * @param endings in catalogue order; null for criteria of stages that are not reached
 * @param missing for each criterion that is not assessed, JSON Pointers of what it waits for; empty for others
 * @param errors what went wrong on our side
 */
public record Endings(List<Ending> endings, List<List<String>> missing, List<OwnError> errors) {
    /** What a judgement says of endings; {@code criteria} is the whole catalogue. */
    static Endings of(Judgement judgement, List<Criterion> criteria) {
        Ending[] endings = new Ending[criteria.size()];
        List<List<String>> missing = new java.util.ArrayList<>(java.util.Collections.nCopies(endings.length, List.of()));
        for (CriterionResult r : judgement.results()) {
            int i = criteria.indexOf(r.criterion());
            endings[i] = Ending.of(r);
            if (endings[i] == Ending.NOT_ASSESSED) {
                missing.set(i, r.missing());
            }
        }
        return new Endings(java.util.Arrays.asList(endings), missing, judgement.errors());
    }
}
