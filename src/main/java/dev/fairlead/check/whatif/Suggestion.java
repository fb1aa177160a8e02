package dev.fairlead.check.whatif;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;

/**
 * Other values of the plan, and what they would do.
 *
 * @param changes the values
 * @param follows readings that come out otherwise by them
 * @param estimates gauge readings that would be none any more
 * @param steps practical steps in all
 * @param clears criteria that warn now and would warn no more
 * @param worsens criteria that would end worse than now: a new or heavier warning, or a pass that could no longer be
 *     assessed
 * @param near criteria that pass and come within the error of their limit by it
 * @param costs numbers that a plan is weighed by, before and after, where they change
 * @param spare planned less needed advance of left and right, mm, negative where the side gets less than it needs; does
 *     not apply where a side gets no less than now
 */
public record Suggestion(
        List<Change> changes,
        List<Change> follows,
        List<GaugeEstimate> estimates,
        int steps,
        List<String> clears,
        List<String> worsens,
        List<String> near,
        List<Difference.NumberChange> costs,
        List<Measured> spare) {
    public Suggestion {
        changes = List.copyOf(changes);
        estimates = List.copyOf(estimates);
        clears = List.copyOf(clears);
        follows = List.copyOf(follows);
        worsens = List.copyOf(worsens);
        near = List.copyOf(near);
        costs = List.copyOf(costs);
        spare = List.copyOf(spare);
    }

    /** The case with these values, and estimates in place of readings that belong to others. */
    public Case in(Case c) {
        Case changed = c;
        for (Change change : changes) {
            changed = change.in(changed);
        }
        for (Change change : follows) {
            changed = change.in(changed);
        }
        return GaugeEstimate.in(changed, estimates);
    }
}
