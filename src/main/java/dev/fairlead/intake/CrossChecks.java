package dev.fairlead.intake;

import dev.fairlead.model.Case;

/** Looks for facts that contradict each other in ways that a slip of the pen explains. */
final class CrossChecks {
    private CrossChecks() {}

    static void run(Case c, Problems problems) {
    }
}
