package dev.fairlead.measure.schedule;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;

/** How far the front has come on one side, from the readings of visits; openings are never taken for an advance. */
public final class Progressed {
    private static final Measured ZERO = Measured.exact(0, Unit.MM);

    private Progressed() {}

    /**
     * Advance from the first visit to visit {@code to} (from 0), mm: growth of the side's space over 0.866 (see
     * {@link SideGain}); where the space was not read at both, the measured movement of the incisors as a whole.
     */
    static Measured until(Case c, Side side, int to) {
        if (to == 0) {
            return ZERO;
        }
        Measured bySpace = bySpace(c, side, to);
        if (bySpace.known()) {
            return bySpace;
        }
        Measured byEdge =
                c.visits().get(to).incisorAdvance().minus(c.visits().get(0).incisorAdvance());
        return byEdge.known() ? byEdge : bySpace;
    }

    /** Measured movement of the incisors at the last visit, mm; at the first nothing can have moved. */
    public static Measured byIncisors(Case c) {
        int last = c.visits().size() - 1;
        if (last < 0) {
            return Activations.noVisits();
        }
        Measured read = c.visits().get(last).incisorAdvance();
        return last == 0 && !read.known() ? ZERO : read;
    }

    /** Advance by the space gained from the first visit to the last, mm. */
    public static Measured bySpace(Case c, Side side) {
        return c.visits().isEmpty()
                ? Activations.noVisits()
                : bySpace(c, side, c.visits().size() - 1);
    }

    /** Both readings are of visits: a segment of the first records was measured on a model, from other points. */
    private static Measured bySpace(Case c, Side side, int to) {
        if (to == 0) {
            return ZERO;
        }
        Visit first = c.visits().get(0);
        return SideGain.advance(
                c.visits().get(to).side(side).space().minus(first.side(side).space()));
    }
}
