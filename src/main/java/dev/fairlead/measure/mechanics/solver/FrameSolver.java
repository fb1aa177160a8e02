package dev.fairlead.measure.mechanics.solver;

import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.ChainMatrix;
import dev.fairlead.measure.mechanics.element.CorotationalElement;
import dev.fairlead.measure.mechanics.element.FrameState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Equilibrium of a wire under imposed displacements and dead loads, by linear theory or by Newton's method from rest in
 * steps of the load.
 *
 * <p>A step that does not converge, or whose tangent is not positive definite, is halved; after {@link #MAX_HALVINGS}
 * the solver gives up and says why.
 */
public final class FrameSolver {
    private static final int MAX_ITERATIONS = 20;
    private static final int MAX_HALVINGS = 6;
    /** Largest force out of balance, as a share of the largest support force. */
    private static final double FORCE_TOLERANCE = 1e-7;
    /**
     * When the forces are out of balance by less than so many times that, the tangent is as good as that at the
     * balance.
     */
    private static final double NEAR = 1e5;
    /** A tangent is used again as long as a step by it leaves less than this share of what was out of balance. */
    private static final double WORTHWHILE = 0.1;
    /** Units in the last place of a coordinate that may be lost in the relative displacement of an element's ends. */
    private static final double LOST_PLACES = 4;

    private static final String UNSTABLE = "the tangent stiffness is not positive definite";
    private static final String TOO_FAR = "an element was turned further than the model can describe";

    /** What the solver hands over at each wanted share of the load. */
    public interface Recorder {
        void at(double fraction, Equilibrium equilibrium);
    }

    private final BeamFrame frame;
    private final boolean[] held;
    private final ChainMatrix matrix;
    private final List<Hinge> hinges;
    /** Those that the matrix was factorised with. */
    private final List<Hinge> turned = new ArrayList<>();

    private final CorotationalElement element = new CorotationalElement();
    private final double[] internal;
    private final double[] residual;
    private final double[] step;
    private final double[] ends;
    private final double[] turns;
    private final double[] stress;
    private final double[] expected;
    private final double[] memory;
    private final double roundOff;
    private int iterations;
    private double energy;
    /** The matrix is factorised out of a tangent that was taken near the balance. */
    private boolean near;

    private String failure = "";

    /**
     * @param held per degree of freedom, six per node: translation is imposed (zero unless said otherwise), rotation is
     *     blocked
     */
    public FrameSolver(BeamFrame frame, boolean[] held) {
        this.frame = frame;
        this.held = held;
        matrix = new ChainMatrix(held);
        hinges = Hinge.of(held);
        internal = new double[held.length];
        residual = new double[held.length];
        step = new double[held.length];
        ends = new double[7 * frame.elements()];
        turns = new double[6 * frame.elements()];
        stress = new double[ends.length];
        expected = new double[ends.length];
        memory = new double[CorotationalElement.KEPT * frame.elements()];
        roundOff = roundOff(frame);
    }

    /** Force that comes of rounding the coordinates of a short and therefore stiff element, N. */
    private static double roundOff(BeamFrame frame) {
        double farthest = 0;
        for (double x : frame.rest) {
            farthest = Math.max(farthest, Math.abs(x));
        }
        double stiffest = 0;
        for (int e = 0; e < frame.elements(); e++) {
            double l = frame.length[e];
            stiffest = Math.max(
                    stiffest,
                    frame.section.ea() / l + 12 * Math.max(frame.section.eiY(), frame.section.eiZ()) / (l * l * l));
        }
        return LOST_PLACES * Math.ulp(farthest) * stiffest;
    }

    public int iterations() {
        return iterations;
    }

    public String failure() {
        return failure;
    }

    /** Small displacements: one solution of the stiffness matrix at rest. Empty: the frame is a mechanism. */
    public Optional<Equilibrium> linear(double[] imposed, double[] loads) {
        FrameState rest = FrameState.atRest(frame);
        rest();
        iterations = 1;
        double[] u = new double[held.length];
        for (int i = 0; i < u.length; i++) {
            residual[i] = loads[i];
            u[i] = held[i] ? imposed[i] : 0;
        }
        if (!factorise(rest, u)) {
            failure = "the wire is not held: its stiffness matrix is singular";
            return Optional.empty();
        }
        substitute(u);
        Arrays.fill(internal, 0);
        double stored = 0;
        for (int e = 0; e < frame.elements(); e++) {
            element.linear(frame, e, u);
            gather(e);
            stored += element.beam.energy;
        }
        rest.advance(u);
        return Optional.of(
                new Equilibrium(frame, rest, u, internal.clone(), ends.clone(), new double[turns.length], stored));
    }

    /**
     * Factorises the tangent.
     *
     * @param imposed what the held degrees of freedom do in the step to come; the residual takes it in
     * @return false when the matrix is not positive definite
     */
    private boolean factorise(FrameState state, double[] imposed) {
        matrix.subtractProduct(imposed, residual);
        turned.clear();
        for (Hinge h : hinges) {
            if (h.prepare(state, matrix)) {
                turned.add(h);
            }
        }
        if (!matrix.factorise()) {
            return false;
        }
        for (int i = 0; i < turned.size(); i++) {
            turned.get(i).solve(matrix, turned.subList(0, i));
        }
        return true;
    }

    /**
     * Solves for a step out of the residual, by the tangent factorised last.
     *
     * @param out what the held degrees of freedom do; is filled with what all do
     */
    private void substitute(double[] out) {
        for (int i = 0; i < out.length; i++) {
            if (!held[i]) {
                out[i] = residual[i];
            }
        }
        matrix.solve(out);
        for (Hinge h : turned) {
            h.correct(out);
        }
        for (Hinge h : turned) {
            h.follow(out);
        }
    }

    /**
     * Large rotations: follows the load up from rest through the given rising shares of it (the last normally 1).
     *
     * @return empty when every share was reached, else why not
     */
    public Optional<String> follow(double[] imposed, double[] loads, double[] fractions, Recorder recorder) {
        FrameState state = FrameState.atRest(frame);
        FrameState before = state.copy();
        iterations = 0;
        double reached = 0;
        for (double wanted : fractions) {
            double size = wanted - reached;
            double smallest = size / (1 << MAX_HALVINGS);
            while (reached < wanted) {
                double next = wanted - reached <= size * 1.000001 ? wanted : reached + size;
                before.set(state);
                if (converge(state, imposed, loads, reached, next)) {
                    reached = next;
                } else {
                    state.set(before);
                    size /= 2;
                    if (size < smallest) {
                        return Optional.of("no equilibrium found beyond %.0f %% of the load: %s"
                                .formatted(100 * reached, failure));
                    }
                }
            }
            if (!near && !matrix.factorise()) {
                return Optional.of("the balance found at %.0f %% of the load is not stable".formatted(100 * wanted));
            }
            recorder.at(wanted, balance(state));
        }
        return Optional.empty();
    }

    private Equilibrium balance(FrameState state) {
        return new Equilibrium(frame, state.copy(), null, internal.clone(), ends.clone(), turns.clone(), energy);
    }

    /**
     * Leaves the tangent at the balance found assembled, though not factorised, unless the last one was factorised near
     * to it.
     */
    private boolean converge(FrameState state, double[] imposed, double[] loads, double from, double share) {
        failure = "";
        near = false;
        if (from == 0) {
            rest();
        } else if (!assemble(state, false, false)) {
            return false;
        }
        Arrays.fill(step, 0);
        for (int k = 0; k < step.length; k++) {
            if (held[k] && k % 6 < 3) {
                int at = k / 6 * 3 + k % 6;
                step[k] = frame.rest[at] + imposed[k] * share - state.position[at];
            }
        }
        double out = unbalanced(loads, share);
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            boolean whole = near || factorise(state, step);
            // far from balance spurious axial forces can spoil the tangent; its material part alone is always definite,
            // and so says nothing of stability
            if (!whole && !(i > 0 && assemble(state, true, false) && factorise(state, step))) {
                failure = UNSTABLE;
                return false;
            }
            substitute(step);
            near = whole && i > 0 && out < NEAR;
            for (int e = 0; !near && e < frame.elements(); e++) {
                element.expect(memory, frame, e, step, stress, expected);
            }
            state.advance(step);
            for (Hinge h : hinges) {
                h.hold(state);
            }
            iterations++;
            if (!(near ? forces(state) : assemble(state, false, true))) {
                return false;
            }
            double before = out;
            out = unbalanced(loads, share);
            if (out <= 1) {
                return true;
            }
            if (near && !(out < WORTHWHILE * before)) {
                near = false;
                if (!assemble(state, false, false)) {
                    return false;
                }
            }
            Arrays.fill(step, 0);
        }
        failure = "no convergence in " + MAX_ITERATIONS + " iterations";
        return false;
    }

    /** The unloaded wire. */
    private void rest() {
        BeamFrame.AtRest rest = frame.atRest();
        System.arraycopy(rest.own(), 0, matrix.own, 0, matrix.own.length);
        System.arraycopy(rest.next(), 0, matrix.next, 0, matrix.next.length);
        System.arraycopy(rest.memory(), 0, memory, 0, memory.length);
        for (double[] nothing : new double[][] {internal, stress, ends, turns}) {
            Arrays.fill(nothing, 0);
        }
        energy = 0;
    }

    /**
     * Internal forces and tangent.
     *
     * @param foreseen the tangent reckons with the stresses that the last step led to expect. A wire hardly stretches,
     *     so that on the way every element seems pulled or pressed by far more than it will be, which spoils the
     *     tangent (D. Magisano, L. Leonetti and G. Garcea, Comput. Methods Appl. Mech. Eng. 313 (2017) 467, take the
     *     stress for an unknown of its own; this is the same; cited from memory)
     */
    private boolean assemble(FrameState state, boolean materialOnly, boolean foreseen) {
        matrix.clearFirst();
        nothing();
        for (int e = 0; e < frame.elements(); e++) {
            if (!force(state, e)) {
                return false;
            }
            element.keep(memory, e);
            element.tangent(frame, e, materialOnly, foreseen ? expected : null);
            element.stiffness.addTo(matrix, e);
        }
        return true;
    }

    /** Internal forces alone. */
    private boolean forces(FrameState state) {
        nothing();
        for (int e = 0; e < frame.elements(); e++) {
            if (!force(state, e)) {
                return false;
            }
        }
        return true;
    }

    private void nothing() {
        Arrays.fill(internal, 0);
        energy = 0;
    }

    private boolean force(FrameState state, int e) {
        if (!element.force(frame, e, state)) {
            failure = TOO_FAR;
            return false;
        }
        gather(e);
        energy += element.beam.energy;
        System.arraycopy(element.beam.theta, 0, turns, 6 * e, 6);
        System.arraycopy(element.beam.stress, 0, stress, 7 * e, 7);
        return true;
    }

    private void gather(int e) {
        for (int i = 0; i < 12; i++) {
            internal[6 * e + i] += element.force[i];
        }
        System.arraycopy(element.beam.section, 0, ends, 7 * e, 7);
    }

    /** The residual: how far it is out of balance, 1 being what is tolerated. */
    private double unbalanced(double[] loads, double share) {
        double worst = 0;
        double scale = 0;
        for (int k = 0; k < internal.length; k++) {
            double load = loads[k] * share;
            double r = load - internal[k];
            residual[k] = r;
            if (held[k]) {
                scale = Math.max(scale, Math.abs(r));
            } else {
                worst = Math.max(worst, Math.abs(r));
                scale = Math.max(scale, Math.abs(load));
            }
        }
        return worst / (FORCE_TOLERANCE * scale + roundOff);
    }
}
