package dev.fairlead.measure.part;

import dev.fairlead.measure.wire.BeamForces;
import dev.fairlead.measure.wire.NearForces;
import dev.fairlead.model.Case;

/** The parts that a case is measured with. */
public record Parts(PositionPart position, WirePart wire, ForcePart force) {
    private static final Parts PLAIN = new Parts(new TippedIncisors(), new PlainWire(), new NoForceModel());
    private static final Parts FULL = new Parts(PLAIN.position(), PLAIN.wire(), new BeamForces());

    /** Everything: published rules, plane geometry and the beam model of the wire. */
    public static Parts full() {
        return FULL;
    }

    /** The same without the beam model, where no forces are judged. */
    public Parts withoutForces() {
        return new Parts(position, wire, new NoForceModel());
    }

    /**
     * The same for variants of a case that differ from it by errors of measurement: the beam model is solved for the
     * case itself alone.
     */
    public Parts near(Case base) {
        return new Parts(position, wire, new NearForces(base, force));
    }

    /** Published rules and plane geometry; no beam model. */
    public static Parts plain() {
        return PLAIN;
    }
}
