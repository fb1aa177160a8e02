package dev.fairlead.measure.schedule;

import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Side;
import dev.fairlead.model.shape.Draft;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How many visits the plan still takes, when it is done, and whether that is before leeway is lost.
 *
 * @param sides left and right
 * @param routes both ways of activating, where enough is known
 * @param pattern the way that the plan names
 * @param shedding outlook of the three primary teeth, left then right
 * @param fit whether the planned way is done in time
 * @param gone probability that a second primary molar is shed before the expected end; empty while not known
 * @param missing JSON Pointers of what would tell more
 */
public record Forecast(
        List<SideForecast> sides,
        List<Route> routes,
        Fact<Pattern> pattern,
        List<Shedding> shedding,
        Fit fit,
        Optional<Double> gone,
        List<String> missing) {
    public Forecast {
        sides = List.copyOf(sides);
        routes = List.copyOf(routes);
        shedding = List.copyOf(shedding);
        missing = List.copyOf(missing);
    }

    /** Forecasts a case for {@code day}. */
    public static Forecast of(Case c, SpaceResult space, Fact<LocalDate> day, Clinic clinic, Workbook book) {
        List<Shedding> shedding = new ArrayList<>();
        for (Side side : Side.values()) {
            for (PrimaryTooth t : PrimaryTooth.values()) {
                shedding.add(Shedding.of(c, t, side, day));
            }
        }
        Forecast made = new Forecaster(c, space, day, clinic).forecast(shedding);
        if (book.wanted()) {
            new ScheduleWords(c, made, book).write();
        }
        return made;
    }

    /** What the plan promised when the wire went in; empty while it names too little. */
    public static Optional<Route> atStart(Case c, SpaceResult space, Clinic clinic) {
        return new Forecaster(Draft.of(c, "").forget("visits").make(), space, Fact.unknown("/date"), clinic).planned();
    }

    /** The way that the plan names, from where the case stands; empty while it names too little. */
    public static Optional<Route> now(Case c, SpaceResult space, Clinic clinic) {
        return new Forecaster(c, space, Fact.unknown("/date"), clinic).planned();
    }

    public SideForecast side(Side side) {
        return sides.get(side.ordinal());
    }

    /** The way that the plan names; empty while it names none or something is missing. */
    public Optional<Route> planned() {
        return routes.stream().filter(r -> pattern.is(r.pattern())).findFirst();
    }

    /** The outlook of one primary tooth. */
    public Shedding shedding(PrimaryTooth tooth, Side side) {
        return shedding.stream()
                .filter(s -> s.tooth() == tooth && s.side() == side)
                .findFirst()
                .orElseThrow();
    }
}
