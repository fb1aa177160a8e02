package dev.fairlead.web.page;

import dev.fairlead.findings.Words;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.web.store.ChangeLog;
import java.util.List;

/** The last changes of a case in words, for reports. */
public final class LastChanges {
    /** So many a report tells of. */
    private static final int SHORT = 12;

    private LastChanges() {}

    /** The newest first. */
    public static List<LoggedChange> of(ChangeLog log) {
        return told(log.all(), SHORT);
    }

    /** The first of some entries, so many at the most. */
    static List<LoggedChange> told(List<ChangeLog.Entry> log, int most) {
        return log.stream().limit(most).map(LastChanges::told).toList();
    }

    private static LoggedChange told(ChangeLog.Entry e) {
        String what = e.field().isEmpty() ? "" : Words.of(e.field());
        return new LoggedChange(
                e.when().replace('T', ' '),
                e.who(),
                e.why().isEmpty() ? what : (what + " (" + e.why() + ")").strip(),
                e.old(),
                e.now());
    }
}
