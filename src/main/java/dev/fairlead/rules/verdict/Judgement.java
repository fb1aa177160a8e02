package dev.fairlead.rules.verdict;

import java.util.List;

/**
 * All that a rulebase says of one case.
 *
 * @param results one for every criterion that was asked for, in catalogue order
 * @param errors what went wrong on our side; the criteria named there were not judged
 */
public record Judgement(List<CriterionResult> results, List<OwnError> errors) {
    public Judgement {
        results = List.copyOf(results);
        errors = List.copyOf(errors);
    }

    /** The result of a criterion; throws when it was not asked for. */
    public CriterionResult of(String criterion) {
        return results.stream()
                .filter(r -> r.criterion().id().equals(criterion))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no result for " + criterion));
    }
}
