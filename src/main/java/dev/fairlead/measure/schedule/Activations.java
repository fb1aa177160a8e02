package dev.fairlead.measure.schedule;

import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import dev.fairlead.model.VisitSide;
import dev.fairlead.model.shape.RecordShape;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/** What the visits of a case add up to. */
public final class Activations {
    private static final Measured ZERO = Measured.exact(0, Unit.MM);
    private static final Measured NO_VISITS = Measured.unknown("/visits");

    private final Case c;

    public Activations(Case c) {
        this.c = c;
    }

    /** True when no visit is logged. */
    public boolean none() {
        return c.visits().isEmpty();
    }

    /** What stands for a quantity of the visits when there are none. */
    static Measured noVisits() {
        return NO_VISITS;
    }

    /** Whether a visit opened any fold. */
    public static Answer any(Visit v) {
        Fact<Sides> a = v.activated();
        return a.known() ? Answer.of(a.isOther(Sides.NONE)) : absent(a);
    }

    /** Whether a visit opened the fold of one side. */
    public static Answer on(Visit v, Side side) {
        Fact<Sides> a = v.activated();
        return a.known()
                ? Answer.of(a.is(Sides.BOTH) || a.is(side == Side.LEFT ? Sides.LEFT : Sides.RIGHT))
                : absent(a);
    }

    private static Answer absent(Fact<Sides> a) {
        return a.applies() ? Answer.unknown(a.missing()) : Answer.NOT_APPLICABLE;
    }

    /** Gap opened on one side by the visits from {@code from} to before {@code to}, mm. */
    private Measured gap(Side side, int from, int to) {
        Measured sum = ZERO;
        for (int i = from; i < to; i++) {
            Visit v = c.visits().get(i);
            Answer on = on(v, side);
            if (on.yes()) {
                sum = sum.plus(v.side(side).gapOpened());
            } else if (!on.known()) {
                sum = sum.plus(on.applies() ? Measured.unknown(on.missing()) : Measured.notApplicable());
            }
        }
        return sum;
    }

    /** How far the openings of the visits before {@code to} carry the front forward on one side, mm. */
    Measured forward(Side side, int to) {
        return forward(side, gap(side, 0, to));
    }

    private Measured forward(Side side, Measured gap) {
        return gap.known() && gap.value() == 0 ? ZERO : WireMeasures.forward(c, side, gap);
    }

    /** How far all openings so far carry the front forward on one side, mm. */
    public Measured forward(Side side) {
        return none() ? NO_VISITS : forward(side, c.visits().size());
    }

    /** The same as if every opening that nobody wrote down had done nothing, mm. */
    public Measured forwardAtLeast(Side side) {
        return none() ? NO_VISITS : forward(side, gapWithin(side, false));
    }

    /** The same as if every opening that nobody wrote down had been as wide as one can be written, mm. */
    public Measured forwardAtMost(Side side) {
        return none() ? NO_VISITS : forward(side, gapWithin(side, true));
    }

    private Measured gapWithin(Side side, boolean most) {
        Field range = Objects.requireNonNull(RecordShape.of(VisitSide.class).field("gapOpened"))
                .about();
        Measured sum = ZERO;
        for (Visit v : c.visits()) {
            Answer on = on(v, side);
            Measured opened = v.side(side).gapOpened();
            if (!on.no() && !(on.applies() && opened.applies())) {
                return Measured.notApplicable();
            }
            if (on.yes() || most && !on.no()) {
                sum = sum.plus(opened.known() ? opened : Measured.exact(most ? range.high() : range.low(), Unit.MM));
            }
        }
        return sum;
    }

    /**
     * Weeks from the activation before to visit {@code index}; does not apply at the first, or where nothing was
     * opened.
     */
    public Measured weeksSince(int index) {
        Visit now = c.visits().get(index);
        Answer opened = any(now);
        if (opened.no() || !opened.applies()) {
            return Measured.notApplicable();
        }
        List<String> missing = opened.missing();
        for (int i = index - 1; i >= 0; i--) {
            Visit before = c.visits().get(i);
            Answer then = any(before);
            missing = Pointers.union(missing, then.missing());
            if (then.yes()) {
                return missing.isEmpty() ? Dates.weeks(before.date(), now.date()) : Measured.unknown(missing);
            }
        }
        return missing.isEmpty() || index == 0 ? Measured.notApplicable() : Measured.unknown(missing);
    }

    /**
     * Weeks from visit {@code index} to the next, or to {@code day} or the day on which the brackets came off,
     * whichever is earlier: how long an active wire went unseen. Does not apply before a fold was opened.
     */
    public Measured weeksUnseen(int index, Fact<LocalDate> day) {
        List<String> missing = List.of();
        boolean active = false;
        for (int i = 0; i <= index && !active; i++) {
            Answer then = any(c.visits().get(i));
            missing = Pointers.union(missing, then.missing());
            active = then.yes();
        }
        if (!active) {
            return missing.isEmpty() ? Measured.notApplicable() : Measured.unknown(missing);
        }
        Fact<LocalDate> until = index + 1 < c.visits().size()
                ? c.visits().get(index + 1).date()
                : Dates.earlier(c.holding().debonded(), day);
        return Dates.weeks(c.visits().get(index).date(), until);
    }

    /**
     * Months of treatment, from insertion to {@code day} or the day on which the brackets came off, in which nobody
     * recorded that a film of the roots is needed or not; does not apply once somebody has.
     */
    public Measured monthsWithoutRootDecision(Fact<LocalDate> day) {
        if (none()) {
            return NO_VISITS;
        }
        for (Visit v : c.visits()) {
            if (v.rootFilmDecided().yes()) {
                return Measured.notApplicable();
            }
        }
        return Dates.months(c.insertion().date(), Dates.earlier(c.holding().debonded(), day));
    }

    /** Every visit says whether a film of the roots was decided on: without a yes, nobody has. */
    public Answer rootDecisionTold() {
        boolean told = true;
        for (Visit v : c.visits()) {
            told &= v.rootFilmDecided().known();
        }
        return none() ? Answer.unknown(NO_VISITS.missing()) : Answer.of(told);
    }

    /**
     * The most that the incisors can have advanced since a check of the inclination was last recorded, mm: all of the
     * advance where none was, or where nobody measured how far they had come at that check.
     */
    public Measured sinceRecheck() {
        if (none()) {
            return NO_VISITS;
        }
        Measured now = c.visits().get(c.visits().size() - 1).incisorAdvance();
        int last = lastRecheck();
        if (last == c.visits().size() - 1) {
            return ZERO;
        }
        Measured then = last < 0 ? ZERO : c.visits().get(last).incisorAdvance();
        return then.known() ? now.minus(then) : now;
    }

    /** Every visit since the last check says that there was none, and the advance at that check was measured. */
    public Answer recheckTold() {
        if (none()) {
            return Answer.unknown(NO_VISITS.missing());
        }
        int last = lastRecheck();
        boolean told = last < 0
                || last == c.visits().size() - 1
                || c.visits().get(last).incisorAdvance().known();
        for (int i = last + 1; i < c.visits().size(); i++) {
            told &= c.visits().get(i).inclinationRechecked().known();
        }
        return Answer.of(told);
    }

    private int lastRecheck() {
        int last = c.visits().size() - 1;
        while (last >= 0 && !c.visits().get(last).inclinationRechecked().yes()) {
            last--;
        }
        return last;
    }

    Case ofCase() {
        return c;
    }
}
