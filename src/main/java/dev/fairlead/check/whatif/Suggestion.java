package dev.fairlead.check.whatif;

import dev.fairlead.model.Case;
import java.util.List;

/**
 * Other values of the plan, and what they would do.
 *
 * @param changes the values
 * @param steps practical steps in all
 * @param clears criteria that warn now and would warn no more
 * @param worsens criteria that would end worse than now: a new or heavier warning, or a pass that could no longer be assessed
 */
public record Suggestion(List<Change> changes, int steps, List<String> clears, List<String> worsens) {
    public Suggestion {
        changes = List.copyOf(changes);
        clears = List.copyOf(clears);
        worsens = List.copyOf(worsens);
    }

    /** The case with these values. */
    public Case in(Case c) {
        Case changed = c;
        for (Change change : changes) {
            changed = change.in(changed);
        }
        return changed;
    }
}
