package dev.fairlead.check.whatif;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;

/**
 * Other values of the plan, and what they would do.
 *
 * @param changes the values
 * @param estimates gauge readings that would be none any more
 * @param steps practical steps in all
 * @param clears criteria that warn now and would warn no more
 * @param worsens criteria that would end worse than now: a new or heavier warning, or a pass that could no longer be
 *     assessed
 * @param spare planned less needed advance of left and right, mm, negative where the side gets less than it needs; does
 *     not apply where a side gets no less than now
 */
public record Suggestion(
        List<Change> changes,
        List<GaugeEstimate> estimates,
        int steps,
        List<String> clears,
        List<String> worsens,
        List<Measured> spare) {
    public Suggestion {
        changes = List.copyOf(changes);
        estimates = List.copyOf(estimates);
        clears = List.copyOf(clears);
        worsens = List.copyOf(worsens);
        spare = List.copyOf(spare);
    }

    /** The case with these values, and estimates in place of readings that belong to others. */
    public Case in(Case c) {
        Case changed = c;
        for (Change change : changes) {
            changed = change.in(changed);
        }
        return GaugeEstimate.in(changed, estimates);
    }
}
