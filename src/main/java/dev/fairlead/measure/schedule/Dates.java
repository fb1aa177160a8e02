package dev.fairlead.measure.schedule;

import dev.fairlead.measure.working.CalendarMonths;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.BiFunction;

/** Spans between two days of a case, of which either may not be known. */
public final class Dates {
    private Dates() {}

    /** Days from one to the other; negative when the other is earlier. */
    public static Measured days(Fact<LocalDate> from, Fact<LocalDate> to) {
        return span(from, to, (a, b) -> Measured.exact((double) ChronoUnit.DAYS.between(a, b), Unit.DAY));
    }

    /** Weeks from one to the other; negative when the other is earlier. */
    static Measured weeks(Fact<LocalDate> from, Fact<LocalDate> to) {
        return span(
                from,
                to,
                (a, b) -> Measured.exact(Unit.DAY.to(Unit.WEEK, (double) ChronoUnit.DAYS.between(a, b)), Unit.WEEK));
    }

    /** Calendar months from one to the other; negative when the other is earlier. */
    public static Measured months(Fact<LocalDate> from, Fact<LocalDate> to) {
        return span(from, to, CalendarMonths::between);
    }

    /** The earlier of two days; of one that is not known nothing is expected. */
    public static Fact<LocalDate> earlier(Fact<LocalDate> end, Fact<LocalDate> day) {
        return end.known() && !(day.known() && day.get().isBefore(end.get())) ? end : day;
    }

    private static Measured span(
            Fact<LocalDate> from, Fact<LocalDate> to, BiFunction<LocalDate, LocalDate, Measured> between) {
        if (from.known() && to.known()) {
            return between.apply(from.get(), to.get());
        }
        return from.applies() && to.applies()
                ? Measured.unknown(Pointers.union(from.missing(), to.missing()))
                : Measured.notApplicable();
    }
}
