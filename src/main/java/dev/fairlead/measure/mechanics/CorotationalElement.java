package dev.fairlead.measure.mechanics;

/**
 * Internal force and consistent tangent of one co-rotational Euler-Bernoulli beam element; a workspace, reused for every element.
 *
 * <p>The element's own frame follows the chord and the mean of both nodes' second axes; within it the beam is linear. Formulation after
 * M. Crisfield, Comput. Methods Appl. Mech. Eng. 81 (1990) 131, and J.-M. Battini and C. Pacoste, ibid. 191 (2002) 1755. Forces are conjugate to
 * spins about fixed axes, so the tangent of a single element is unsymmetric; what is returned is its symmetric part, because over a frame in
 * equilibrium under forces the unsymmetric parts cancel. At rest it is the linear stiffness matrix, so linear theory is the same code at rest.
 */
final class CorotationalElement {
    /** Beyond this local rotation, radians, the element is far outside what a linear beam in the moving frame can describe. */
    private static final double LARGEST_LOCAL_ROTATION = 1.0;

    /** Force on the element at its two nodes in fixed axes: force, beam.moment, force, moment. */
    final double[] force = new double[12];
    /** Symmetric part of the tangent in fixed axes, row-major 12 x 12. */
    final double[] tangent = new double[144];
    /** The beam as its own frame sees it. */
    final LocalBeam beam = new LocalBeam();

    private final double[] triad = new double[9];
    private final double[] first = new double[9];
    private final double[] second = new double[9];
    private final double[] local = new double[9];
    private final double[] p = new double[72];
    private final double[] g = new double[36];
    private final double[] kap = new double[72];
    private final double[] kLocal = new double[144];
    private final double[] fLocal = new double[12];
    private double ln;
    private double q11;
    private double q12;
    private double q13;
    private double q21;
    private double q22;
    private double q23;
    private double q2;
    private double eta;

    /** Fills the force and the beam's section forces; false when the element is turned or squashed beyond what it can describe. */
    boolean force(Frame frame, int e, FrameState state) {
        if (!kinematics(frame, e, state)) {
            return false;
        }
        beam.force(frame.section, frame.length[e], ln);
        frameRotation();
        toFixedAxes();
        return true;
    }

    /**
     * As {@link #force}, and the tangent.
     *
     * @param materialOnly leaves out what comes of the forces already there
     */
    boolean forceAndTangent(Frame frame, int e, FrameState state, boolean materialOnly) {
        if (!force(frame, e, state)) {
            return false;
        }
        Section s = frame.section;
        double l0 = frame.length[e];
        beam.stiffness(s, l0, materialOnly);
        // material part: P' Ka P and the axial spring
        for (int i = 0; i < 6; i++) {
            for (int c = 0; c < 12; c++) {
                double sum = 0;
                for (int k = 0; k < 6; k++) {
                    sum += beam.ka[6 * i + k] * p[12 * k + c];
                }
                kap[12 * i + c] = sum;
            }
        }
        for (int r = 0; r < 12; r++) {
            for (int c = 0; c < 12; c++) {
                double sum = 0;
                for (int k = 0; k < 6; k++) {
                    sum += p[12 * k + r] * kap[12 * k + c];
                }
                kLocal[12 * r + c] = sum;
            }
        }
        addPair(0, 0, s.ea() / l0);
        if (!materialOnly) {
            addGeometric(beam.section[0]);
        }
        rotateTangent();
        return true;
    }

    private void addGeometric(double n) {
        // geometric part: the axial force turns with the chord
        addPair(1, 1, n / ln);
        addPair(2, 2, n / ln);
        addFrameRotation();
        addFrameSpinRate();
    }

    private void addPair(int i, int j, double v) {
        kLocal[12 * i + j] += v;
        kLocal[12 * (i + 6) + j + 6] += v;
        kLocal[12 * i + j + 6] -= v;
        kLocal[12 * (i + 6) + j] -= v;
    }

    private boolean kinematics(Frame frame, int e, FrameState state) {
        int a = frame.from[e];
        int b = frame.to[e];
        double[] x = state.position;
        double dx = x[3 * b] - x[3 * a];
        double dy = x[3 * b + 1] - x[3 * a + 1];
        double dz = x[3 * b + 2] - x[3 * a + 2];
        ln = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (!(ln > 0)) {
            return false;
        }
        multiply(state.rotation, 9 * a, frame.axes, 9 * e, first);
        multiply(state.rotation, 9 * b, frame.axes, 9 * e, second);
        double ex = dx / ln;
        double ey = dy / ln;
        double ez = dz / ln;
        double qx = 0.5 * (first[1] + second[1]);
        double qy = 0.5 * (first[4] + second[4]);
        double qz = 0.5 * (first[7] + second[7]);
        double zx = ey * qz - ez * qy;
        double zy = ez * qx - ex * qz;
        double zz = ex * qy - ey * qx;
        double zl = Math.sqrt(zx * zx + zy * zy + zz * zz);
        if (!(zl > 0.1)) {
            return false;
        }
        zx /= zl;
        zy /= zl;
        zz /= zl;
        triad[0] = ex;
        triad[3] = ey;
        triad[6] = ez;
        triad[2] = zx;
        triad[5] = zy;
        triad[8] = zz;
        triad[1] = zy * ez - zz * ey;
        triad[4] = zz * ex - zx * ez;
        triad[7] = zx * ey - zy * ex;
        transposeMultiply(triad, first, local);
        Rotations.logarithm(local, beam.theta, 0);
        q11 = local[1];
        q12 = local[4];
        q13 = local[7];
        transposeMultiply(triad, second, local);
        Rotations.logarithm(local, beam.theta, 3);
        q21 = local[1];
        q22 = local[4];
        q23 = local[7];
        q2 = 0.5 * (q12 + q22);
        eta = 0.5 * (q11 + q21) / q2;
        for (int i = 0; i < 6; i++) {
            if (!(Math.abs(beam.theta[i]) < LARGEST_LOCAL_ROTATION)) {
                return false;
            }
        }
        return true;
    }

    /** g: spin of the element frame per nodal displacement (3 x 12, local axes); p: nodal spins less that spin (6 x 12). */
    private void frameRotation() {
        g[2] = eta / ln;
        g[3] = q12 / q2 / 2;
        g[4] = -q11 / q2 / 2;
        g[8] = -eta / ln;
        g[9] = q22 / q2 / 2;
        g[10] = -q21 / q2 / 2;
        g[12 + 2] = 1 / ln;
        g[12 + 8] = -1 / ln;
        g[24 + 1] = -1 / ln;
        g[24 + 7] = 1 / ln;
        for (int i = 0; i < 3; i++) {
            for (int c = 0; c < 12; c++) {
                p[12 * i + c] = -g[12 * i + c];
                p[12 * (i + 3) + c] = -g[12 * i + c];
            }
            p[12 * i + 3 + i] += 1;
            p[12 * (i + 3) + 9 + i] += 1;
        }
        for (int c = 0; c < 12; c++) {
            double sum = 0;
            for (int k = 0; k < 6; k++) {
                sum += p[12 * k + c] * beam.moment[k];
            }
            fLocal[c] = sum;
        }
    }

    private void toFixedAxes() {
        for (int block = 0; block < 4; block++) {
            for (int i = 0; i < 3; i++) {
                double sum = 0;
                for (int k = 0; k < 3; k++) {
                    sum += triad[3 * i + k] * fLocal[3 * block + k];
                }
                force[3 * block + i] = sum;
            }
        }
        for (int i = 0; i < 3; i++) {
            force[i] -= triad[3 * i] * beam.section[0];
            force[6 + i] += triad[3 * i] * beam.section[0];
        }
    }

    /** - Q G': the nodal forces turn with the element frame. */
    private void addFrameRotation() {
        for (int block = 0; block < 4; block++) {
            double vx = fLocal[3 * block];
            double vy = fLocal[3 * block + 1];
            double vz = fLocal[3 * block + 2];
            for (int c = 0; c < 12; c++) {
                double gx = g[c];
                double gy = g[12 + c];
                double gz = g[24 + c];
                kLocal[12 * (3 * block) + c] -= vy * gz - vz * gy;
                kLocal[12 * (3 * block + 1) + c] -= vz * gx - vx * gz;
                kLocal[12 * (3 * block + 2) + c] -= vx * gy - vy * gx;
            }
        }
    }

    /** - dG m: the frame's spin per displacement changes with the chord's length and with how the nodes sit in the frame. */
    private void addFrameSpinRate() {
        double m1 = beam.moment[0] + beam.moment[3];
        double m2 = beam.moment[1] + beam.moment[4];
        double m3 = beam.moment[2] + beam.moment[5];
        double lateral = m3 / (ln * ln);
        double vertical = (eta * m1 + m2) / (ln * ln);
        kLocal[12] += lateral;
        kLocal[12 + 6] -= lateral;
        kLocal[24] -= vertical;
        kLocal[24 + 6] += vertical;
        kLocal[84] -= lateral;
        kLocal[84 + 6] += lateral;
        kLocal[96] += vertical;
        kLocal[96 + 6] -= vertical;
        for (int c = 0; c < 12; c++) {
            // local components of both nodes' second axes, as the nodes spin in the frame
            double d11 = p[12 + c] * q13 - p[24 + c] * q12;
            double d12 = p[24 + c] * q11 - p[c] * q13;
            double d21 = p[48 + c] * q23 - p[60 + c] * q22;
            double d22 = p[60 + c] * q21 - p[36 + c] * q23;
            double d1 = 0.5 * (d11 + d21);
            double d2 = 0.5 * (d12 + d22);
            double chord = m1 / ln * (d1 - eta * d2) / q2;
            kLocal[24 + c] -= chord;
            kLocal[96 + c] += chord;
            kLocal[36 + c] -= 0.5 * m1 * (d12 - q12 / q2 * d2) / q2;
            kLocal[48 + c] += 0.5 * m1 * (d11 - q11 / q2 * d2) / q2;
            kLocal[108 + c] -= 0.5 * m1 * (d22 - q22 / q2 * d2) / q2;
            kLocal[120 + c] += 0.5 * m1 * (d21 - q21 / q2 * d2) / q2;
        }
    }

    private void rotateTangent() {
        for (int br = 0; br < 4; br++) {
            for (int bc = 0; bc < 4; bc++) {
                rotateBlock(br, bc);
            }
        }
        for (int r = 0; r < 12; r++) {
            for (int c = 0; c < r; c++) {
                double mean = 0.5 * (tangent[12 * r + c] + tangent[12 * c + r]);
                tangent[12 * r + c] = mean;
                tangent[12 * c + r] = mean;
            }
        }
    }

    private void rotateBlock(int br, int bc) {
        int at = 12 * 3 * br + 3 * bc;
        double[] half = local;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                half[3 * i + j] = triad[3 * i] * kLocal[at + j]
                        + triad[3 * i + 1] * kLocal[at + 12 + j]
                        + triad[3 * i + 2] * kLocal[at + 24 + j];
            }
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                tangent[at + 12 * i + j] = half[3 * i] * triad[3 * j]
                        + half[3 * i + 1] * triad[3 * j + 1]
                        + half[3 * i + 2] * triad[3 * j + 2];
            }
        }
    }

    /** out := a[oa..] b[ob..], 3 x 3. */
    private static void multiply(double[] a, int oa, double[] b, int ob, double[] out) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[3 * i + j] = a[oa + 3 * i] * b[ob + j]
                        + a[oa + 3 * i + 1] * b[ob + 3 + j]
                        + a[oa + 3 * i + 2] * b[ob + 6 + j];
            }
        }
    }

    /** out := a' b, 3 x 3. */
    private static void transposeMultiply(double[] a, double[] b, double[] out) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[3 * i + j] = a[i] * b[j] + a[3 + i] * b[3 + j] + a[6 + i] * b[6 + j];
            }
        }
    }
}
