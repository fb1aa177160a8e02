package dev.fairlead.measure.gather;

import dev.fairlead.measure.schedule.Activations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * How far the left side was opened beyond the right while the wire's size, or an opening, is missing. A fold's travel
 * grows in proportion to the radius at the wire's middle, so the lead lies between that of the thinnest and that of the
 * thickest wire; and it grows with each opening, so the lead is least where every opening that nobody wrote down did
 * nothing on the left and all that it can on the right.
 */
final class LeadBounds {
    private static final String SIZE = "size";

    private LeadBounds() {}

    /** Leads, mm, between which the true one lies; none where it is known, or does not apply. */
    static List<Measured> of(Case c, Measured leftLeads) {
        List<Measured> ends = new ArrayList<>(4);
        if (!leftLeads.known() && leftLeads.applies()) {
            if (c.wire().size().known()) {
                add(c, ends);
            } else {
                FieldShape field =
                        Objects.requireNonNull(RecordShape.of(WirePlan.class).field(SIZE));
                add(Edit.set(c, "/wire/" + SIZE, field.about().low()), ends);
                add(Edit.set(c, "/wire/" + SIZE, field.about().high()), ends);
            }
        }
        return ends;
    }

    private static void add(Case c, List<Measured> ends) {
        Activations a = new Activations(c);
        ends.add(a.forwardAtLeast(Side.LEFT).minus(a.forwardAtMost(Side.RIGHT)));
        ends.add(a.forwardAtMost(Side.LEFT).minus(a.forwardAtLeast(Side.RIGHT)));
    }

    /** The least that {@code of} makes of a lead between these ends, mm; unknown where there are none. */
    static Measured least(List<Measured> ends, UnaryOperator<Measured> of) {
        Measured least = ends.isEmpty() ? Measured.unknown("/visits") : of.apply(ends.get(0));
        for (Measured end : ends) {
            least = least.min(of.apply(end));
        }
        return least;
    }

    /** The least distance between the sides, mm: none where one end leads on the left and the other on the right. */
    static Measured leastApart(List<Measured> ends) {
        Measured left = least(ends, UnaryOperator.identity());
        Measured right = least(ends, lead -> lead.times(-1));
        Measured none = Measured.exact(0, Unit.MM);
        return left.max(right).max(none);
    }
}
