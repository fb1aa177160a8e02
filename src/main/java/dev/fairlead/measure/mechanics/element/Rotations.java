package dev.fairlead.measure.mechanics.element;

/** Rotation matrices and vectors in flat row-major arrays; allocation-free because they sit in the innermost loop. */
public final class Rotations {
    private static final double SERIES_BELOW = 0.2;

    private Rotations() {}

    /** m[at..] := exp(spin) m[at..], Rodrigues' formula. */
    public static void rotate(double[] m, int at, double sx, double sy, double sz) {
        double t2 = sx * sx + sy * sy + sz * sz;
        if (t2 == 0) {
            return;
        }
        double t = Math.sqrt(t2);
        double a = Math.sin(t) / t;
        double half = Math.sin(t / 2);
        double b = 2 * half * half / t2;
        for (int c = 0; c < 3; c++) {
            double x = m[at + c];
            double y = m[at + 3 + c];
            double z = m[at + 6 + c];
            double cx = sy * z - sz * y;
            double cy = sz * x - sx * z;
            double cz = sx * y - sy * x;
            m[at + c] = x + a * cx + b * (sy * cz - sz * cy);
            m[at + 3 + c] = y + a * cy + b * (sz * cx - sx * cz);
            m[at + 6 + c] = z + a * cz + b * (sx * cy - sy * cx);
        }
    }

    /** out[o..o+2] := rotation vector of the matrix m, for angles below pi. */
    public static void logarithm(double[] m, double[] out, int o) {
        double x = 0.5 * (m[7] - m[5]);
        double y = 0.5 * (m[2] - m[6]);
        double z = 0.5 * (m[3] - m[1]);
        double sine = Math.sqrt(x * x + y * y + z * z);
        double angle = Math.atan2(sine, 0.5 * (m[0] + m[4] + m[8] - 1));
        double scale = sine < 1e-9 ? 1 : angle / sine;
        out[o] = scale * x;
        out[o + 1] = scale * y;
        out[o + 2] = scale * z;
    }

    /** k in dtheta = (I - skew/2 + k skew²) spin: (1 - (t/2) cot(t/2)) / t². */
    static double inverseTangentFactor(double t) {
        if (t < SERIES_BELOW) {
            double t2 = t * t;
            return 1 / 12.0 + t2 / 720 + t2 * t2 / 30240;
        }
        return (1 - t / 2 / Math.tan(t / 2)) / (t * t);
    }

    /** (dk/dt) / t of {@link #inverseTangentFactor}. */
    static double inverseTangentSlope(double t) {
        if (t < SERIES_BELOW) {
            double t2 = t * t;
            return 1 / 360.0 + t2 / 7560 + t2 * t2 / 201600;
        }
        double s = Math.sin(t / 2);
        return (t * (t + Math.sin(t)) - 8 * s * s) / (4 * Math.pow(t, 4) * s * s);
    }

    /** out := a[oa..] b[ob..], 3 x 3. */
    static void multiply(double[] a, int oa, double[] b, int ob, double[] out) {
        for (int j = 0; j < 3; j++) {
            double x = b[ob + j];
            double y = b[ob + 3 + j];
            double z = b[ob + 6 + j];
            out[j] = a[oa] * x + a[oa + 1] * y + a[oa + 2] * z;
            out[3 + j] = a[oa + 3] * x + a[oa + 4] * y + a[oa + 5] * z;
            out[6 + j] = a[oa + 6] * x + a[oa + 7] * y + a[oa + 8] * z;
        }
    }

    /** out := a' b, 3 x 3. */
    static void transposeMultiply(double[] a, double[] b, double[] out) {
        for (int j = 0; j < 3; j++) {
            double x = b[j];
            double y = b[3 + j];
            double z = b[6 + j];
            out[j] = a[0] * x + a[3] * y + a[6] * z;
            out[3 + j] = a[1] * x + a[4] * y + a[7] * z;
            out[6 + j] = a[2] * x + a[5] * y + a[8] * z;
        }
    }
}
