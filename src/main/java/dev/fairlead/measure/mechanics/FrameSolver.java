package dev.fairlead.measure.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Equilibrium of a wire under imposed displacements and dead loads, by linear theory or by Newton's method from rest in steps of the
 * load.
 *
 * <p>A step that does not converge, or whose tangent is not positive definite, is halved; after {@link #MAX_HALVINGS} the solver gives up and
 * says why.
 */
final class FrameSolver {
    private static final int MAX_ITERATIONS = 20;
    private static final int MAX_HALVINGS = 6;
    /** Largest force out of balance, as a share of the largest support force. */
    private static final double FORCE_TOLERANCE = 1e-7;
    /** Units in the last place of a coordinate that may be lost in the relative displacement of an element's ends. */
    private static final double LOST_PLACES = 4;

    private static final String UNSTABLE = "the tangent stiffness is not positive definite";
    private static final String TOO_FAR = "an element was turned further than the model can describe";

    /** What the solver hands over at each wanted share of the load. */
    interface Recorder {
        void at(double fraction, Equilibrium equilibrium);
    }

    private final Frame frame;
    private final boolean[] held;
    private final ChainMatrix matrix;
    private final List<Hinge> hinges;
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
    private String failure = "";

    /** @param held per degree of freedom, six per node: translation is imposed (zero unless said otherwise), rotation is blocked */
    FrameSolver(Frame frame, boolean[] held) {
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
    private static double roundOff(Frame frame) {
        double farthest = 0;
        for (double x : frame.rest) {
            farthest = Math.max(farthest, Math.abs(x));
        }
        double stiffest = 0;
        for (int e = 0; e < frame.elements(); e++) {
            double l = frame.length[e];
            stiffest = Math.max(stiffest, frame.section.ea() / l + 12 * Math.max(frame.section.eiY(), frame.section.eiZ()) / (l * l * l));
        }
        return LOST_PLACES * Math.ulp(farthest) * stiffest;
    }

    int iterations() {
        return iterations;
    }

    String failure() {
        return failure;
    }

    /** Small displacements: one solution of the stiffness matrix at rest. Empty: the frame is a mechanism. */
    Optional<Equilibrium> linear(double[] imposed, double[] loads) {
        FrameState rest = FrameState.atRest(frame);
        rest();
        iterations = 1;
        double[] u = new double[held.length];
        for (int i = 0; i < u.length; i++) {
            residual[i] = loads[i];
            u[i] = held[i] ? imposed[i] : 0;
        }
        if (!solve(rest, u)) {
            failure = "the wire is not held: its stiffness matrix is singular";
            return Optional.empty();
        }
        Arrays.fill(internal, 0);
        double stored = 0;
        for (int e = 0; e < frame.elements(); e++) {
            element.linear(frame, e, u);
            gather(e);
            stored += element.beam.energy;
        }
        rest.advance(u);
        return Optional.of(new Equilibrium(frame, rest, u, internal.clone(), ends.clone(), new double[turns.length], stored));
    }

    /**
     * Solves for a step out of the residual.
     *
     * @param out what the held degrees of freedom do; is filled with what all do
     * @return false when the matrix is not positive definite
     */
    private boolean solve(FrameState state, double[] out) {
        matrix.subtractProduct(out, residual);
        List<Hinge> turned = new ArrayList<>();
        for (Hinge h : hinges) {
            if (h.prepare(state, matrix)) {
                turned.add(h);
            }
        }
        if (!matrix.factorise()) {
            return false;
        }
        for (int i = 0; i < out.length; i++) {
            out[i] = held[i] ? out[i] : residual[i];
        }
        matrix.solve(out);
        for (int i = 0; i < turned.size(); i++) {
            turned.get(i).solve(matrix, turned.subList(0, i));
            turned.get(i).correct(out);
        }
        turned.forEach(h -> h.follow(out));
        return true;
    }

    /**
     * Large rotations: follows the load up from rest through the given rising shares of it (the last normally 1).
     *
     * @return empty when every share was reached, else why not
     */
    Optional<String> follow(double[] imposed, double[] loads, double[] fractions, Recorder recorder) {
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
                        return Optional.of("no equilibrium found beyond %.0f %% of the load: %s".formatted(100 * reached, failure));
                    }
                }
            }
            if (!matrix.factorise()) {
                return Optional.of("the balance found at %.0f %% of the load is not stable".formatted(100 * wanted));
            }
            recorder.at(wanted, balance(state));
        }
        return Optional.empty();
    }

    private Equilibrium balance(FrameState state) {
        return new Equilibrium(frame, state.copy(), null, internal.clone(), ends.clone(), turns.clone(), energy);
    }

    /** Leaves the tangent at the balance found assembled, though not factorised. */
    private boolean converge(FrameState state, double[] imposed, double[] loads, double from, double share) {
        failure = "";
        if (from == 0) {
            rest();
        } else if (!assemble(state, false, false)) {
            return false;
        }
        for (int i = 0; i <= MAX_ITERATIONS; i++) {
            for (int k = 0; k < step.length; k++) {
                residual[k] = loads[k] * share - internal[k];
                boolean moved = i == 0 && held[k] && k % 6 < 3;
                int at = k / 6 * 3 + k % 6;
                step[k] = moved ? frame.rest[at] + imposed[k] * share - state.position[at] : 0;
            }
            if (i > 0 && balanced(loads, share)) {
                return true;
            }
            if (i == MAX_ITERATIONS) {
                break;
            }
            if (!solve(state, step)) {
                // far from balance spurious axial forces can spoil the tangent; its material part alone is always definite
                boolean softened = i > 0 && assemble(state, true, false);
                for (int k = 0; softened && k < step.length; k++) {
                    residual[k] = loads[k] * share - internal[k];
                    step[k] = 0;
                }
                if (!softened || !solve(state, step)) {
                    failure = UNSTABLE;
                    return false;
                }
            }
            for (int e = 0; e < frame.elements(); e++) {
                element.expect(memory, frame, e, step, stress, expected);
            }
            state.advance(step);
            hinges.forEach(h -> h.hold(state));
            iterations++;
            if (!assemble(state, false, true)) {
                return false;
            }
        }
        failure = "no convergence in " + MAX_ITERATIONS + " iterations";
        return false;
    }

    /** The unloaded wire. */
    private void rest() {
        Frame.AtRest rest = frame.atRest();
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
     * @param foreseen the tangent reckons with the stresses that the last step led to expect. A wire hardly stretches, so that on the way every
     *     element seems pulled or pressed by far more than it will be, which spoils the tangent (D. Magisano, L. Leonetti and G. Garcea, Comput.
     *     Methods Appl. Mech. Eng. 313 (2017) 467, take the stress for an unknown of its own; this is the same; cited from memory)
     */
    private boolean assemble(FrameState state, boolean materialOnly, boolean foreseen) {
        matrix.clear();
        Arrays.fill(internal, 0);
        energy = 0;
        for (int e = 0; e < frame.elements(); e++) {
            if (!element.force(frame, e, state)) {
                failure = TOO_FAR;
                return false;
            }
            gather(e);
            energy += element.beam.energy;
            System.arraycopy(element.beam.theta, 0, turns, 6 * e, 6);
            System.arraycopy(element.beam.stress, 0, stress, 7 * e, 7);
            element.keep(memory, e);
            element.tangent(frame, e, materialOnly, foreseen ? expected : null);
            element.stiffness.addTo(matrix, e);
        }
        return true;
    }

    private void gather(int e) {
        for (int i = 0; i < 12; i++) {
            internal[6 * e + i] += element.force[i];
        }
        System.arraycopy(element.beam.section, 0, ends, 7 * e, 7);
    }

    private boolean balanced(double[] loads, double share) {
        double worst = 0;
        double scale = 0;
        for (int k = 0; k < internal.length; k++) {
            double out = Math.abs(internal[k] - loads[k] * share);
            if (held[k]) {
                scale = Math.max(scale, out);
            } else {
                worst = Math.max(worst, out);
                scale = Math.max(scale, Math.abs(loads[k] * share));
            }
        }
        return worst <= FORCE_TOLERANCE * scale + roundOff;
    }
}
