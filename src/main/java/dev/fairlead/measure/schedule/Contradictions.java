package dev.fairlead.measure.schedule;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.List;

/**
 * Whether the readings of the visits can all be true at once. Each distance is how far a reading lies beyond what the
 * others allow, in standard errors of single readings as they are usually assumed; 0 when it lies within.
 *
 * @param datesInOrder insertion and visits are dated one after another
 * @param standOff stand-off of opened folds against their opening; unknown while a reading is missing
 * @param standOffSoFar the same of those readings that are there
 * @param closedSide rise of a stand-off at a visit that did not open that side; stand-offs that nobody read are passed
 *     over
 * @param advance measured advance against the space gained; unknown while a reading is missing
 * @param advanceSoFar the same of those readings that are there
 */
public record Contradictions(
        Answer datesInOrder,
        Measured standOff,
        Measured standOffSoFar,
        Measured closedSide,
        Measured advance,
        Measured advanceSoFar) {
    private static final Measured WITHIN = Measured.exact(0, Unit.RATIO);

    /** Two stand-offs and one opening, mm. */
    private static final double STAND_OFF_ERROR = Math.hypot(
            Math.hypot(ErrorKind.MOUTH_RULER.defaultSd(), ErrorKind.MOUTH_RULER.defaultSd()),
            ErrorKind.BENCH_LENGTH.defaultSd());
    /** Two stand-offs, mm. */
    private static final double RISE_ERROR =
            Math.hypot(ErrorKind.MOUTH_RULER.defaultSd(), ErrorKind.MOUTH_RULER.defaultSd());
    /** The mean of two sides, each the difference of two readings, and the advance, mm. */
    private static final double ADVANCE_ERROR = Math.hypot(
            ErrorKind.SEGMENT.defaultSd(), ErrorKind.MOUTH_RULER.defaultSd() * (SideGain.LEAST + SideGain.MOST) / 2);

    /** Those of the visits logged so far; nothing applies while there is none. */
    public static Contradictions of(Activations activations) {
        if (activations.none()) {
            Measured none = Measured.notApplicable();
            return new Contradictions(Answer.NOT_APPLICABLE, none, none, none, none, none);
        }
        Found standOff = new Found();
        Found closed = new Found();
        Found advance = new Found();
        Case c = activations.ofCase();
        for (int i = 0; i < c.visits().size(); i++) {
            for (Side side : Side.values()) {
                side(activations, i, side, standOff, closed);
            }
            advance.add(gained(c, i), c.visits().get(i).incisorAdvance());
        }
        return new Contradictions(
                inOrder(c), standOff.whole(), standOff.soFar(), closed.soFar(), advance.whole(), advance.soFar());
    }

    private static Answer inOrder(Case c) {
        LocalDate last = c.insertion().date().value().orElse(null);
        List<String> missing = List.of();
        for (Visit v : c.visits()) {
            Fact<LocalDate> day = v.date();
            if (day.known()) {
                if (last != null && day.get().isBefore(last)) {
                    return Answer.NO;
                }
                last = day.get();
            }
            missing = Pointers.union(missing, day.missing());
        }
        return missing.isEmpty() ? Answer.YES : Answer.unknown(missing);
    }

    private static void side(Activations activations, int visit, Side side, Found opened, Found closed) {
        Visit now = activations.ofCase().visits().get(visit);
        Answer on = Activations.on(now, side);
        Measured read = now.side(side).standOff();
        Measured before = visit == 0
                ? Measured.exact(0, Unit.MM)
                : activations.ofCase().visits().get(visit - 1).side(side).standOff();
        if (on.yes()) {
            Measured travel = activations.forward(side, visit + 1).minus(activations.forward(side, visit));
            Measured most = travel.plus(before);
            opened.add(read.minus(most), travel.minus(read), STAND_OFF_ERROR);
        } else if (!on.known()) {
            opened.missing(on.missing());
        } else if (read.known() && before.known()) {
            closed.add(read.minus(before), Measured.exact(0, Unit.MM), RISE_ERROR);
        }
    }

    /** Mean growth of the two sides' space since before treatment, mm. */
    private static Measured gained(Case c, int visit) {
        Visit v = c.visits().get(visit);
        return v.left()
                .space()
                .minus(c.space().left())
                .plus(v.right().space().minus(c.space().right()))
                .times(0.5);
    }

    /** The farthest that a reading lies beyond what others allow. */
    private static final class Found {
        private Measured most = WITHIN;
        private List<String> missing = List.of();

        /** Two distances that are above 0 on either side of what can be true. */
        void add(Measured above, Measured below, double error) {
            if (above.known() && below.known()) {
                Measured beyond = above.max(below);
                beyond = beyond.chain(beyond.value() / error, 1 / error, Unit.RATIO);
                most = beyond.value() > most.value() ? beyond : most;
            } else {
                missing(Pointers.union(above.missing(), below.missing()));
            }
        }

        /** Space gained on a side, and the advance that it has to go with. */
        void add(Measured gained, Measured advanced) {
            if (gained.known() && advanced.known()) {
                Measured a = advanced.times(SideGain.LEAST);
                Measured b = advanced.times(SideGain.MOST);
                add(gained.minus(a.max(b)), a.min(b).minus(gained), ADVANCE_ERROR);
            } else {
                missing(Pointers.union(gained.missing(), advanced.missing()));
            }
        }

        void missing(List<String> pointers) {
            missing = Pointers.union(missing, pointers);
        }

        Measured whole() {
            return missing.isEmpty() ? soFar() : Measured.unknown(missing);
        }

        /** What is there contradicts itself by so much; nothing to compare is no contradiction. */
        Measured soFar() {
            return most;
        }
    }
}
