package dev.fairlead.measure.schedule;

import dev.fairlead.measure.schedule.SideForecast.Point;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out the forecast of one case. */
final class Forecaster {
    /** Teeth move no farther than about 1 mm a month, as secondary texts say. */
    static final double MOST_PER_MONTH = 1;

    private final Case c;
    private final Clinic clinic;
    /** Growth of one side's space per mm of advance. */
    private final double chord;

    private final SpaceResult space;
    private final Fact<LocalDate> day;
    private final OwnResponse[] responses = new OwnResponse[2];
    private final Measured[] toDo = new Measured[2];

    Forecaster(Case c, SpaceResult space, Fact<LocalDate> day, Clinic clinic) {
        this.clinic = clinic;
        this.chord = SideGain.PER_ADVANCE * clinic.gain().mean();
        this.c = c;
        this.space = space;
        this.day = day;
        for (Side side : Side.values()) {
            responses[side.ordinal()] = OwnResponse.of(c, side, clinic);
            toDo[side.ordinal()] = c.plan().advance(side).minus(done(side));
        }
    }

    private boolean started() {
        return !c.visits().isEmpty();
    }

    private Measured done(Side side) {
        return started() ? Progressed.until(c, side, c.visits().size() - 1) : Measured.exact(0, Unit.MM);
    }

    Forecast forecast(List<Shedding> shedding) {
        List<String> missing = Pointers.union(
                Pointers.union(toDo[0].missing(), toDo[1].missing()),
                Pointers.union(
                        Pointers.union(
                                c.plan().standOff(Side.LEFT).missing(),
                                c.plan().standOff(Side.RIGHT).missing()),
                        c.plan().intervalWeeks().missing()));
        boolean known = known();
        List<Route> routes = new ArrayList<>();
        List<Course> planned = List.of();
        for (Pattern p : known ? Pattern.values() : new Pattern[0]) {
            List<Course> courses = courses(p);
            if (courses.stream().allMatch(Course::ends)) {
                routes.add(route(p, courses));
                planned = c.plan().pattern().is(p) ? courses : planned;
            }
        }
        List<SideForecast> sides = new ArrayList<>();
        for (Side side : Side.values()) {
            sides.add(side(side, planned));
        }
        missing = Pointers.union(missing, Pointers.union(c.plan().pattern().missing(), start().missing()));
        Optional<ExpectedRange<LocalDate>> end = routes.stream()
                .filter(r -> c.plan().pattern().is(r.pattern()))
                .findFirst()
                .flatMap(Route::end);
        Judged judged = judge(end, shedding);
        return new Forecast(sides, routes, c.plan().pattern(), shedding, judged.fit(), judged.gone(), missing);
    }

    private boolean known() {
        return toDo[0].known()
                && toDo[1].known()
                && c.plan().standOff(Side.LEFT).known()
                && c.plan().standOff(Side.RIGHT).known()
                && c.plan().intervalWeeks().known();
    }

    /** The way that the plan names alone; empty while something is missing, or where it never ends. */
    Optional<Route> planned() {
        return known() && c.plan().pattern().known()
                ? Optional.of(courses(c.plan().pattern().get()))
                        .filter(x -> x.stream().allMatch(Course::ends))
                        .map(x -> route(c.plan().pattern().get(), x))
                : Optional.empty();
    }

    /** Fast, expected and slow. */
    private List<Course> courses(Pattern p) {
        ExpectedRange<Double> l = responses[0].span();
        ExpectedRange<Double> r = responses[1].span();
        return List.of(
                course(p, l.late(), r.late()), course(p, l.expected(), r.expected()), course(p, l.early(), r.early()));
    }

    private Course course(Pattern p, double left, double right) {
        double most = MOST_PER_MONTH
                * Unit.WEEK.to(Unit.MONTH, c.plan().intervalWeeks().value());
        return Course.run(
                new double[] {toDo[0].value(), toDo[1].value()},
                new double[] {standing(Side.LEFT), standing(Side.RIGHT)},
                new Course.Drive(
                        new double[] {left, right},
                        most,
                        new double[] {
                            c.plan().standOff(Side.LEFT).value(),
                            c.plan().standOff(Side.RIGHT).value()
                        },
                        p,
                        !started()));
    }

    /**
     * Stand-off that acts on a side now: as read at the last visit; as planned where that visit opened the fold and
     * nobody read it.
     */
    private double standing(Side side) {
        if (!started()) {
            return 0;
        }
        Visit last = c.visits().get(c.visits().size() - 1);
        Measured read = last.side(side).standOff();
        return read.known()
                ? read.value()
                : Activations.on(last, side).yes() ? c.plan().standOff(side).value() : 0;
    }

    private Fact<LocalDate> start() {
        Fact<LocalDate> from = started()
                ? c.visits().get(c.visits().size() - 1).date()
                : c.plan().start();
        // a plan that was to start earlier and did not can start today at the earliest
        return !started() && from.known() && day.known() && day.get().isAfter(from.get()) ? day : from;
    }

    private LocalDate visit(LocalDate start, int n) {
        return start.plusDays(
                Math.round(Unit.WEEK.to(Unit.DAY, n * c.plan().intervalWeeks().value())));
    }

    private Route route(Pattern p, List<Course> x) {
        ExpectedRange<Integer> visits =
                new ExpectedRange<>(x.get(0).end(), x.get(1).end(), x.get(2).end());
        Optional<ExpectedRange<LocalDate>> end = start().value()
                .map(s -> new ExpectedRange<>(
                        visit(s, visits.early()), visit(s, visits.expected()), visit(s, visits.late())));
        return new Route(
                p,
                new ExpectedRange<>(
                        x.get(0).openings(), x.get(1).openings(), x.get(2).openings()),
                visits,
                end);
    }

    private SideForecast side(Side side, List<Course> courses) {
        int i = side.ordinal();
        SideSpace s = space.side(side);
        Measured now = s.required().minus(s.shortage());
        if (started()) {
            Measured read = c.visits().get(c.visits().size() - 1).side(side).space();
            now = read.known() ? read : now.plus(room(done(side)));
        }
        Measured lacking = s.required().minus(now);
        Measured needed = advance(lacking).max(Measured.exact(0, Unit.MM));
        Measured after = lacking.minus(room(toDo[i].max(Measured.exact(0, Unit.MM))));
        Optional<ExpectedRange<Integer>> reached = courses.isEmpty()
                ? Optional.empty()
                : Optional.of(new ExpectedRange<>(
                        courses.get(0).reached()[i],
                        courses.get(1).reached()[i],
                        courses.get(2).reached()[i]));
        List<Point> points = points(side, courses, now);
        return new SideForecast(
                side,
                responses[i],
                c.plan().advance(side),
                done(side),
                toDo[i],
                needed,
                after,
                s.required(),
                now,
                reached,
                points);
    }

    private List<Point> points(Side side, List<Course> courses, Measured now) {
        List<Point> points = new ArrayList<>();
        boolean lastRead = false;
        for (int v = 0; v < c.visits().size(); v++) {
            Measured read = c.visits().get(v).side(side).space();
            lastRead = read.known();
            if (lastRead) {
                points.add(new Point(
                        v + 1 - c.visits().size(),
                        c.visits().get(v).date().value(),
                        read.value(),
                        read.value() - ExpectedRange.REACH * read.sd(),
                        read.value() + ExpectedRange.REACH * read.sd(),
                        true));
            }
        }
        if (courses.isEmpty() || !now.known()) {
            return points;
        }
        // the band goes on from the error of the last reading, and widens
        double reading = ExpectedRange.REACH * now.sd();
        for (int v = lastRead ? 1 : 0; v <= courses.get(2).end(); v++) {
            double fast = now.value() + gained(courses.get(0), side, v);
            double expected = now.value() + gained(courses.get(1), side, v);
            double slow = now.value() + gained(courses.get(2), side, v);
            // by the clinic's own cases where they tell it, else by what is published
            double unsure = clinic.own()
                    ? Math.hypot(
                            reading,
                            ExpectedRange.REACH
                                    * clinic.gain().sd()
                                    / clinic.gain().mean()
                                    * (expected - now.value()))
                    : Math.hypot(
                            reading,
                            ExpectedRange.REACH * SideGain.SD * (expected - now.value()) / SideGain.PER_ADVANCE);
            int ahead = v;
            points.add(new Point(
                    v,
                    start().value().map(s -> visit(s, ahead)),
                    expected,
                    expected - Math.hypot(expected - slow, unsure),
                    expected + Math.hypot(fast - expected, unsure),
                    false));
        }
        return points;
    }

    private Measured room(Measured advance) {
        return clinic.own() ? advance.times(chord) : SideGain.room(advance);
    }

    private Measured advance(Measured room) {
        return clinic.own() ? room.times(1 / chord) : SideGain.advance(room);
    }

    /** Growth of a side's space until a visit, mm. */
    private double gained(Course course, Side side, int visit) {
        double[] left = course.left().get(Math.min(visit, course.left().size() - 1));
        return (course.left().get(0)[side.ordinal()] - left[side.ordinal()]) * chord;
    }

    private record Judged(Fit fit, Optional<Double> gone) {}

    private static Judged judge(Optional<ExpectedRange<LocalDate>> end, List<Shedding> shedding) {
        List<Shedding> molars = shedding.stream()
                .filter(s -> s.tooth() == PrimaryTooth.SECOND_MOLAR)
                .toList();
        if (molars.stream().anyMatch(s -> s.stands().no())) {
            return new Judged(Fit.SHED, Optional.empty());
        }
        if (end.isEmpty() || molars.stream().anyMatch(s -> s.date().isEmpty())) {
            return new Judged(Fit.UNKNOWN, Optional.empty());
        }
        // both sides of one child go at nearly the same age: the likelier side speaks for both
        double gone = molars.stream()
                .mapToDouble(s -> s.shedBy(end.get().expected()).orElseThrow())
                .max()
                .orElseThrow();
        boolean late = molars.stream()
                .anyMatch(s ->
                        !end.get().expected().isBefore(s.date().orElseThrow().expected()));
        boolean fits = molars.stream()
                .allMatch(s -> end.get().late().isBefore(s.date().orElseThrow().early()));
        return new Judged(late ? Fit.LATE : fits ? Fit.FITS : Fit.TIGHT, Optional.of(gone));
    }
}
