package dev.fairlead.measure.schedule;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;

/** How far the front has come on one side, from the readings of visits. */
final class Progressed {
    private Progressed() {}

    /**
     * Advance from the first visit to visit {@code to} (from 0), mm: growth of the side's space over 0.866 (see
     * {@link Response#CHORD_PER_ADVANCE}); where the space was not read at both, the measured movement of the incisors
     * as a whole.
     */
    static Measured until(Case c, Side side, int to) {
        if (to == 0) {
            return Measured.exact(0, Unit.MM);
        }
        Visit first = c.visits().get(0);
        Visit last = c.visits().get(to);
        Measured before = first.side(side).space();
        Measured start = before.known() || !c.space().side(side).known()
                ? before
                : c.space().side(side);
        Measured bySpace = last.side(side).space().minus(start);
        if (bySpace.known()) {
            return bySpace.times(1 / Response.CHORD_PER_ADVANCE);
        }
        Measured byEdge = last.incisorAdvance().minus(first.incisorAdvance());
        return byEdge.known() ? byEdge : bySpace;
    }
}
