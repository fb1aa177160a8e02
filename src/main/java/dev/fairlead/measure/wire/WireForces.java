package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.mechanics.answer.BandResult;
import dev.fairlead.measure.mechanics.answer.BandResult.NoBand;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.working.LatestAnswers;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * All that the beam model says of one case's wire at one stand-off: force with its band and how it falls, reactions,
 * stress.
 *
 * @param standOffRight how far the passive front stands before the brackets on account of the right fold, mm
 * @param standOffLeft the same on the left, mm
 * @param foldsMeasured folds as measured on the bench; else what was not measured is as planned, with a margin to both
 *     sides
 * @param modulus of elasticity; empty when nothing allows to say it
 * @param proof 0.2 % proof strength, MPa
 * @param band the answer; empty when something is missing or the model found no balance
 * @param vertical total vertical force, N, least and most over both tube conditions, occlusal positive; empty unless
 *     both tubes' heights are measured
 * @param missing pointers to what an answer needs and the case does not say
 * @param failures why the model found no balance, each cause once; empty when it did, or was not asked
 */
public record WireForces(
        Measured standOffRight,
        Measured standOffLeft,
        boolean foldsMeasured,
        Optional<Elastic> modulus,
        Measured proof,
        Optional<ForceBand> band,
        Optional<Vertical> vertical,
        List<String> missing,
        List<String> failures) {

    /** Total vertical force, N, occlusal positive. */
    public record Vertical(double least, double most) {}

    /** What the model cannot know; told wherever its numbers are. */
    public static final List<String> LIMITS = List.of(
            "No bench test stands behind the model; even with everything measured it is true to a factor of about two at best.",
            "It says nothing of the share of each incisor, which follows slack in the ligatures too fine to know: a quarter of the total is a mean.",
            "Without measured heights of tubes and brackets not even the sign of the vertical force is known.",
            "Give of the teeth in their sockets (some 20 % less force), friction, chewing, how fast teeth move and what roots bear are not in it, and"
                    + " no force is called the right one.",
            "A gauge reading at tie-in overrides it.");

    private static final double LEAST_STAND_OFF = 0.05;
    private static final String PASSIVE = "the front lies at the brackets, so the wire is passive";
    private static final int REMEMBERED = 64;
    private static final LatestAnswers<BandAsk, BandResult> ANSWERS = new LatestAnswers<>(REMEMBERED, BandAsk::answer);

    public WireForces {
        missing = List.copyOf(missing);
        failures = List.copyOf(failures);
    }

    /**
     * With the planned stand-off on both sides; {@code limits} are stresses whose stand-off is wanted, MPa, beside the
     * proof strength.
     */
    public static WireForces planned(Case c, double... limits) {
        return of(c, c.plan().standOff(Side.RIGHT), c.plan().standOff(Side.LEFT), limits);
    }

    /** With the stand-offs measured at a visit. */
    public static WireForces atVisit(Case c, int index, double... limits) {
        return of(
                c,
                c.visits().get(index).right().standOff(),
                c.visits().get(index).left().standOff(),
                limits);
    }

    /** With these stand-offs. */
    public static WireForces of(Case c, Measured right, Measured left, double... limits) {
        Optional<Elastic> e = Elastic.of(c.wire());
        Measured proof = Elastic.proof(c.wire());
        boolean measured = FoldGuess.measured(c);
        BeamInputs inputs = BeamInputs.withoutFolds(c, right, left);
        List<String> missing = inputs.missing();
        if (!missing.isEmpty()) {
            return new WireForces(
                    right, left, measured, e, proof, Optional.empty(), Optional.empty(), missing, List.of());
        }
        if (Math.max(right.value(), left.value()) < LEAST_STAND_OFF) {
            return new WireForces(
                    right, left, measured, e, proof, Optional.empty(), Optional.empty(), List.of(), List.of(PASSIVE));
        }
        BandAsk ask = inputs.band(e.orElseThrow(), limits(proof, limits), right.value(), left.value());
        BandResult result = ANSWERS.of(ask);
        if (!(result instanceof ForceBand band)) {
            return new WireForces(
                    right,
                    left,
                    measured,
                    e,
                    proof,
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    causes(((NoBand) result).reasons()));
        }
        return new WireForces(
                right, left, measured, e, proof, Optional.of(band), vertical(c, ask, e.get()), List.of(), List.of());
    }

    /** One end of the band with the error of what was measured, gf; unknown where there is no band. */
    public Measured end(Case c, boolean high) {
        if (band.isEmpty()) {
            return Measured.unknown(missing);
        }
        Measured low = Measured.exact(Unit.NEWTON.to(Unit.GF, band.get().low()), Unit.GF);
        Measured most = Measured.exact(Unit.NEWTON.to(Unit.GF, band.get().high()), Unit.GF);
        Forces with = ForceLaw.of(c, standOffLeft, standOffRight, PatientArch.of(c))
                .withErrors(new Forces(low, most, Measured.notApplicable(), Measured.notApplicable()));
        return high ? with.high() : with.low();
    }

    /** Held tail, highest modulus: the stress that is judged, MPa; only where there is a band. */
    public double judgedStress() {
        return band.orElseThrow().held().peak().inner()
                * modulus.orElseThrow().high()
                / modulus.get().usual();
    }

    /** The band and the stress by draws of what was measured; empty where there is no band. */
    public Optional<DrawnForces> drawn(Case c) {
        return band.map(b -> ForceLaw.of(c, standOffLeft, standOffRight, PatientArch.of(c))
                .drawn(Unit.NEWTON.to(Unit.GF, b.low()), Unit.NEWTON.to(Unit.GF, b.high()), judgedStress()));
    }

    /** Variants of tube and ties mostly fail for one cause, which stands behind the name of the variant. */
    private static List<String> causes(List<String> reasons) {
        return reasons.stream()
                .map(r -> r.substring(r.indexOf(": ") + 2))
                .distinct()
                .toList();
    }

    private static List<Double> limits(Measured proof, double[] others) {
        return DoubleStream.concat(
                        proof.known() ? DoubleStream.of(proof.value()) : DoubleStream.empty(), Arrays.stream(others))
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }

    private static Optional<Vertical> vertical(Case c, BandAsk ask, Elastic e) {
        Measured left = c.hardware().left().aboveBrackets();
        Measured right = c.hardware().right().aboveBrackets();
        if (!left.known() || !right.known()) {
            return Optional.empty();
        }
        BeamAnswer answer = BeamAnswer.ofFourTied(ask.nominal().withTubesAbove((left.value() + right.value()) / 2));
        if (!answer.found()) {
            return Optional.empty();
        }
        double[] ends = {
            answer.upHinged() * e.low(),
            answer.upHinged() * e.high(),
            answer.upHeld() * e.low(),
            answer.upHeld() * e.high()
        };
        return Optional.of(new Vertical(
                Arrays.stream(ends).min().orElseThrow() / BeamCase.E,
                Arrays.stream(ends).max().orElseThrow() / BeamCase.E));
    }
}
