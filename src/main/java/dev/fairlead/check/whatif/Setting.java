package dev.fairlead.check.whatif;

import dev.fairlead.model.Case;
import java.util.List;

/**
 * Another setting of a variable of the plan.
 *
 * @param steps practical steps from the present setting, 1 or more
 * @param changes what a hand can set
 * @param follows readings that come out otherwise by it
 */
record Setting(int steps, List<Change> changes, List<Change> follows) {
    Setting {
        changes = List.copyOf(changes);
        follows = List.copyOf(follows);
    }

    Setting(int steps, List<Change> changes) {
        this(steps, changes, List.of());
    }

    Case in(Case c) {
        Case changed = c;
        for (Change change : changes) {
            changed = change.in(changed);
        }
        for (Change change : follows) {
            changed = change.in(changed);
        }
        return changed;
    }

    boolean touches(Setting other) {
        return changes.stream()
                .anyMatch(a -> other.changes.stream().anyMatch(b -> a.pointer().equals(b.pointer())));
    }
}
