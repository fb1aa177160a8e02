package dev.fairlead.audit.outcome;

import dev.fairlead.measure.Worked;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.schedule.ExpectedRange;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.schedule.OwnResponse;
import dev.fairlead.measure.schedule.Route;
import dev.fairlead.measure.schedule.SideGain;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Holds what was measured at the end of one case against what was predicted before the wire went in. */
public final class Outcomes {
    /** A plan that moves the front less says nothing of how teeth answer, mm. */
    private static final double LEAST_ADVANCE = 0.5;
    /** Standard deviation of a number that is told in whole steps: uniform over one of them. */
    private static final double WHOLE = 1 / Math.sqrt(12);

    private final Case c;
    private final SpaceResult space;
    private final PredictedIncisors position;
    private final Clinic clinic;
    private final List<Attained> all = new ArrayList<>();

    private Outcomes(Case c, Worked worked, Clinic clinic) {
        this.c = c;
        this.space = worked.space();
        this.position = worked.position();
        this.clinic = clinic;
    }

    /**
     * What is known of both, of a case read with the errors of its measurements and worked out; nothing where there is
     * no end.
     */
    public static List<Attained> of(Case c, Worked worked, Clinic clinic) {
        Outcomes o = new Outcomes(c, worked, clinic);
        o.space();
        o.incisors();
        o.course();
        return List.copyOf(o.all);
    }

    private void add(Attained.Kind kind, Measured predicted, double more, Measured achieved) {
        if (predicted.known() && achieved.known()) {
            all.add(new Attained(
                    kind, predicted.value(), Math.hypot(predicted.sd(), more), achieved.value(), achieved.sd()));
        }
    }

    private void space() {
        @Nullable Measured predicted = null;
        @Nullable Measured achieved = null;
        @Nullable Measured gained = null;
        @Nullable Measured expected = null;
        int sides = 0;
        for (Side side : Side.values()) {
            SideSpace s = space.side(side);
            Measured before = s.required().minus(s.shortage());
            Measured growth = c.plan().advance(side).times(SideGain.PER_ADVANCE);
            Measured at = c.holding().space(side);
            Measured promised = before.plus(growth.times(clinic.gain().mean()));
            if (promised.known() && at.known()) {
                sides++;
                predicted = sum(predicted, promised);
                achieved = sum(achieved, at);
                gained = sum(gained, at.minus(before));
                expected = sum(expected, growth);
            }
        }
        if (predicted == null || achieved == null || gained == null || expected == null) {
            return;
        }
        double grown = expected.value() / sides;
        add(Attained.Kind.SPACE, predicted.times(1.0 / sides), clinic.gain().sd() * grown, achieved.times(1.0 / sides));
        if (grown >= LEAST_ADVANCE) {
            ratio(Attained.Kind.GAIN, clinic.gain(), gained.times(1 / expected.value()));
        }
    }

    private static Measured sum(@Nullable Measured a, Measured b) {
        return a == null ? b : a.plus(b);
    }

    private void ratio(Attained.Kind kind, Clinic.Spread expected, Measured own) {
        all.add(new Attained(kind, expected.mean(), expected.sd(), own.value(), own.sd()));
    }

    private void incisors() {
        Measured end = c.holding().incisorMandibular();
        Measured after = position.inclination();
        add(Attained.Kind.INCLINATION, after, 0, end);
        add(Attained.Kind.OVERJET, position.overjet(), 0, c.holding().overjet());
        Measured before = c.headFilm().incisorMandibular();
        Measured advance = c.plan().advanceLeft().plus(c.plan().advanceRight()).times(0.5);
        if (after.known() && end.known() && before.known() && advance.known() && advance.value() >= LEAST_ADVANCE) {
            double promised =
                    (after.value() - before.value()) / clinic.tipping().mean();
            if (promised > 0) {
                ratio(Attained.Kind.TIPPING, clinic.tipping(), end.minus(before).times(1 / promised));
            }
        }
    }

    private void course() {
        Optional<Route> planned = Forecast.atStart(c, space, clinic);
        if (planned.isPresent() && !c.visits().isEmpty()) {
            Route route = planned.get();
            int opened =
                    (int) c.visits().stream().filter(v -> v.activated().known()).count();
            if (opened == c.visits().size()) {
                count(Attained.Kind.VISITS, route.activations(), 1, opened);
            }
            Visit first = c.visits().get(0);
            Fact<LocalDate> end = c.holding().impression().known()
                    ? c.holding().impression()
                    : c.holding().cemented();
            if (first.date().known()
                    && end.known()
                    && !end.get().isBefore(first.date().get())) {
                double days = ChronoUnit.DAYS.between(first.date().get(), end.get());
                count(
                        Attained.Kind.MONTHS,
                        route.visits(),
                        Unit.WEEK.to(Unit.MONTH, c.plan().intervalWeeks().value()),
                        Unit.DAY.to(Unit.MONTH, days));
            }
        }
        rate();
    }

    private void count(Attained.Kind kind, ExpectedRange<Integer> range, double step, double achieved) {
        double half = (range.late() - range.early()) / 2.0 / ExpectedRange.REACH;
        all.add(new Attained(kind, step * range.expected(), step * Math.hypot(half, WHOLE), achieved, 0));
    }

    /** Mean of the sides, whose visits scatter each on their own. */
    private void rate() {
        double sum = 0;
        double variance = 0;
        int sides = 0;
        for (Side side : Side.values()) {
            List<OwnResponse.Step> steps = OwnResponse.of(c, side, clinic).steps();
            if (!steps.isEmpty()) {
                Measured own = steps.get(steps.size() - 1).own();
                sum += own.value();
                variance += own.sd() * own.sd();
                sides++;
            }
        }
        if (sides > 0) {
            all.add(new Attained(
                    Attained.Kind.RATE,
                    clinic.rate().mean(),
                    clinic.rate().sd(),
                    sum / sides,
                    Math.sqrt(variance) / sides));
        }
    }
}
