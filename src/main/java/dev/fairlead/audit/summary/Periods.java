package dev.fairlead.audit.summary;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Months, or quarters where there would be too many months to see anything. */
final class Periods {
    private static final int MOST_MONTHS = 18;
    /** A slip of a century in one date must not make hundreds of empty periods. */
    private static final int MOST_PERIODS = 60;
    /** Days by which the first and last case may miss the ends of a period that is still whole. */
    private static final int MARGIN = 10;

    private Periods() {}

    /**
     * Groups by month or quarter in order of time; periods without a case are told as empty, the first and last as
     * partial where their cases do not reach the period's end. Cases without a day are left out.
     */
    static List<Group> of(
            Map<String, Group> months, int criteria, @Nullable LocalDate first, @Nullable LocalDate last) {
        TreeMap<String, Group> dated = new TreeMap<>(months);
        dated.remove("");
        dated.remove(Tally.OTHERS);
        if (dated.isEmpty() || first == null || last == null) {
            return List.of();
        }
        YearMonth from = YearMonth.parse(dated.firstKey());
        YearMonth to = YearMonth.parse(dated.lastKey());
        int step = from.until(to, ChronoUnit.MONTHS) < MOST_MONTHS ? 1 : 3;
        List<Group> all = new ArrayList<>();
        YearMonth start = step == 1 ? from : from.withMonth((from.getMonthValue() - 1) / 3 * 3 + 1);
        for (YearMonth m = start; !m.isAfter(to); m = m.plusMonths(step)) {
            String name = step == 1 ? m.toString() : m.getYear() + " Q" + (m.getMonthValue() + 2) / 3;
            Group period = new Group(name, criteria);
            for (int i = 0; i < step; i++) {
                Group month = dated.get(m.plusMonths(i).toString());
                if (month != null) {
                    period.with(month);
                }
            }
            LocalDate end = m.plusMonths(step - 1L).atEndOfMonth();
            period.note(
                    period.cases() == 0
                            ? "empty"
                            : first.minusDays(MARGIN).isAfter(m.atDay(1))
                                            || last.plusDays(MARGIN).isBefore(end)
                                    ? "partial"
                                    : "");
            all.add(period);
        }
        return all.size() <= MOST_PERIODS
                ? all
                : all.stream().filter(g -> g.cases() > 0).toList();
    }
}
