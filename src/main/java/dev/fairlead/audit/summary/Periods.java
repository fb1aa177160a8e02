package dev.fairlead.audit.summary;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Months, or quarters where there would be too many months to see anything. */
final class Periods {
    private static final int MOST_MONTHS = 18;

    private Periods() {}

    /**
     * Groups by month or quarter in order of time, with periods of no case in between left out; cases without a day are
     * left out.
     */
    static List<Group> of(Map<String, Group> months, int criteria) {
        TreeMap<String, Group> dated = new TreeMap<>(months);
        dated.remove("");
        dated.remove(Tally.OTHERS);
        if (dated.isEmpty()) {
            return List.of();
        }
        long span = YearMonth.parse(dated.firstKey()).until(YearMonth.parse(dated.lastKey()), ChronoUnit.MONTHS);
        if (span < MOST_MONTHS) {
            return List.copyOf(dated.values());
        }
        Map<String, Group> quarters = new TreeMap<>();
        dated.forEach((month, g) -> {
            String quarter = month.substring(0, 4) + " Q" + ((Integer.parseInt(month.substring(5)) + 2) / 3);
            quarters.put(
                    quarter,
                    quarters.getOrDefault(quarter, Group.of(quarter, criteria)).with(g));
        });
        return new ArrayList<>(quarters.values());
    }
}
