package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.Contacts;
import dev.fairlead.model.Holding;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;
import dev.fairlead.model.VisitSide;
import dev.fairlead.model.shape.Draft;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Visits and end of an invented child in whom all went as planned. */
final class BaselineCourse {
    /**
     * Forward travel of a fold of 1 mm bends and 3 mm legs, mm, and the gap of its legs that gives it, mm (plane
     * geometry of two equal bends).
     */
    private static final double[][] GAP = {
        {0, 0},
        {0.5, 0.612},
        {1, 1.067},
        {1.5, 1.433},
        {2, 1.74},
        {2.5, 2.0},
        {3, 2.222},
        {3.5, 2.41},
        {4, 2.57},
        {4.5, 2.703},
        {5, 2.81}
    };

    private final InventedChild s;
    private final Draws d;

    BaselineCourse(InventedChild sketch, Draws draws) {
        s = sketch;
        d = draws;
    }

    /** Visits so far: all of the plan at the end, at least one while it runs. */
    List<Visit> visits() {
        int count = s.stage() == Stage.HOLDING ? s.steps() : d.whole(1, s.steps());
        List<Visit> visits = new ArrayList<>();
        LocalDate day = s.start();
        double moved = 0;
        for (int i = 0; i < count; i++) {
            String at = "/visits/" + i;
            boolean last = i == count - 1;
            visits.add(Draft.of(Visit.class, at)
                    .set("date", day)
                    .set("activated", "both")
                    .set("left", side(at, Side.LEFT, i, moved))
                    .set("right", side(at, Side.RIGHT, i, moved))
                    .set("gauge", d.whole(165, 215))
                    .set("incisorAdvance", tenth(moved))
                    .set("newRecession", false)
                    .set("mobility", d.one("grade-0", "grade-i"))
                    .set("blanching", false)
                    .set("lastingPain", false)
                    .set("resorption", false)
                    .set("inclinationRechecked", last)
                    .set("frontOffLevel", 0.2)
                    .set("plaque", 15)
                    .set("newWhiteSpots", false)
                    .set("rootFilmDecided", last)
                    .make());
            day = day.plusDays(d.whole(29, 34));
            moved += s.standOff() * d.uniform(0.88, 0.98);
        }
        return visits;
    }

    private VisitSide side(String visit, Side side, int index, double moved) {
        double gap = gap((index + 1) * s.standOff()) - gap(index * s.standOff());
        return Draft.of(VisitSide.class, visit + "/" + side.word())
                .set("gapOpened", tenth(gap))
                .set("standOff", s.standOff())
                .set("legsOutOfParallel", d.whole(0, 3))
                .set("space", tenth(s.available(side) + InventedChild.GAIN * moved))
                .set("molarDistal", d.tenth(0, 0.4))
                .make();
    }

    /** Gap of the legs, mm, that moves the front forward by so much, mm. */
    static double gap(double forward) {
        for (int i = 1; i < GAP.length; i++) {
            if (forward <= GAP[i][0]) {
                double share = (forward - GAP[i - 1][0]) / (GAP[i][0] - GAP[i - 1][0]);
                return GAP[i - 1][1] + share * (GAP[i][1] - GAP[i - 1][1]);
            }
        }
        return GAP[GAP.length - 1][1];
    }

    Holding holding(List<Visit> visits, Contacts contacts, double inclinationBefore, double overjetBefore) {
        LocalDate impression = visits.get(visits.size() - 1).date().get().plusDays(d.whole(26, 32));
        LocalDate cemented = impression.plusDays(d.whole(5, 9));
        // enough for the table of Moyers 1973 (0.6 incisor sum + 8.4 at 75 %) as well as for Tanaka & Johnston
        double need = Math.max(s.required(), 0.6 * s.teeth().incisors() + 8.4);
        return Draft.of(Holding.class, "/holding")
                .set("impression", impression)
                .set("cemented", cemented)
                .set("debonded", cemented.plusDays(d.whole(3, 9)))
                .set("spaceLeft", Math.ceil(10 * (need + d.uniform(0.15, 0.3))) / 10)
                .set("spaceRight", Math.ceil(10 * (need + d.uniform(0.15, 0.3))) / 10)
                .set("contacts", contacts)
                .set("incisorMandibular", tenth(inclinationBefore + s.advance() * d.uniform(2.2, 2.9)))
                .set("overjet", tenth(overjetBefore - s.advance()))
                .set("touchesCingula", true)
                .set("passive", true)
                .set("tissueClearance", d.tenth(1.1, 1.4))
                .set("secondMolarRecall", d.whole(3, 5))
                .set("recall", d.whole(3, 5))
                .set("removalPoint", true)
                .make();
    }

    /** The day on which the case is judged: a few days after the last thing that happened. */
    LocalDate today(List<Visit> visits, @Nullable Holding holding) {
        return switch (s.stage()) {
            case RECORDS, INDICATION, READINESS, BENCH -> s.start().minusDays(2);
            case INSERTION -> s.start();
            case ACTIVATION -> visits.get(visits.size() - 1).date().get();
            case HOLDING -> Objects.requireNonNull(holding).debonded().get().plusDays(d.whole(1, 6));
        };
    }
}
