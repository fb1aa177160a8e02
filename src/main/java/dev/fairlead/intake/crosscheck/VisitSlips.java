package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import java.util.function.Function;

/** Readings of visits that cannot be true together: an opening where none was made, and totals that shrink. */
final class VisitSlips {
    /** By which a reading "since the start" may shrink, mm: twice the error of one clinical reading. */
    private static final double SHRINKS = 1;

    private VisitSlips() {}

    static void check(Case c, CrossChecks to) {
        for (int i = 0; i < c.visits().size(); i++) {
            for (Side side : Side.values()) {
                closed(c.visits().get(i), side, "/visits/" + i, to);
            }
        }
        shrinking(c, "/incisorAdvance", Visit::incisorAdvance, to);
        for (Side side : Side.values()) {
            shrinking(c, "/" + side.word() + "/molarDistal", v -> v.side(side).molarDistal(), to);
        }
    }

    /**
     * An opening on a side of a visit that says that this side was left closed; both exchanged is the matter of
     * {@link SideSwaps}.
     */
    private static void closed(Visit v, Side side, String pointer, CrossChecks to) {
        Measured gap = v.side(side).gapOpened();
        Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
        Measured beyond = v.side(other).gapOpened();
        boolean none = v.activated().is(Sides.NONE);
        boolean otherOnly =
                v.activated().is(side == Side.LEFT ? Sides.RIGHT : Sides.LEFT) && beyond.known() && beyond.value() > 0;
        if (gap.known() && gap.value() > 0 && (none || otherOnly)) {
            to.doubt(
                    pointer + "/" + side.word() + "/gapOpened",
                    "0 mm, for the visit says that this fold was not opened (activated: "
                            + v.activated().get().word() + ")",
                    Slips.number(gap.value()) + " mm",
                    "a visit copied and not changed",
                    "write which folds were opened, or take the opening out");
        }
    }

    private static void shrinking(Case c, String field, Function<Visit, Measured> reading, CrossChecks to) {
        Measured before = null;
        for (int i = 0; i < c.visits().size(); i++) {
            Measured now = reading.apply(c.visits().get(i));
            if (!now.known()) {
                continue;
            }
            if (before != null && before.value() - now.value() > SHRINKS + Measured.ROUNDING) {
                to.doubt(
                        "/visits/" + i + field,
                        "the whole movement since the start, not much less than the " + Slips.number(before.value())
                                + " mm before",
                        Slips.number(now.value()) + " mm",
                        "the movement since the visit before",
                        "write the movement since the start");
            }
            before = now;
        }
    }
}
