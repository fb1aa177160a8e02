package dev.fairlead.measure.schedule;

import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

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
    static Answer any(Visit v) {
        Fact<Sides> a = v.activated();
        return a.known() ? Answer.of(a.isOther(Sides.NONE)) : absent(a);
    }

    /** Whether a visit opened the fold of one side. */
    static Answer on(Visit v, Side side) {
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
        Measured gap = gap(side, 0, to);
        return gap.known() && gap.value() == 0 ? ZERO : WireMeasures.forward(c, side, gap);
    }

    /** How far all openings so far carry the front forward on one side, mm. */
    public Measured forward(Side side) {
        return none() ? NO_VISITS : forward(side, c.visits().size());
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
                return weeks(before.date(), now.date(), missing);
            }
        }
        return missing.isEmpty() || index == 0 ? Measured.notApplicable() : Measured.unknown(missing);
    }

    private static Measured weeks(Fact<LocalDate> from, Fact<LocalDate> to, List<String> missing) {
        if (missing.isEmpty() && from.known() && to.known()) {
            return Measured.exact(Unit.DAY.to(Unit.WEEK, ChronoUnit.DAYS.between(from.get(), to.get())), Unit.WEEK);
        }
        return from.applies() && to.applies()
                ? Measured.unknown(Pointers.union(missing, Pointers.union(from.missing(), to.missing())))
                : Measured.notApplicable();
    }

    /** Measured advance since the inclination was last checked again, mm. */
    public Measured sinceRecheck() {
        if (none()) {
            return NO_VISITS;
        }
        Measured now = c.visits().get(c.visits().size() - 1).incisorAdvance();
        for (int i = c.visits().size() - 1; i >= 0; i--) {
            Visit v = c.visits().get(i);
            if (v.inclinationRechecked().yes()) {
                return now.minus(v.incisorAdvance());
            }
            if (!v.inclinationRechecked().known() && v.inclinationRechecked().applies()) {
                return now.plus(Measured.unknown(v.inclinationRechecked().missing()));
            }
        }
        return now;
    }

    Case ofCase() {
        return c;
    }
}
