package dev.fairlead.measure.gather;

import dev.fairlead.measure.position.IncisorPrediction;
import dev.fairlead.measure.position.TippedIncisors;
import dev.fairlead.measure.wire.BeamForces;
import dev.fairlead.measure.wire.ForceModel;
import dev.fairlead.measure.wire.NearForces;
import dev.fairlead.measure.wire.NoForceModel;
import dev.fairlead.model.Case;

/** What predicts the incisors and the forces of one case. */
public record Calculations(IncisorPrediction position, ForceModel force) {
    private static final Calculations PLAIN = new Calculations(new TippedIncisors(), new NoForceModel());
    private static final Calculations FULL = new Calculations(PLAIN.position(), new BeamForces());

    /** Everything: published rules, plane geometry and the beam model of the wire. */
    public static Calculations full() {
        return FULL;
    }

    /** The same without the beam model, where no forces are judged. */
    public Calculations withoutForces() {
        return new Calculations(position, new NoForceModel());
    }

    /**
     * The same for variants of a case that differ from it by errors of measurement: the beam model is solved for the
     * case itself alone.
     */
    public Calculations near(Case base) {
        return new Calculations(position, new NearForces(base, force));
    }

    /** Published rules and plane geometry; no beam model. */
    public static Calculations plain() {
        return PLAIN;
    }
}
