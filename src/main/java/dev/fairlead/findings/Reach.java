package dev.fairlead.findings;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;
import dev.fairlead.model.shape.Recorded;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far a case is judged and for which day: the one place that decides it.
 *
 * @param stated the stage at which the case's writer believes to be; empty when the case names none
 * @param recorded the furthest stage of which facts are recorded
 * @param judged the last stage whose criteria are judged: the later of the two, unless less was asked for
 * @param day the day for which it is judged; empty when nothing in the case has a date and none was given
 * @param dated the day that the case itself names
 */
public record Reach(
        Optional<Stage> stated, Stage recorded, Stage judged, Optional<LocalDate> day, Optional<LocalDate> dated) {
    /**
     * How far {@code c} is judged; {@code asked} is the only way to judge less or more than is recorded, {@code day}
     * the only way to judge for another day than the latest that is recorded.
     */
    public static Reach of(Case c, Optional<Stage> asked, Optional<LocalDate> day) {
        Stage recorded = recorded(c);
        Optional<Stage> stated = c.stage().value();
        return new Reach(
                stated,
                recorded,
                asked.orElse(full(stated, recorded)),
                day.isPresent() ? day : latest(c),
                day.isPresent() ? day : c.date().value());
    }

    /** The furthest stage of which at least one fact is known; a section that a template left empty is none. */
    private static Stage recorded(Case c) {
        if (Recorded.any(c.holding())) {
            return Stage.HOLDING;
        }
        for (Visit visit : c.visits()) {
            if (Recorded.any(visit)) {
                return Stage.ACTIVATION;
            }
        }
        if (Recorded.any(c.insertion())) {
            return Stage.INSERTION;
        }
        if (Recorded.any(c.bench())) {
            return Stage.BENCH;
        }
        if (Recorded.any(c.hardware())) {
            return Stage.READINESS;
        }
        boolean planned =
                c.plan().advanceLeft().known() || c.plan().advanceRight().known();
        for (Record section : List.of(c.headFilm(), c.bite(), c.mouth(), c.consent(), c.plan())) {
            planned = planned || Recorded.any(section);
        }
        return planned ? Stage.INDICATION : Stage.RECORDS;
    }

    /** The latest of the case's own date and the days of what was done. */
    private static Optional<LocalDate> latest(Case c) {
        Stream<Fact<LocalDate>> done = Stream.of(
                c.date(),
                c.insertion().date(),
                c.holding().impression(),
                c.holding().cemented(),
                c.holding().debonded());
        return Stream.concat(done, c.visits().stream().map(Visit::date))
                .flatMap(d -> d.value().stream())
                .max(LocalDate::compareTo);
    }

    /** The last stage that would be judged had nobody asked for less. */
    public Stage full() {
        return full(stated, recorded);
    }

    private static Stage full(Optional<Stage> stated, Stage recorded) {
        return stated.isPresent() && stated.get().hasReached(recorded) ? stated.get() : recorded;
    }

    /** True when less was asked for than the case holds. */
    public boolean cut() {
        return !judged.hasReached(full());
    }

    /** The stages that are judged, in order. */
    public List<Stage> stages() {
        return List.of(Stage.values()).subList(0, judged.ordinal() + 1);
    }
}
