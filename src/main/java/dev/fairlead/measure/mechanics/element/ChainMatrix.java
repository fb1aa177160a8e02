package dev.fairlead.measure.mechanics.element;

import java.util.Arrays;

/**
 * Symmetric stiffness matrix of nodes in a row, six degrees of freedom each: a block for every node and one for every
 * pair of neighbours. Factorised by Cholesky block by block; of held degrees of freedom the equation says that they are
 * what they are.
 */
public final class ChainMatrix {
    private static final int B = 6;
    private static final int SIZE = B * B;
    /** A pivot smaller than this share of what stood there before is nothing but rounding. */
    private static final double ROUNDING = 1e-12;

    /** Blocks of the nodes, row-major; only lower triangles count. */
    public final double[] own;
    /** Blocks with the rows of the next node and the columns of this one. */
    public final double[] next;

    private final boolean[] held;
    private final int nodes;

    public ChainMatrix(boolean[] held) {
        this.held = held;
        nodes = held.length / B;
        own = new double[SIZE * nodes];
        next = new double[SIZE * (nodes - 1)];
    }

    /**
     * Before the elements are put in, from the first on: each sets all of its second node's block and of the one
     * between its nodes.
     */
    public void clearFirst() {
        Arrays.fill(own, 0, SIZE, 0);
    }

    /** out -= matrix times x, before it is factorised. */
    public void subtractProduct(double[] x, double[] out) {
        for (int dof = 0; dof < x.length; dof++) {
            if (x[dof] != 0) {
                subtractColumn(dof, x[dof], out);
            }
        }
    }

    private void subtractColumn(int dof, double factor, double[] out) {
        int n = dof / B;
        int j = dof % B;
        int o = B * n;
        int at = SIZE * n;
        for (int i = 0; i < B; i++) {
            out[o + i] -= factor * own[at + (j <= i ? B * i + j : B * j + i)];
            if (n > 0) {
                out[o - B + i] -= factor * next[at - SIZE + B * j + i];
            }
            if (n < nodes - 1) {
                out[o + B + i] -= factor * next[at + B * i + j];
            }
        }
    }

    /** What a column has in rows that are not held, before the matrix is factorised. */
    public void column(int dof, double[] out) {
        Arrays.fill(out, 0);
        subtractColumn(dof, -1, out);
        int before = firstInColumn(dof);
        for (int i = before; i < Math.min(before + 3 * B, out.length); i++) {
            out[i] = held[i] ? 0 : out[i];
        }
    }

    /** Where a column begins to be other than nothing: with the node before. */
    public static int firstInColumn(int dof) {
        return Math.max(0, B * (dof / B - 1));
    }

    /**
     * Factorises in place; false when the matrix is not positive definite: the wire in this state is a mechanism or
     * unstable.
     */
    public boolean factorise() {
        for (int n = 0; n < nodes; n++) {
            hold(n);
            if (n > 0) {
                reduce(SIZE * (n - 1), SIZE * n);
            }
            if (!cholesky(SIZE * n)) {
                return false;
            }
        }
        return true;
    }

    private void hold(int n) {
        for (int k = 0; k < B; k++) {
            if (!held[B * n + k]) {
                continue;
            }
            for (int i = 0; i < B; i++) {
                own[SIZE * n + B * k + i] = 0;
                own[SIZE * n + B * i + k] = 0;
                if (n > 0) {
                    next[SIZE * (n - 1) + B * k + i] = 0;
                }
                if (n < nodes - 1) {
                    next[SIZE * n + B * i + k] = 0;
                }
            }
            own[SIZE * n + B * k + k] = 1;
        }
    }

    /** next := next L'^-1 with the factor L of the node before, then own -= next next'. */
    private void reduce(int before, int at) {
        double[] s = next;
        double[] d = own;
        for (int i = 0; i < B; i++) {
            int row = before + B * i;
            forward(before, s, row);
            double s0 = s[row];
            double s1 = s[row + 1];
            double s2 = s[row + 2];
            double s3 = s[row + 3];
            double s4 = s[row + 4];
            double s5 = s[row + 5];
            int to = at + B * i;
            double whole = d[to + i];
            for (int o = before; o <= row; o += B) {
                d[to++] -= s0 * s[o] + s1 * s[o + 1] + s2 * s[o + 2] + s3 * s[o + 3] + s4 * s[o + 4] + s5 * s[o + 5];
            }
            // where the rest would be nothing but rounding there is nothing left to hold the wire
            if (d[to - 1] < ROUNDING * whole) {
                d[to - 1] = 0;
            }
        }
    }

    /**
     * Six numbers of x := L^-1 times them, with the factor L of the node whose block begins there. Written out, as it
     * is most of the work.
     */
    private void forward(int at, double[] x, int o) {
        double[] d = own;
        double x0 = x[o] / d[at];
        double x1 = (x[o + 1] - d[at + 6] * x0) / d[at + 7];
        double x2 = (x[o + 2] - d[at + 12] * x0 - d[at + 13] * x1) / d[at + 14];
        double x3 = (x[o + 3] - d[at + 18] * x0 - d[at + 19] * x1 - d[at + 20] * x2) / d[at + 21];
        double x4 = (x[o + 4] - d[at + 24] * x0 - d[at + 25] * x1 - d[at + 26] * x2 - d[at + 27] * x3) / d[at + 28];
        x[o] = x0;
        x[o + 1] = x1;
        x[o + 2] = x2;
        x[o + 3] = x3;
        x[o + 4] = x4;
        x[o + 5] = (x[o + 5] - d[at + 30] * x0 - d[at + 31] * x1 - d[at + 32] * x2 - d[at + 33] * x3 - d[at + 34] * x4)
                / d[at + 35];
    }

    /** The same with L'^-1. */
    private void backward(int at, double[] x, int o) {
        double[] d = own;
        double x5 = x[o + 5] / d[at + 35];
        double x4 = (x[o + 4] - d[at + 34] * x5) / d[at + 28];
        double x3 = (x[o + 3] - d[at + 33] * x5 - d[at + 27] * x4) / d[at + 21];
        double x2 = (x[o + 2] - d[at + 32] * x5 - d[at + 26] * x4 - d[at + 20] * x3) / d[at + 14];
        double x1 = (x[o + 1] - d[at + 31] * x5 - d[at + 25] * x4 - d[at + 19] * x3 - d[at + 13] * x2) / d[at + 7];
        x[o] = (x[o] - d[at + 30] * x5 - d[at + 24] * x4 - d[at + 18] * x3 - d[at + 12] * x2 - d[at + 6] * x1) / d[at];
        x[o + 1] = x1;
        x[o + 2] = x2;
        x[o + 3] = x3;
        x[o + 4] = x4;
        x[o + 5] = x5;
    }

    private boolean cholesky(int at) {
        double[] d = own;
        for (int i = 0; i < B; i++) {
            int row = at + B * i;
            double whole = d[row + i];
            for (int j = 0; j <= i; j++) {
                int other = at + B * j;
                double v = d[row + j];
                for (int k = 0; k < j; k++) {
                    v -= d[row + k] * d[other + k];
                }
                if (j < i) {
                    d[row + j] = v / d[other + j];
                } else if (v > ROUNDING * whole) {
                    d[row + i] = Math.sqrt(v);
                } else {
                    return false;
                }
            }
        }
        return true;
    }

    /** Solves in place after a factorisation; of held degrees of freedom x keeps what it holds. */
    public void solve(double[] x) {
        solve(x, 0);
    }

    /** Solves for an x that is nothing before a degree of freedom, the first of its node. */
    public void solve(double[] x, int from) {
        int first = from / B;
        forward(SIZE * first, x, from);
        for (int n = first + 1; n < nodes; n++) {
            int o = B * n;
            int s = SIZE * (n - 1);
            for (int i = o; i < o + B; i++) {
                x[i] -= next[s] * x[o - 6]
                        + next[s + 1] * x[o - 5]
                        + next[s + 2] * x[o - 4]
                        + next[s + 3] * x[o - 3]
                        + next[s + 4] * x[o - 2]
                        + next[s + 5] * x[o - 1];
                s += B;
            }
            forward(SIZE * n, x, o);
        }
        backward(SIZE * (nodes - 1), x, B * (nodes - 1));
        for (int n = nodes - 2; n >= 0; n--) {
            int o = B * n;
            int s = SIZE * n;
            for (int i = o; i < o + B; i++) {
                x[i] -= next[s] * x[o + 6]
                        + next[s + 6] * x[o + 7]
                        + next[s + 12] * x[o + 8]
                        + next[s + 18] * x[o + 9]
                        + next[s + 24] * x[o + 10]
                        + next[s + 30] * x[o + 11];
                s++;
            }
            backward(SIZE * n, x, o);
        }
    }
}
