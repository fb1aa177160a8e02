package dev.fairlead.intake.crosscheck;

import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Visit;
import java.time.LocalDate;

/**
 * Dates that cannot follow each other as they stand. The order of holding arch and removal of brackets is left to its
 * criterion.
 */
final class DateOrder {
    private static final String LOOK = "look at both dates again";

    private DateOrder() {}

    static void check(Case c, CrossChecks to) {
        visits(c, to);
        for (int i = 0; i < c.waivers().size(); i++) {
            var w = c.waivers().get(i);
            if (before(w.expires(), w.date())) {
                to.error(
                        "/waivers/" + i + "/expires",
                        "a day after the waiver's own, " + w.date().get(),
                        w.expires().get().toString(),
                        "the two dates swapped",
                        LOOK);
            }
            past("/waivers/" + i + "/date", w.date(), c.date(), to);
        }
        past("/films/models", c.films().models(), c.date(), to);
        past("/films/headFilm", c.films().headFilm(), c.date(), to);
        past("/films/panoramic", c.films().panoramic(), c.date(), to);
        past("/insertion/date", c.insertion().date(), c.date(), to);
        past("/holding/impression", c.holding().impression(), c.date(), to);
        past("/holding/cemented", c.holding().cemented(), c.date(), to);
        past("/holding/debonded", c.holding().debonded(), c.date(), to);
        order(
                "/insertion/date",
                c.insertion().date(),
                "the day of the study models",
                c.films().models(),
                to);
        order(
                "/holding/cemented",
                c.holding().cemented(),
                "the day of the impression",
                c.holding().impression(),
                to);
        order(
                "/holding/impression",
                c.holding().impression(),
                "the day of insertion",
                c.insertion().date(),
                to);
        order(
                "/holding/debonded",
                c.holding().debonded(),
                "the day of insertion",
                c.insertion().date(),
                to);
        Fact<LocalDate> last = lastOpening(c);
        order("/holding/cemented", c.holding().cemented(), "the last activation", last, to);
        order("/holding/debonded", c.holding().debonded(), "the last activation", last, to);
    }

    /** The day of the last visit that opened a fold. */
    private static Fact<LocalDate> lastOpening(Case c) {
        Fact<LocalDate> last = Fact.notApplicable();
        for (Visit v : c.visits()) {
            last = v.activated().isOther(Sides.NONE) && v.date().known() ? v.date() : last;
        }
        return last;
    }

    private static void visits(Case c, CrossChecks to) {
        Fact<LocalDate> last = c.insertion().date();
        boolean first = true;
        for (int i = 0; i < c.visits().size(); i++) {
            Fact<LocalDate> date = c.visits().get(i).date();
            String pointer = "/visits/" + i + "/date";
            past(pointer, date, c.date(), to);
            if (first) {
                order(pointer, date, "the day of insertion", last, to);
            } else if (before(date, last)) {
                to.error(
                        pointer,
                        "a day after the visit before, " + last.get(),
                        date.get().toString(),
                        "a slip in the date, or visits out of order",
                        "put visits in the order of their dates");
            } else if (date.equals(last)) {
                to.doubt(
                        pointer,
                        "a day after the visit before, " + last.get(),
                        "the same day",
                        "one visit entered twice",
                        LOOK);
            }
            if (date.known()) {
                last = date;
                first = false;
            }
        }
    }

    private static boolean before(Fact<LocalDate> a, Fact<LocalDate> b) {
        return a.known() && b.known() && a.get().isBefore(b.get());
    }

    private static void past(String pointer, Fact<LocalDate> date, Fact<LocalDate> today, CrossChecks to) {
        if (before(today, date)) {
            to.doubt(
                    pointer,
                    "a day not after the day for which the case is judged, " + today.get(),
                    date.get().toString(),
                    "a slip in the year",
                    LOOK);
        }
    }

    private static void order(
            String pointer, Fact<LocalDate> date, String earlierWords, Fact<LocalDate> earlier, CrossChecks to) {
        if (before(date, earlier)) {
            to.doubt(
                    pointer,
                    "a day not before " + earlierWords + ", " + earlier.get(),
                    date.get().toString(),
                    "a slip in one of the dates",
                    LOOK);
        }
    }
}
