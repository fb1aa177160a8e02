package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.model.Stage;

/**
 * How one criterion ended over all cases.
 *
 * @param waived warnings that a waiver answers for; they are counted as warnings too
 * @param failed could not be judged because of an error of our own
 */
public record CriterionCount(
        String id,
        String title,
        Stage stage,
        long stop,
        long caution,
        long waived,
        long notAssessed,
        long pass,
        long doesNotApply,
        long failed) {
    public long warn() {
        return stop + caution;
    }

    /** Judged, to pass or to warn. */
    public long judged() {
        return warn() + pass;
    }

    /** Warnings among what was judged. */
    public Rate warnRate() {
        return new Rate(warn(), judged());
    }

    /** Not assessed among where it applies. */
    public Rate openRate() {
        return new Rate(notAssessed, judged() + notAssessed);
    }
}
