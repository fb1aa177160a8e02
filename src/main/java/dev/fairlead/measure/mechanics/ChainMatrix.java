package dev.fairlead.measure.mechanics;

import java.util.Arrays;

/**
 * Symmetric stiffness matrix of nodes in a row, six degrees of freedom each: a block for every node and one for every pair of neighbours.
 * Factorised by Cholesky block by block; of held degrees of freedom the equation says that they are what they are.
 */
final class ChainMatrix {
    private static final int B = 6;
    private static final int SIZE = B * B;
    /** A pivot smaller than this share of what stood there before is nothing but rounding. */
    private static final double ROUNDING = 1e-12;

    /** Blocks of the nodes, row-major; only lower triangles count. */
    final double[] own;
    /** Blocks with the rows of the next node and the columns of this one. */
    final double[] next;
    private final boolean[] held;
    private final int nodes;

    ChainMatrix(boolean[] held) {
        this.held = held;
        nodes = held.length / B;
        own = new double[SIZE * nodes];
        next = new double[SIZE * (nodes - 1)];
    }

    void clear() {
        Arrays.fill(own, 0);
        Arrays.fill(next, 0);
    }

    /** out -= matrix times x, before it is factorised. */
    void subtractProduct(double[] x, double[] out) {
        for (int n = 0; n < nodes; n++) {
            for (int i = 0; i < B; i++) {
                double sum = 0;
                for (int j = 0; j < B; j++) {
                    sum += own[SIZE * n + (j <= i ? B * i + j : B * j + i)] * x[B * n + j];
                    if (n > 0) {
                        sum += next[SIZE * (n - 1) + B * i + j] * x[B * (n - 1) + j];
                    }
                    if (n < nodes - 1) {
                        sum += next[SIZE * n + B * j + i] * x[B * (n + 1) + j];
                    }
                }
                out[B * n + i] -= sum;
            }
        }
    }

    /** What a column has in rows that are not held, before the matrix is factorised. */
    void column(int dof, double[] out) {
        double[] unit = new double[out.length];
        unit[dof] = -1;
        Arrays.fill(out, 0);
        subtractProduct(unit, out);
        for (int i = 0; i < out.length; i++) {
            out[i] = held[i] ? 0 : out[i];
        }
    }

    /** Factorises in place; false when the matrix is not positive definite: the wire in this state is a mechanism or unstable. */
    boolean factorise() {
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
            for (int j = 0; j < B; j++) {
                double v = s[row + j];
                for (int k = 0; k < j; k++) {
                    v -= s[row + k] * d[before + B * j + k];
                }
                s[row + j] = v / d[before + B * j + j];
            }
            for (int j = 0; j <= i; j++) {
                int other = before + B * j;
                double v = s[row] * s[other] + s[row + 1] * s[other + 1] + s[row + 2] * s[other + 2]
                        + s[row + 3] * s[other + 3] + s[row + 4] * s[other + 4] + s[row + 5] * s[other + 5];
                // where the rest would be nothing but rounding there is nothing left to hold the wire
                double left = d[at + B * i + j] - v;
                d[at + B * i + j] = i == j && left < ROUNDING * d[at + B * i + j] ? 0 : left;
            }
        }
    }

    private boolean cholesky(int at) {
        double[] d = own;
        for (int i = 0; i < B; i++) {
            int row = at + B * i;
            double whole = d[row + i];
            for (int j = 0; j <= i; j++) {
                double v = d[row + j];
                for (int k = 0; k < j; k++) {
                    v -= d[row + k] * d[at + B * j + k];
                }
                if (j < i) {
                    d[row + j] = v / d[at + B * j + j];
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
    void solve(double[] x) {
        for (int n = 0; n < nodes; n++) {
            int at = SIZE * n;
            for (int i = 0; i < B; i++) {
                double v = x[B * n + i];
                for (int j = 0; n > 0 && j < B; j++) {
                    v -= next[at - SIZE + B * i + j] * x[B * n - B + j];
                }
                for (int j = 0; j < i; j++) {
                    v -= own[at + B * i + j] * x[B * n + j];
                }
                x[B * n + i] = v / own[at + B * i + i];
            }
        }
        for (int n = nodes - 1; n >= 0; n--) {
            int at = SIZE * n;
            for (int i = B - 1; i >= 0; i--) {
                double v = x[B * n + i];
                for (int j = 0; n < nodes - 1 && j < B; j++) {
                    v -= next[at + B * j + i] * x[B * n + B + j];
                }
                for (int j = i + 1; j < B; j++) {
                    v -= own[at + B * j + i] * x[B * n + j];
                }
                x[B * n + i] = v / own[at + B * i + i];
            }
        }
    }
}
