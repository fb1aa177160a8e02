package dev.fairlead.measure.mechanics.solver;

import dev.fairlead.measure.mechanics.element.ChainMatrix;
import dev.fairlead.measure.mechanics.element.FrameState;
import dev.fairlead.measure.mechanics.element.Rotations;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A node of which one rotation is held and two are free: it turns by a rotation vector without the held component. To
 * hold the spins about the axis one by one would let the state of balance depend on the way it was reached.
 *
 * <p>The spin about the axis then follows the two others, and the tangent gains for each hinge a product of a column
 * and a row, which is not symmetric: it is left out of the factorisation and put into the solution (J. Sherman and W.
 * Morrison, Ann. Math. Stat. 21 (1950) 124).
 */
final class Hinge {
    private final int node;
    private final int axis;
    private final double[] vector = new double[3];
    /** Spin about the held axis per spin about each axis. */
    private final double[] follows = new double[3];

    private final double[] column;
    private double scale;

    private Hinge(int node, int axis, int size) {
        this.node = node;
        this.axis = axis;
        column = new double[size];
    }

    static List<Hinge> of(boolean[] held) {
        List<Hinge> all = new ArrayList<>();
        for (int n = 0; n < held.length / 6; n++) {
            int only = -1;
            int count = 0;
            for (int k = 0; k < 3; k++) {
                if (held[6 * n + 3 + k]) {
                    only = k;
                    count++;
                }
            }
            if (count == 1) {
                all.add(new Hinge(n, only, held.length));
            }
        }
        return List.copyOf(all);
    }

    /** Takes the held component out of the node's rotation vector. */
    void hold(FrameState state) {
        double[] r = state.rotation;
        Rotations.logarithm(Arrays.copyOfRange(r, 9 * node, 9 * node + 9), vector, 0);
        vector[axis] = 0;
        for (int k = 0; k < 9; k++) {
            r[9 * node + k] = k % 4 == 0 ? 1 : 0;
        }
        Rotations.rotate(r, 9 * node, vector[0], vector[1], vector[2]);
    }

    /**
     * Before the matrix of that state is factorised: false when the spin about the axis does not depend on the others
     * yet.
     */
    boolean prepare(FrameState state, ChainMatrix matrix) {
        Rotations.logarithm(Arrays.copyOfRange(state.rotation, 9 * node, 9 * node + 9), vector, 0);
        int a = (axis + 1) % 3;
        int b = (axis + 2) % 3;
        double t = Math.hypot(vector[a], vector[b]);
        if (t == 0) {
            return false;
        }
        double factor = Math.tan(t / 2) / t;
        follows[axis] = 0;
        follows[a] = -factor * vector[b];
        follows[b] = factor * vector[a];
        matrix.column(held(), column);
        return true;
    }

    /** After the factorisation, hinge by hinge: the solution of the column, reckoning with the hinges before. */
    void solve(ChainMatrix matrix, List<Hinge> before) {
        matrix.solve(column, ChainMatrix.firstInColumn(held()));
        for (Hinge h : before) {
            h.correct(column);
        }
        scale = 1 / (1 + spin(column));
    }

    /** The degree of freedom that does as the others tell it. */
    private int held() {
        return 6 * node + 3 + axis;
    }

    private double spin(double[] x) {
        int o = 6 * node + 3;
        return follows[0] * x[o] + follows[1] * x[o + 1] + follows[2] * x[o + 2];
    }

    /** Puts the hinge into a solution that reckons with the hinges before. */
    void correct(double[] x) {
        double share = scale * spin(x);
        for (int i = 0; i < x.length; i++) {
            x[i] -= share * column[i];
        }
    }

    /** Puts the spin about the held axis into a step. */
    void follow(double[] x) {
        x[held()] = spin(x);
    }
}
