package dev.fairlead.measure.mechanics;

import java.util.Arrays;
import java.util.Optional;

/**
 * Equilibrium of a frame under imposed displacements and dead loads, by linear theory or by load stepping with Newton's method.
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
    private final StiffnessSystem system;
    private final CorotationalElement element = new CorotationalElement();
    private final double[] internal;
    private final double[] residual;
    private final double[] step;
    private final double[] ends;
    private final double roundOff;
    private int iterations;
    private double energy;
    private String failure = "";

    /** @param held per degree of freedom, six per node: translation is imposed (zero unless said otherwise), rotation is blocked */
    FrameSolver(Frame frame, boolean[] held) {
        this.frame = frame;
        this.held = held;
        this.system = new StiffnessSystem(frame, held);
        internal = new double[held.length];
        residual = new double[held.length];
        step = new double[held.length];
        ends = new double[7 * frame.elements()];
        roundOff = roundOff(frame);
    }

    /** Force that comes of rounding the coordinates of a short and therefore stiff element, N. */
    private static double roundOff(Frame frame) {
        double farthest = Arrays.stream(frame.rest).map(Math::abs).max().orElse(0);
        double shortest = Arrays.stream(frame.length).min().orElse(1);
        double bending = 12 * Math.max(frame.section.eiY(), frame.section.eiZ()) / Math.pow(shortest, 3);
        return LOST_PLACES * Math.ulp(farthest) * (frame.section.ea() / shortest + bending);
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
        double[][] stiffness = new double[frame.elements()][];
        system.clear();
        Arrays.fill(residual, 0);
        for (int e = 0; e < frame.elements(); e++) {
            element.forceAndTangent(frame, e, rest, false);
            stiffness[e] = element.tangent.clone();
            system.add(e, element.tangent);
            moveKnownToRight(e, element.tangent, imposed);
        }
        iterations = 1;
        if (!system.factorise()) {
            failure = "the wire is not held: its stiffness matrix is singular";
            return Optional.empty();
        }
        double[] u = new double[held.length];
        for (int i = 0; i < u.length; i++) {
            residual[i] += loads[i];
            u[i] = held[i] ? imposed[i] : 0;
        }
        system.solve(residual, u);
        return Optional.of(linearResult(u, stiffness));
    }

    private Equilibrium linearResult(double[] u, double[][] stiffness) {
        Arrays.fill(internal, 0);
        double[] f = new double[12];
        energy = 0;
        for (int e = 0; e < frame.elements(); e++) {
            for (int i = 0; i < 12; i++) {
                f[i] = 0;
                for (int j = 0; j < 12; j++) {
                    f[i] += stiffness[e][12 * i + j] * u[StiffnessSystem.degree(frame, e, j)];
                }
                int dof = StiffnessSystem.degree(frame, e, i);
                internal[dof] += f[i];
                energy += 0.5 * f[i] * u[dof];
            }
            sectionForces(e, f);
        }
        FrameState moved = FrameState.atRest(frame);
        moved.advance(u);
        return new Equilibrium(frame, moved, u, internal.clone(), ends.clone(), energy);
    }

    /** Turns the end forces of a linear element into axial force and end moments along the element's own axes. */
    private void sectionForces(int e, double[] f) {
        int o = 7 * e;
        double[] axes = frame.axes;
        ends[o] = 0;
        for (int i = 0; i < 3; i++) {
            ends[o] += axes[9 * e + 3 * i] * f[6 + i];
            ends[o + 1 + i] = 0;
            ends[o + 4 + i] = 0;
            for (int k = 0; k < 3; k++) {
                ends[o + 1 + i] += axes[9 * e + 3 * k + i] * f[3 + k];
                ends[o + 4 + i] += axes[9 * e + 3 * k + i] * f[9 + k];
            }
        }
    }

    private void moveKnownToRight(int e, double[] tangent, double[] imposed) {
        for (int j = 0; j < 12; j++) {
            int known = StiffnessSystem.degree(frame, e, j);
            if (held[known] && imposed[known] != 0) {
                for (int i = 0; i < 12; i++) {
                    residual[StiffnessSystem.degree(frame, e, i)] -= tangent[12 * i + j] * imposed[known];
                }
            }
        }
    }

    /**
     * Large rotations: follows the load up through the given rising shares of it (the last normally 1).
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
                if (converge(state, imposed, next - reached, loads, next)) {
                    reached = next;
                } else {
                    state.set(before);
                    size /= 2;
                    if (size < smallest) {
                        return Optional.of("no equilibrium found beyond %.0f %% of the load: %s".formatted(100 * reached, failure));
                    }
                }
            }
            if (!system.factorise()) {
                return Optional.of("the balance found at %.0f %% of the load is not stable".formatted(100 * wanted));
            }
            recorder.at(wanted, new Equilibrium(frame, state.copy(), null, internal.clone(), ends.clone(), energy));
        }
        return Optional.empty();
    }

    /** Leaves the tangent at the balance found assembled, though not factorised. */
    private boolean converge(FrameState state, double[] imposed, double share, double[] loads, double total) {
        failure = "";
        if (!assemble(state, imposed, share, loads, total, false)) {
            return false;
        }
        if (!system.factorise()) {
            failure = UNSTABLE;
            return false;
        }
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            for (int k = 0; k < step.length; k++) {
                step[k] = i == 0 && held[k] && k % 6 < 3 ? imposed[k] * share : 0;
            }
            system.solve(residual, step);
            state.advance(step);
            iterations++;
            if (!assemble(state, null, 0, loads, total, false)) {
                return false;
            }
            if (balanced(loads, total)) {
                return true;
            }
            // far from balance spurious axial forces can spoil the tangent; its material part alone is always definite
            if (!system.factorise() && !(assemble(state, null, 0, loads, total, true) && system.factorise())) {
                failure = UNSTABLE;
                return false;
            }
        }
        failure = "no convergence in " + MAX_ITERATIONS + " iterations";
        return false;
    }

    private boolean assemble(FrameState state, double[] imposed, double share, double[] loads, double total, boolean materialOnly) {
        system.clear();
        Arrays.fill(internal, 0);
        Arrays.fill(residual, 0);
        energy = 0;
        for (int e = 0; e < frame.elements(); e++) {
            if (!element.forceAndTangent(frame, e, state, materialOnly)) {
                failure = TOO_FAR;
                return false;
            }
            gather(e);
            energy += element.beam.energy;
            System.arraycopy(element.beam.section, 0, ends, 7 * e, 7);
            system.add(e, element.tangent);
            if (imposed != null) {
                moveKnownToRight(e, element.tangent, imposed);
            }
        }
        for (int k = 0; k < residual.length; k++) {
            residual[k] = residual[k] * share + loads[k] * total - internal[k];
        }
        return true;
    }

    private void gather(int e) {
        for (int i = 0; i < 12; i++) {
            internal[StiffnessSystem.degree(frame, e, i)] += element.force[i];
        }
    }

    private boolean balanced(double[] loads, double total) {
        double worst = 0;
        double scale = 0;
        for (int k = 0; k < internal.length; k++) {
            double out = Math.abs(internal[k] - loads[k] * total);
            if (held[k]) {
                scale = Math.max(scale, out);
            } else {
                worst = Math.max(worst, out);
                scale = Math.max(scale, Math.abs(loads[k] * total));
            }
        }
        return worst <= FORCE_TOLERANCE * scale + roundOff;
    }
}
