package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Visit;

/**
 * What a gauge that was read at a visit says when the wire or its stand-offs there are taken to be otherwise. It is
 * then no reading any more: the force follows by the ratio of the beam model's forces, as an estimate with a wider
 * error, or is unknown where the model has no answer.
 */
public final class GaugeReading {
    private static final String SOURCE = "ratio of two forces by the beam model";
    /**
     * From wire to wire the exponents of the forces vary by a tenth to a fifth, see {@link ForceLaw}: the error as a
     * share of the change.
     */
    private static final double OF_CHANGE = 0.2;

    private GaugeReading() {}

    /**
     * The force in gf for a case that differs from the one of which it was read.
     *
     * @param visit counted from 0
     * @return the reading itself where nothing that the force depends on is otherwise, and where the other case has a
     *     reading of its own
     */
    public static Measured carried(Case read, Case other, int visit, ForceModel force) {
        Measured gauge = read.visits().get(visit).gauge();
        Measured there = other.visits().get(visit).gauge();
        if (!gauge.known() || !there.equals(gauge) || sameWire(read, other, visit)) {
            return there;
        }
        Forces before = force.at(read, visit, Workbook.none());
        Forces after = force.at(other, visit, Workbook.none());
        boolean answered = before.low().known()
                && before.high().known()
                && after.low().known()
                && after.high().known()
                && before.low().value() > 0;
        if (!answered) {
            return Measured.unknown("/visits/" + visit + "/gauge");
        }
        double low = after.low().value() / before.low().value();
        double high = after.high().value() / before.high().value();
        double mean = (low + high) / 2;
        return gauge.times(mean)
                .withError(SOURCE, gauge.value() * (Math.abs(high - low) / 2 + OF_CHANGE * Math.abs(mean - 1)));
    }

    private static boolean sameWire(Case a, Case b, int visit) {
        return inputs(a, visit).same(inputs(b, visit));
    }

    private static BeamInputs inputs(Case c, int visit) {
        Visit v = c.visits().get(visit);
        return new BeamInputs(c, v.right().standOff(), v.left().standOff());
    }
}
