package dev.fairlead.measure.mechanics.element;

import java.util.Arrays;

/**
 * Shape of one curved element: points at equal steps of a parameter from end to end, and how the place changes with it.
 *
 * <p>What such an element gives under end forces is the integral of what its sections give (unit load theorem), so its
 * stiffness is that of the curve, however long the element is; straight elements need many to follow a bend.
 */
public final class CurvedBeam {
    /** Points per element. */
    public static final int POINTS = 5;
    /** Boole's rule. */
    private static final double[] WEIGHTS = {7 / 90.0, 32 / 90.0, 12 / 90.0, 32 / 90.0, 7 / 90.0};

    private static final int FORCES = 6;

    /** Places, three per point, mm. */
    public final double[] at = new double[3 * POINTS];
    /** Change of place over the whole range of the parameter, three per point, mm. */
    public final double[] along = new double[3 * POINTS];

    /** Place so far through the element, by its share of the parameter: the polynomial through the points. */
    void place(double share, double[] out) {
        through(at, share, out);
    }

    /** Unit vector along the wire so far through the element. */
    void direction(double share, double[] out) {
        through(along, share, out);
        double s = Math.sqrt(out[0] * out[0] + out[1] * out[1] + out[2] * out[2]);
        for (int k = 0; k < 3; k++) {
            out[k] /= s;
        }
    }

    private static void through(double[] values, double share, double[] out) {
        Arrays.fill(out, 0);
        for (int p = 0; p < POINTS; p++) {
            double weight = 1;
            for (int q = 0; q < POINTS; q++) {
                weight *= q == p ? 1 : (share * (POINTS - 1) - q) / (p - q);
            }
            for (int k = 0; k < 3; k++) {
                out[k] += weight * values[3 * p + k];
            }
        }
    }

    private double speed(int p) {
        return Math.sqrt(along[3 * p] * along[3 * p]
                + along[3 * p + 1] * along[3 * p + 1]
                + along[3 * p + 2] * along[3 * p + 2]);
    }

    /** Length of wire, mm. */
    public double length() {
        double sum = 0;
        for (int p = 0; p < POINTS; p++) {
            sum += WEIGHTS[p] * speed(p);
        }
        return sum;
    }

    /** The same walked from the other end. */
    public CurvedBeam reversed() {
        CurvedBeam back = new CurvedBeam();
        for (int p = 0; p < POINTS; p++) {
            for (int k = 0; k < 3; k++) {
                back.at[3 * p + k] = at[3 * (POINTS - 1 - p) + k];
                back.along[3 * p + k] = -along[3 * (POINTS - 1 - p) + k];
            }
        }
        return back;
    }

    /**
     * Stiffness in the element's own axes, 7 x 7: stretch of the chord, then the rotation vectors of both nodes against
     * it. For a round section.
     *
     * @param axes matrix whose columns are the element's axes, from place o on
     * @param l chord, mm
     */
    double[] stiffness(SectionStiffness s, double[] axes, int o, double l) {
        double[] give = new double[FORCES * FORCES];
        double[] moment = new double[3 * FORCES];
        double[] twist = new double[FORCES];
        double[] pull = new double[FORCES];
        double byBending = 1 / s.eiY();
        double byTwist = 1 / s.gj() - byBending;
        double[] arm = new double[3];
        double[] t = new double[3];
        for (int p = 0; p < POINTS; p++) {
            double speed = speed(p);
            for (int k = 0; k < 3; k++) {
                arm[k] = k == 0 ? l : 0;
                t[k] = 0;
                for (int i = 0; i < 3; i++) {
                    arm[k] -= axes[o + 3 * i + k] * (at[3 * p + i] - at[i]);
                    t[k] += axes[o + 3 * i + k] * along[3 * p + i] / speed;
                }
            }
            moments(arm, l, moment);
            pull[0] = t[0];
            pull[1] = t[2] / l;
            pull[2] = -t[1] / l;
            pull[4] = pull[1];
            pull[5] = pull[2];
            for (int q = 0; q < FORCES; q++) {
                twist[q] = moment[3 * q] * t[0] + moment[3 * q + 1] * t[1] + moment[3 * q + 2] * t[2];
            }
            double w = WEIGHTS[p] * speed;
            for (int q = 0; q < FORCES; q++) {
                for (int r = 0; r <= q; r++) {
                    double dot = moment[3 * q] * moment[3 * r]
                            + moment[3 * q + 1] * moment[3 * r + 1]
                            + moment[3 * q + 2] * moment[3 * r + 2];
                    give[FORCES * q + r] +=
                            w * (dot * byBending + twist[q] * twist[r] * byTwist + pull[q] * pull[r] / s.ea());
                }
            }
        }
        return spread(inverse(give));
    }

    /**
     * Moment in a section under each end force of one: tension, moment at the first node about y and z, at the second
     * about x, y and z. What balances them is a force at the second node; arm leads from the section to it.
     */
    private static void moments(double[] arm, double l, double[] m) {
        m[1] = arm[2];
        m[2] = -arm[1];
        m[3] = arm[1] / l;
        m[4] = -arm[0] / l;
        m[6] = arm[2] / l;
        m[8] = -arm[0] / l;
        m[9] = 1;
        m[12] = m[3];
        m[13] = 1 + m[4];
        m[15] = m[6];
        m[17] = 1 + m[8];
    }

    /**
     * Inverse of a positive definite matrix given by its lower triangle, by elimination in place (Gauss and Jordan).
     */
    private static double[] inverse(double[] a) {
        int n = FORCES;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                a[n * i + j] = a[n * j + i];
            }
        }
        for (int k = 0; k < n; k++) {
            double pivot = 1 / a[n * k + k];
            a[n * k + k] = 1;
            for (int j = 0; j < n; j++) {
                a[n * k + j] *= pivot;
            }
            for (int i = 0; i < n; i++) {
                double factor = a[n * i + k];
                if (i != k && factor != 0) {
                    a[n * i + k] = 0;
                    for (int j = 0; j < n; j++) {
                        a[n * i + j] -= factor * a[n * k + j];
                    }
                }
            }
        }
        return a;
    }

    /** From six end forces to seven: the moment about x at the first node is the opposite of that at the second. */
    private static double[] spread(double[] six) {
        int[] from = {0, 3, 1, 2, 3, 4, 5};
        double[] k = new double[49];
        for (int i = 0; i < 7; i++) {
            for (int j = 0; j < 7; j++) {
                double v = six[FORCES * from[i] + from[j]];
                k[7 * i + j] = (i == 1) == (j == 1) ? v : -v;
            }
        }
        return k;
    }
}
