package dev.fairlead.measure.schedule;

import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.util.List;

/**
 * Space gained on one side against what its openings should have given.
 *
 * <p>What an advance gains is told by {@link SideGain}. Only openings before the last reading can have acted.
 */
public final class Response {
    /** Openings that go by without moving a tooth leave nothing to compare with, mm. */
    private static final double LEAST_EXPECTED = 1e-6;

    private Response() {}

    /** Per cent; does not apply before two visits, or where no opening of that side had time to act. */
    public static Measured of(Activations activations, Side side, Workbook book) {
        Case c = activations.ofCase();
        if (activations.none()) {
            return Activations.noVisits();
        }
        int opened = 0;
        int first = -1;
        List<String> missing = List.of();
        for (int i = 0; i < c.visits().size(); i++) {
            Answer on = Activations.on(c.visits().get(i), side);
            missing = Pointers.union(missing, on.missing());
            opened += on.yes() ? 1 : 0;
            first = first < 0 && on.yes() ? i : first;
        }
        if (!missing.isEmpty() && c.visits().size() > 1) {
            return Measured.unknown(missing);
        }
        if (c.visits().size() < 2 || opened < 1) {
            return Measured.notApplicable();
        }
        int last = c.visits().size() - 1;
        Visit start = c.visits().get(first);
        Measured before = start.side(side).space();
        Measured now = c.visits().get(last).side(side).space();
        Measured gained = now.minus(before);
        Measured expected = SideGain.room(activations.forward(side, last));
        if (expected.known() && expected.value() < LEAST_EXPECTED) {
            return Measured.notApplicable();
        }
        Measured response = gained.ratioTo(expected, 100, Unit.PERCENT);
        book.add(() -> Working.of(
                "activation.response." + Say.side(side),
                "Activation",
                "response on the " + Say.side(side),
                response,
                "100 x (space at the last visit - space before the first opening) / (0.866 x forward travel of the openings before the last visit)",
                "100 x (" + Say.num(now) + " - " + Say.num(before) + ") / " + Say.num(expected),
                "0.866 is the growth of the chord from first molar to lateral incisor, about 30 degrees to the midline, per mm of advancement as a block; 0.6 to 1.05 were seen, and the error spans them.",
                "geometry"));
        return response;
    }
}
