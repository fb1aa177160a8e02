package dev.fairlead.measure.working;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Months as a calendar counts them: from the 15th of one month to the 15th of the sixth after it are six months. */
public final class CalendarMonths {
    private CalendarMonths() {}

    /** Whole months and the share of the month that has begun; negative when {@code to} is the earlier day. */
    public static Measured between(LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            return between(to, from).times(-1);
        }
        long whole = ChronoUnit.MONTHS.between(from, to);
        LocalDate reached = from.plusMonths(whole);
        double days = ChronoUnit.DAYS.between(reached, to);
        double month = ChronoUnit.DAYS.between(reached, from.plusMonths(whole + 1));
        return Measured.exact(whole + days / month, Unit.MONTH);
    }
}
