package dev.fairlead.audit.run;

import dev.fairlead.findings.Reach;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;

/** Where a case stands in time. */
final class Timeline {
    private Timeline() {}

    /** The last day of which the case tells; empty when it names none. */
    static String recorded(Reach own) {
        return own.day().map(Object::toString).orElse("");
    }

    /** How far treatment is. */
    static CaseRow.Course course(Case c, Reach own) {
        if (c.holding().debonded().value().isPresent()) {
            return CaseRow.Course.CLOSED;
        }
        if (c.holding().cemented().value().isPresent()) {
            return CaseRow.Course.HOLDING;
        }
        return own.judged().hasReached(Stage.INSERTION) ? CaseRow.Course.WIRE_IN : CaseRow.Course.BEFORE_WIRE;
    }
}
