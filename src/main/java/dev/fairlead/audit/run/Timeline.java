package dev.fairlead.audit.run;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Where a case stands in time. */
final class Timeline {
    private Timeline() {}

    /** The last day of which the case tells; empty when it names none. */
    static String recorded(Case c) {
        List<Fact<LocalDate>> days = new ArrayList<>();
        days.add(c.date());
        for (Visit v : c.visits()) {
            days.add(v.date());
        }
        days.add(c.holding().impression());
        days.add(c.holding().cemented());
        days.add(c.holding().debonded());
        LocalDate last = null;
        for (Fact<LocalDate> day : days) {
            LocalDate d = day.value().orElse(null);
            last = d != null && (last == null || d.isAfter(last)) ? d : last;
        }
        return last == null ? "" : last.toString();
    }

    /** How far treatment is. */
    static CaseRow.Course course(Case c) {
        if (c.holding().debonded().value().isPresent()) {
            return CaseRow.Course.CLOSED;
        }
        if (c.holding().cemented().value().isPresent()) {
            return CaseRow.Course.HOLDING;
        }
        return c.stage().hasReached(Stage.INSERTION) || !c.visits().isEmpty()
                ? CaseRow.Course.WIRE_IN
                : CaseRow.Course.BEFORE_WIRE;
    }
}
