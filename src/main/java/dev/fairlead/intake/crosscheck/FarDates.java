package dev.fairlead.intake.crosscheck;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;

/** Dates that are written well and can hardly be meant: years away from the rest of the case, or a waiver for life. */
final class FarDates {
    /** From the first records of a child in mixed dentition to the end of holding, with room to spare. */
    private static final long LONGEST_CARE = 12;

    private static final long LONGEST_WAIVER = 3;

    private FarDates() {}

    static void check(Case c, CrossChecks to) {
        Map<String, Fact<LocalDate>> dates = new LinkedHashMap<>();
        dates.put("/date", c.date());
        dates.put("/films/models", c.films().models());
        dates.put("/films/headFilm", c.films().headFilm());
        dates.put("/films/panoramic", c.films().panoramic());
        dates.put("/insertion/date", c.insertion().date());
        for (int i = 0; i < c.visits().size(); i++) {
            dates.put("/visits/" + i + "/date", c.visits().get(i).date());
        }
        dates.put("/holding/impression", c.holding().impression());
        dates.put("/holding/cemented", c.holding().cemented());
        dates.put("/holding/debonded", c.holding().debonded());
        dates.values().removeIf(d -> !d.known());
        // the date in the middle is right if most are
        dates.values().stream()
                .map(Fact::get)
                .sorted()
                .skip(dates.size() / 2)
                .findFirst()
                .ifPresent(middle -> far(dates, middle, to));
        for (int i = 0; i < c.waivers().size(); i++) {
            Fact<LocalDate> from = c.waivers().get(i).date();
            Fact<LocalDate> until = c.waivers().get(i).expires();
            if (from.known() && until.known() && ChronoUnit.YEARS.between(from.get(), until.get()) >= LONGEST_WAIVER) {
                to.doubt(
                        "/waivers/" + i + "/expires",
                        "a day within " + LONGEST_WAIVER + " years of the waiver, so that it is looked at again",
                        until.get().toString(),
                        "a slip in the year",
                        "write the day on which it is to be looked at again");
            }
        }
    }

    private static void far(Map<String, Fact<LocalDate>> dates, LocalDate middle, CrossChecks to) {
        dates.forEach((pointer, date) -> {
            if (Math.abs(ChronoUnit.YEARS.between(middle, date.get())) >= LONGEST_CARE) {
                to.doubt(
                        pointer,
                        "a day within the years of one child's care, about " + middle.getYear(),
                        date.get().toString(),
                        "a slip in the year",
                        "look at the date again");
            }
        });
    }
}
