package dev.fairlead.web.page;

import dev.fairlead.report.html.Change;
import dev.fairlead.web.store.ChangeLog;
import java.util.List;

/** The last changes of a case in words, for reports. */
public final class LastChanges {
    /** So many a report tells of. */
    private static final int SHORT = 12;

    private LastChanges() {}

    /** The newest first. */
    public static List<Change> of(ChangeLog log) {
        return told(log.all(), SHORT);
    }

    /** The first of some entries, so many at the most. */
    static List<Change> told(List<ChangeLog.Entry> log, int most) {
        return log.stream().limit(most).map(LastChanges::told).toList();
    }

    private static Change told(ChangeLog.Entry e) {
        String what = e.field().isEmpty() ? "" : FactWords.words(e.field());
        return new Change(
                e.when().replace('T', ' '),
                e.who(),
                e.why().isEmpty() ? what : (what + " (" + e.why() + ")").strip(),
                e.old(),
                e.now());
    }
}
