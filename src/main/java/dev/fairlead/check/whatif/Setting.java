package dev.fairlead.check.whatif;

import dev.fairlead.model.Case;
import java.util.List;

/**
 * Another setting of a variable of the plan.
 *
 * @param steps practical steps from the present setting, 1 or more
 */
record Setting(int steps, List<Change> changes) {
    Setting {
        changes = List.copyOf(changes);
    }

    Case in(Case c) {
        Case changed = c;
        for (Change change : changes) {
            changed = change.in(changed);
        }
        return changed;
    }

    boolean touches(Setting other) {
        return changes.stream()
                .anyMatch(a -> other.changes.stream().anyMatch(b -> a.pointer().equals(b.pointer())));
    }
}
