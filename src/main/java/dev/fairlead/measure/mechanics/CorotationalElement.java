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

    /** Force on the element at its two nodes in fixed axes: force, moment, force, moment. */
    final double[] force = new double[12];
    /** Symmetric part of the tangent in fixed axes, row-major 12 x 12. */
    final double[] tangent = new double[144];
    /** Axial force, then the moments at the first and second node along the element's own axes (not yet spin-conjugate): N, N mm. */
    final double[] section = new double[7];
    /** Elastic energy, N mm. */
    double energy;

    private final double[] triad = new double[9];
    private final double[] first = new double[9];
    private final double[] second = new double[9];
    private final double[] local = new double[9];
    private final double[] theta = new double[6];
    private final double[] moment = new double[6];
    private final double[] map = new double[18];
    private final double[] ka = new double[36];
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

    /** Fills force and section; false when the element is turned or squashed beyond what it can describe. */
    boolean force(Frame frame, int e, FrameState state) {
        if (!kinematics(frame, e, state)) {
            return false;
        }
        localForces(frame, e);
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
        localStiffness(s, l0, materialOnly);
        // material part: P' Ka P and the axial spring
        for (int i = 0; i < 6; i++) {
            for (int c = 0; c < 12; c++) {
                double sum = 0;
                for (int k = 0; k < 6; k++) {
                    sum += ka[6 * i + k] * p[12 * k + c];
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
            addGeometric(section[0]);
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
        Rotations.logarithm(local, theta, 0);
        q11 = local[1];
        q12 = local[4];
        q13 = local[7];
        transposeMultiply(triad, second, local);
        Rotations.logarithm(local, theta, 3);
        q21 = local[1];
        q22 = local[4];
        q23 = local[7];
        q2 = 0.5 * (q12 + q22);
        eta = 0.5 * (q11 + q21) / q2;
        for (int i = 0; i < 6; i++) {
            if (!(Math.abs(theta[i]) < LARGEST_LOCAL_ROTATION)) {
                return false;
            }
        }
        return true;
    }

    private void localForces(Frame frame, int e) {
        Section s = frame.section;
        double l0 = frame.length[e];
        double stretch = ln - l0;
        double twist = s.gj() / l0 * (theta[3] - theta[0]);
        double by = s.eiY() / l0;
        double bz = s.eiZ() / l0;
        section[0] = s.ea() / l0 * stretch;
        section[1] = -twist;
        section[2] = by * (4 * theta[1] + 2 * theta[4]);
        section[3] = bz * (4 * theta[2] + 2 * theta[5]);
        section[4] = twist;
        section[5] = by * (2 * theta[1] + 4 * theta[4]);
        section[6] = bz * (2 * theta[2] + 4 * theta[5]);
        energy = section[0] * stretch;
        for (int i = 0; i < 6; i++) {
            energy += section[1 + i] * theta[i];
        }
        energy /= 2;
        for (int node = 0; node < 2; node++) {
            spinMap(node);
            int o = 3 * node;
            for (int i = 0; i < 3; i++) {
                moment[o + i] = map[9 * node + i] * section[1 + o]
                        + map[9 * node + 3 + i] * section[2 + o]
                        + map[9 * node + 6 + i] * section[3 + o];
            }
        }
        frameRotation();
    }

    /** map := I - skew(theta)/2 + k skew(theta)², which turns a spin into a change of the rotation vector. */
    private void spinMap(int node) {
        double x = theta[3 * node];
        double y = theta[3 * node + 1];
        double z = theta[3 * node + 2];
        double t2 = x * x + y * y + z * z;
        double k = Rotations.inverseTangentFactor(Math.sqrt(t2));
        int o = 9 * node;
        map[o] = 1 + k * (x * x - t2);
        map[o + 1] = z / 2 + k * x * y;
        map[o + 2] = -y / 2 + k * x * z;
        map[o + 3] = -z / 2 + k * x * y;
        map[o + 4] = 1 + k * (y * y - t2);
        map[o + 5] = x / 2 + k * y * z;
        map[o + 6] = y / 2 + k * x * z;
        map[o + 7] = -x / 2 + k * y * z;
        map[o + 8] = 1 + k * (z * z - t2);
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
                sum += p[12 * k + c] * moment[k];
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
            force[i] -= triad[3 * i] * section[0];
            force[6 + i] += triad[3 * i] * section[0];
        }
    }

    private void localStiffness(Section s, double l0, boolean materialOnly) {
        double t = s.gj() / l0;
        double y = s.eiY() / l0;
        double z = s.eiZ() / l0;
        java.util.Arrays.fill(ka, 0);
        // Ka = map' K map, with K coupling the two nodes axis by axis
        for (int na = 0; na < 2; na++) {
            for (int nb = 0; nb < 2; nb++) {
                double kt = na == nb ? t : -t;
                double ky = na == nb ? 4 * y : 2 * y;
                double kz = na == nb ? 4 * z : 2 * z;
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 3; j++) {
                        ka[6 * (3 * na + i) + 3 * nb + j] = map[9 * na + i] * kt * map[9 * nb + j]
                                + map[9 * na + 3 + i] * ky * map[9 * nb + 3 + j]
                                + map[9 * na + 6 + i] * kz * map[9 * nb + 6 + j];
                    }
                }
            }
        }
        if (!materialOnly) {
            addSpinMapRate(0);
            addSpinMapRate(1);
        }
    }

    /** Adds d(map' m)/dtheta times map: the moment's own change as the rotation vector changes. */
    private void addSpinMapRate(int node) {
        int o = 3 * node;
        double tx = theta[o];
        double ty = theta[o + 1];
        double tz = theta[o + 2];
        double mx = section[1 + o];
        double my = section[2 + o];
        double mz = section[3 + o];
        double t = Math.sqrt(tx * tx + ty * ty + tz * tz);
        double k = Rotations.inverseTangentFactor(t);
        double mu = Rotations.inverseTangentSlope(t);
        double dot = tx * mx + ty * my + tz * mz;
        // skew(theta)² m
        double wx = tx * dot - t * t * mx;
        double wy = ty * dot - t * t * my;
        double wz = tz * dot - t * t * mz;
        double[] h = local;
        h[0] = k * (tx * mx - 2 * mx * tx + dot) + mu * wx * tx;
        h[1] = k * (tx * my - 2 * mx * ty) + mu * wx * ty + mz / 2;
        h[2] = k * (tx * mz - 2 * mx * tz) + mu * wx * tz - my / 2;
        h[3] = k * (ty * mx - 2 * my * tx) + mu * wy * tx - mz / 2;
        h[4] = k * (ty * my - 2 * my * ty + dot) + mu * wy * ty;
        h[5] = k * (ty * mz - 2 * my * tz) + mu * wy * tz + mx / 2;
        h[6] = k * (tz * mx - 2 * mz * tx) + mu * wz * tx + my / 2;
        h[7] = k * (tz * my - 2 * mz * ty) + mu * wz * ty - mx / 2;
        h[8] = k * (tz * mz - 2 * mz * tz + dot) + mu * wz * tz;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double sum = 0;
                for (int c = 0; c < 3; c++) {
                    sum += h[3 * i + c] * map[9 * node + 3 * c + j];
                }
                ka[6 * (o + i) + o + j] += sum;
            }
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
        double m1 = moment[0] + moment[3];
        double m2 = moment[1] + moment[4];
        double m3 = moment[2] + moment[5];
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
