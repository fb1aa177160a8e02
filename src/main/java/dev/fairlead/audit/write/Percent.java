package dev.fairlead.audit.write;

import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Rate;
import java.util.Locale;

/** Shares as people read them. */
public final class Percent {
    private Percent() {}

    /** Such as "12.5 %"; a dash of nothing. */
    public static String of(double share) {
        return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    /** Such as "92.0 % (88.1–94.9 %)"; a dash of nothing. */
    public static String clustered(ClusteredRate r) {
        return r.none()
                ? "–"
                : String.format(Locale.ROOT, "%.1f %% (%.1f–%.1f)", 100 * r.share(), 100 * r.low(), 100 * r.high());
    }

    /** The interval, such as "3.1–8.2 %". */
    public static String interval(Rate rate) {
        return rate.none() ? "–" : String.format(Locale.ROOT, "%.1f–%.1f %%", 100 * rate.low(), 100 * rate.high());
    }
}
