package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.position.IncisorPrediction;
import dev.fairlead.measure.position.TippedIncisors;
import dev.fairlead.measure.wire.BeamForces;
import dev.fairlead.measure.wire.ForceModel;
import dev.fairlead.measure.wire.NearForces;
import dev.fairlead.measure.wire.NoForceModel;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import java.util.Optional;
import java.util.Set;

/**
 * What predicts the incisors and the forces of one case, and which facts are wanted of it.
 *
 * @param line the arch that the wire's line is laid along, where it is not to be measured anew
 * @param asked the facts that somebody looks at, where it is not all of them
 */
public record Calculations(
        IncisorPrediction position,
        ForceModel force,
        Clinic clinic,
        Optional<PatientArch> line,
        Optional<Set<Class<? extends CaseFact>>> asked) {
    private static final Calculations PLAIN =
            new Calculations(new TippedIncisors(Clinic.PUBLISHED), new NoForceModel(), Clinic.PUBLISHED);
    private static final Calculations FULL = new Calculations(PLAIN.position(), new BeamForces(), Clinic.PUBLISHED);

    public Calculations(IncisorPrediction position, ForceModel force, Clinic clinic) {
        this(position, force, clinic, Optional.empty(), Optional.empty());
    }

    /** Everything: published rules, plane geometry and the beam model of the wire. */
    public static Calculations full() {
        return FULL;
    }

    /** The same with the incisors predicted in another way. */
    public Calculations predicting(IncisorPrediction incisors) {
        return new Calculations(incisors, force, clinic, line, asked);
    }

    /** The same without the beam model, where no forces are judged. */
    public Calculations withoutForces() {
        return new Calculations(position, new NoForceModel(), clinic, line, asked);
    }

    /**
     * The same for variants of a case that differ from it by errors of measurement: the beam model is solved for the
     * case itself alone.
     */
    public Calculations near(Case base) {
        return new Calculations(position, new NearForces(base, force), clinic, Optional.empty(), asked);
    }

    /**
     * The same with the wire's line laid along the arch of {@code base}. An error of the arch hardly moves a bend
     * against its tube, and to lay the line anew is a third of the work on a variant; only the length of the blank
     * follows the arch.
     */
    public Calculations alongTheArchOf(Case base) {
        return new Calculations(position, force, clinic, Optional.of(PatientArch.of(base)), asked);
    }

    /** The same for who looks at no other facts: of those that are gathered with them he may find more. */
    public Calculations asking(Set<Class<? extends CaseFact>> facts) {
        return new Calculations(position, force, clinic, line, Optional.of(facts));
    }

    /** True when somebody looks at facts of one of these types. */
    @SafeVarargs
    final boolean asks(Class<? extends CaseFact>... facts) {
        boolean any = asked.isEmpty();
        for (Class<? extends CaseFact> type : facts) {
            any = any || asked.get().contains(type);
        }
        return any;
    }

    /** The arch that the wire's line is laid along, of a case with that arch of its own. */
    public PatientArch archOfLine(PatientArch own) {
        return line.orElse(own);
    }

    /** The same with what a clinic's own cases have shown. */
    public Calculations of(Clinic own) {
        return own.equals(clinic) ? this : new Calculations(new TippedIncisors(own), force, own, line, asked);
    }

    /** Published rules and plane geometry; no beam model. */
    public static Calculations plain() {
        return PLAIN;
    }
}
