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
import java.util.function.UnaryOperator;

/**
 * How far the left side was opened beyond the right while the wire's size is missing. A fold's travel grows in
 * proportion to the radius at the wire's middle, so the lead lies between that of the thinnest and that of the thickest
 * wire.
 */
final class LeadForAnyWire {
    private static final String SIZE = "size";
    private static final FieldShape FIELD = field();

    private LeadForAnyWire() {}

    private static FieldShape field() {
        for (FieldShape f : RecordShape.of(WirePlan.class).fields()) {
            if (f.key().equals(SIZE)) {
                return f;
            }
        }
        throw new IllegalStateException("a wire has no " + SIZE);
    }

    /** The lead of the thinnest and of the thickest wire, mm; none where it is known, or waits for anything else. */
    static List<Measured> of(Case c, Measured leftLeads) {
        List<Measured> ends = new ArrayList<>(2);
        if (!leftLeads.known() && leftLeads.applies() && !c.wire().size().known()) {
            for (double size : new double[] {FIELD.about().low(), FIELD.about().high()}) {
                Activations with = new Activations(Edit.set(c, "/wire/" + SIZE, size));
                ends.add(with.forward(Side.LEFT).minus(with.forward(Side.RIGHT)));
            }
        }
        return ends;
    }

    /** The least that {@code of} makes of a lead between these ends, mm; unknown where there are none. */
    static Measured least(List<Measured> ends, UnaryOperator<Measured> of) {
        return ends.isEmpty()
                ? Measured.unknown("/wire/" + SIZE)
                : of.apply(ends.get(0)).min(of.apply(ends.get(1)));
    }

    /** The least distance between the sides, mm: none where one end leads on the left and the other on the right. */
    static Measured leastApart(List<Measured> ends) {
        Measured left = least(ends, UnaryOperator.identity());
        Measured right = least(ends, lead -> lead.times(-1));
        Measured none = Measured.exact(0, Unit.MM);
        return left.max(right).max(none);
    }
}
