package dev.fairlead.audit.run;

import dev.fairlead.findings.Reach;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.util.Optional;

/** Where a case stands in time. */
final class Timeline {
    private Timeline() {}

    /** The last day of which the case tells; empty when it names none. */
    static String recorded(Case c) {
        return Reach.of(c, Optional.empty(), Optional.empty())
                .day()
                .map(Object::toString)
                .orElse("");
    }

    /** How far treatment is. */
    static CaseRow.Course course(Case c) {
        if (c.holding().debonded().value().isPresent()) {
            return CaseRow.Course.CLOSED;
        }
        if (c.holding().cemented().value().isPresent()) {
            return CaseRow.Course.HOLDING;
        }
        Reach reach = Reach.of(c, Optional.empty(), Optional.empty());
        return reach.judged().hasReached(Stage.INSERTION) ? CaseRow.Course.WIRE_IN : CaseRow.Course.BEFORE_WIRE;
    }
}
