package dev.fairlead.web.page;

import dev.fairlead.model.Case;
import dev.fairlead.model.Visit;
import dev.fairlead.rules.catalogue.Catalogue;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * When a child is next due: from the day that the plan names, or the shortest interval allows where it names none,
 * until the longest interval that the rules let pass.
 *
 * @param what the child is due for: {@code visit} or {@code recall}
 * @param from first day on which it is due
 * @param latest last day before it is overdue
 * @param today the day of whoever looks
 */
public record Due(String what, LocalDate from, LocalDate latest, LocalDate today) {
    private static final double DAYS_OF_A_MONTH = 365.25 / 12;

    static Optional<Due> of(Case c, Catalogue rules, LocalDate today) {
        Optional<LocalDate> last = c.visits().stream()
                .map(Visit::date)
                .filter(d -> d.known())
                .map(d -> d.get())
                .max(LocalDate::compareTo);
        if (c.holding().cemented().known()) {
            LocalDate cemented = c.holding().cemented().get();
            LocalDate seen = last.filter(cemented::isBefore).orElse(cemented);
            double most = limit(rules, "recall-planned.most");
            double planned = c.holding().recall().known() ? c.holding().recall().value() : most;
            return Optional.of(new Due(
                    "recall",
                    after(seen, planned * DAYS_OF_A_MONTH),
                    after(seen, Math.max(planned, most) * DAYS_OF_A_MONTH),
                    today));
        }
        return last.or(() -> c.insertion().date().value()).map(seen -> {
            double longest = limit(rules, "visit-interval.longest");
            double planned = c.plan().intervalWeeks().known()
                    ? c.plan().intervalWeeks().value()
                    : limit(rules, "visit-interval.least");
            return new Due("visit", after(seen, 7 * planned), after(seen, 7 * Math.max(planned, longest)), today);
        });
    }

    private static LocalDate after(LocalDate day, double days) {
        return day.plusDays(Math.round(days));
    }

    private static double limit(Catalogue rules, String name) {
        return rules.threshold(name).value();
    }

    /** Past the longest interval. */
    public boolean overdue() {
        return today.isAfter(latest);
    }

    /** In words for a line. */
    public String words() {
        if (overdue()) {
            return what + " " + days(latest, today) + " overdue";
        }
        return today.isBefore(from)
                ? what + " due in " + days(today, from)
                : what + " due, at the latest " + (today.equals(latest) ? "today" : "in " + days(today, latest));
    }

    private static String days(LocalDate a, LocalDate b) {
        long n = ChronoUnit.DAYS.between(a, b);
        return n + (n == 1 ? " day" : " days");
    }
}
