package dev.fairlead.measure.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** Sparse symmetric stiffness matrix over the free degrees of freedom, its structure laid out once for many factorisations. */
final class StiffnessSystem {
    /** Equation of each degree of freedom, six per node; -1 when held. */
    final int[] equation;
    final int size;

    private final DMatrixSparseCSC matrix;
    private final int[] slots;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private final DMatrixRMaj rhs;
    private final DMatrixRMaj solution;

    StiffnessSystem(Frame frame, boolean[] held) {
        equation = new int[held.length];
        int n = 0;
        for (int i = 0; i < held.length; i++) {
            equation[i] = held[i] ? -1 : n++;
        }
        size = n;
        rhs = new DMatrixRMaj(n, 1);
        solution = new DMatrixRMaj(n, 1);
        matrix = structure(frame);
        slots = new int[144 * frame.elements()];
        for (int e = 0; e < frame.elements(); e++) {
            for (int k = 0; k < 144; k++) {
                int r = equation[degree(frame, e, k / 12)];
                int c = equation[degree(frame, e, k % 12)];
                slots[144 * e + k] = r >= 0 && c >= r
                        ? Arrays.binarySearch(matrix.nz_rows, matrix.col_idx[c], matrix.col_idx[c + 1], r)
                        : -1;
            }
        }
    }

    /** Where non-zeros can be. The factorisation reads the upper triangle alone, so only rows up to the diagonal are stored. */
    private DMatrixSparseCSC structure(Frame frame) {
        List<TreeSet<Integer>> lowerNeighbours = new ArrayList<>();
        for (int n = 0; n < frame.nodes(); n++) {
            lowerNeighbours.add(new TreeSet<>(List.of(n)));
        }
        for (int e = 0; e < frame.elements(); e++) {
            lowerNeighbours.get(Math.max(frame.from[e], frame.to[e])).add(Math.min(frame.from[e], frame.to[e]));
        }
        var m = new DMatrixSparseCSC(size, size, 18 * size);
        for (int dof = 0; dof < equation.length; dof++) {
            int column = equation[dof];
            if (column < 0) {
                continue;
            }
            for (int node : lowerNeighbours.get(dof / 6)) {
                for (int k = 6 * node; k < 6 * node + 6 && k <= dof; k++) {
                    if (equation[k] >= 0) {
                        if (m.nz_length == m.nz_rows.length) {
                            m.growMaxLength(2 * m.nz_length, true);
                        }
                        m.nz_rows[m.nz_length++] = equation[k];
                    }
                }
            }
            m.col_idx[column + 1] = m.nz_length;
        }
        m.indicesSorted = true;
        return m;
    }

    static int degree(Frame frame, int e, int i) {
        return i < 6 ? 6 * frame.from[e] + i : 6 * frame.to[e] + i - 6;
    }

    void clear() {
        Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
    }

    void add(int e, double[] tangent) {
        int base = 144 * e;
        for (int k = 0; k < 144; k++) {
            int slot = slots[base + k];
            if (slot >= 0) {
                matrix.nz_values[slot] += tangent[k];
            }
        }
    }

    /** Factorises; false when the matrix is not positive definite: the frame in this state is a mechanism or unstable. */
    boolean factorise() {
        if (!solver.setA(matrix)) {
            return false;
        }
        solver.setStructureLocked(true);
        return true;
    }

    /** Solves for a right-hand side given per degree of freedom and writes the free entries of out; held ones are left alone. */
    void solve(double[] perDegree, double[] out) {
        for (int i = 0; i < equation.length; i++) {
            if (equation[i] >= 0) {
                rhs.data[equation[i]] = perDegree[i];
            }
        }
        solver.solve(rhs, solution);
        for (int i = 0; i < equation.length; i++) {
            if (equation[i] >= 0) {
                out[i] = solution.data[equation[i]];
            }
        }
    }
}
