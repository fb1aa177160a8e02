package dev.fairlead.measure.mechanics.element;

import org.jspecify.annotations.Nullable;

/**
 * Internal force and consistent tangent of one co-rotational Euler-Bernoulli beam element; a workspace, reused for
 * every element.
 *
 * <p>The element's own frame follows the chord and the mean of both nodes' second axes; within it the beam is linear.
 * Formulation after M. Crisfield, Comput. Methods Appl. Mech. Eng. 81 (1990) 131, and J.-M. Battini and C. Pacoste,
 * ibid. 191 (2002) 1755. Forces are conjugate to spins about fixed axes, so the tangent of a single element is
 * unsymmetric; what is returned is its symmetric part, because over a frame in equilibrium under forces the unsymmetric
 * parts cancel. At rest it is the linear stiffness matrix, so linear theory is the same code at rest.
 */
public final class CorotationalElement {
    /** Numbers kept of an element's state. */
    public static final int KEPT = 9 + 4 + 25 + 2;

    /**
     * Beyond this local rotation, radians, the element is far outside what a linear beam in the moving frame can
     * describe.
     */
    private static final double LARGEST_LOCAL_ROTATION = 1.0;

    /** Force on the element at its two nodes in fixed axes: force, moment, force, moment. */
    public final double[] force = new double[12];
    /** Symmetric part of the tangent in fixed axes. */
    public final ElementTangent stiffness = new ElementTangent();
    /** The beam as its own frame sees it. */
    public final LocalBeam beam = new LocalBeam();

    private final double[] triad = new double[9];
    private final double[] first = new double[9];
    private final double[] second = new double[9];
    private final double[] local = new double[9];
    /**
     * Spin of the element frame per displacement, local axes: its non-zero entries are these four and, for the chord,
     * eta/ln and 1/ln.
     */
    private final double[] frameSpin = new double[4];
    /** Nodal forces in local axes, without the axial force. */
    private final double[] fLocal = new double[12];
    /**
     * Local tangent over the first node's translation and both rotations; the second node's translation is the first
     * one's opposite.
     */
    private final double[] kLocal = new double[81];
    /**
     * The tangent's part that is not symmetric term by term; minus itself and its transpose go into the upper triangle
     * of kLocal.
     */
    private final double[] half = new double[81];

    private final double[] h = new double[27];
    private final double[] c = new double[18];
    private final double[] m = new double[9];
    private double ln;
    private double q11;
    private double q12;
    private double q13;
    private double q21;
    private double q22;
    private double q23;
    private double q2;
    private double eta;

    /**
     * Fills the force and the beam's section forces; false when the element is turned or squashed beyond what it can
     * describe.
     */
    public boolean force(BeamFrame frame, int e, FrameState state) {
        if (!kinematics(frame, e, state)) {
            return false;
        }
        beam.force(frame.stiffness[e], ln - frame.length[e], frame.length[e]);
        frameRotation();
        toFixedAxes();
        return true;
    }

    /** Forces of small displacements, six per node. */
    public void linear(BeamFrame frame, int e, double[] u) {
        System.arraycopy(frame.axes, 9 * e, triad, 0, 9);
        ln = frame.length[e];
        double[] apart = new double[3];
        for (int i = 0; i < 3; i++) {
            beam.theta[i] = 0;
            beam.theta[3 + i] = 0;
            for (int k = 0; k < 3; k++) {
                apart[i] += triad[3 * k + i] * (u[6 * e + 6 + k] - u[6 * e + k]);
                beam.theta[i] += triad[3 * k + i] * u[6 * e + 3 + k];
                beam.theta[3 + i] += triad[3 * k + i] * u[6 * e + 9 + k];
            }
        }
        double spin = 0.5 * (beam.theta[0] + beam.theta[3]);
        for (int node = 0; node < 6; node += 3) {
            beam.theta[node] -= spin;
            beam.theta[node + 1] += apart[2] / ln;
            beam.theta[node + 2] -= apart[1] / ln;
        }
        beam.linear(frame.stiffness[e], apart[0]);
        q11 = 0;
        q21 = 0;
        q12 = 1;
        q22 = 1;
        q2 = 1;
        eta = 0;
        frameRotation();
        toFixedAxes();
    }

    /**
     * The tangent in the state whose force was asked for last.
     *
     * @param materialOnly leaves out what comes of the forces already there
     * @param expected stresses that the tangent is to reckon with, seven per element; null: those that are there
     */
    public void tangent(BeamFrame frame, int e, boolean materialOnly, double @Nullable [] expected) {
        if (expected != null) {
            beam.expect(expected, 7 * e);
            frameRotation();
        }
        double[] k = frame.stiffness[e];
        beam.stiffness(k, materialOnly);
        addFrameSpin(!materialOnly);
        kLocal[0] += k[0];
        if (!materialOnly) {
            // the axial force turns with the chord
            kLocal[10] += beam.section[0] / ln;
            kLocal[20] += beam.section[0] / ln;
        }
        stiffness.turn(kLocal, triad);
    }

    /** Keeps what {@link #expect} needs of the element's present state. */
    public void keep(double[] memory, int e) {
        int o = KEPT * e;
        System.arraycopy(triad, 0, memory, o, 9);
        System.arraycopy(frameSpin, 0, memory, o + 9, 4);
        beam.keep(memory, o + 13);
        memory[o + KEPT - 2] = eta;
        memory[o + KEPT - 1] = ln;
    }

    /**
     * What the stresses would be after a step if they went on changing as they do in the state that was kept.
     *
     * @param step six per node
     * @param now stresses in that state, seven per element
     */
    public void expect(double[] memory, BeamFrame frame, int e, double[] step, double[] now, double[] expected) {
        int o = KEPT * e;
        double[] p = fLocal;
        int a = 6 * e;
        turnBack(memory, o, step[a + 6] - step[a], step[a + 7] - step[a + 1], step[a + 8] - step[a + 2], p, 0);
        turnBack(memory, o, step[a + 3], step[a + 4], step[a + 5], p, 3);
        turnBack(memory, o, step[a + 9], step[a + 10], step[a + 11], p, 6);
        double chord = memory[o + KEPT - 2];
        double l = memory[o + KEPT - 1];
        double g0 = memory[o + 9] * p[3]
                + memory[o + 10] * p[4]
                + memory[o + 11] * p[6]
                + memory[o + 12] * p[7]
                - chord / l * p[2];
        double g1 = -p[2] / l;
        double g2 = p[1] / l;
        for (int node = 3; node < 9; node += 3) {
            p[node] -= g0;
            p[node + 1] -= g1;
            p[node + 2] -= g2;
        }
        beam.expected(memory, o + 13, frame.stiffness[e], p, now, expected, 7 * e);
    }

    /** A vector in the axes that are the columns of a matrix. */
    private static void turnBack(double[] m, int o, double x, double y, double z, double[] out, int to) {
        out[to] = m[o] * x + m[o + 3] * y + m[o + 6] * z;
        out[to + 1] = m[o + 1] * x + m[o + 4] * y + m[o + 7] * z;
        out[to + 2] = m[o + 2] * x + m[o + 5] * y + m[o + 8] * z;
    }

    /**
     * Fills kLocal from the beam's stiffness. With G the spin of the element frame, J the nodal spins and A their
     * stiffness the material part is (J - 1G)' A (J - 1G); the geometric part is -Q G, the forces turning with the
     * frame, and -dG m. Each is brought to the form of minus a matrix and its transpose.
     */
    private void addFrameSpin(boolean geometric) {
        double[] ka = beam.ka;
        for (int i = 0; i < 6; i++) {
            int row = 6 * i;
            c[3 * i] = ka[row] + ka[row + 3];
            c[3 * i + 1] = ka[row + 1] + ka[row + 4];
            c[3 * i + 2] = ka[row + 2] + ka[row + 5];
        }
        for (int a = 0; a < 9; a++) {
            m[a] = c[a] + c[9 + a];
        }
        double chord = eta / ln;
        double il = 1 / ln;
        for (int a = 0; a < 3; a++) {
            h[a] = 0;
            h[3 + a] = 0.5 * il * m[6 + a];
            h[6 + a] = -0.5 * (chord * m[a] + il * m[3 + a]);
            h[9 + a] = c[a] - 0.5 * frameSpin[0] * m[a];
            h[12 + a] = c[3 + a] - 0.5 * frameSpin[1] * m[a];
            h[15 + a] = c[6 + a];
            h[18 + a] = c[9 + a] - 0.5 * frameSpin[2] * m[a];
            h[21 + a] = c[12 + a] - 0.5 * frameSpin[3] * m[a];
            h[24 + a] = c[15 + a];
        }
        if (geometric) {
            addTurningForce(0, 0);
            addTurningForce(9, 3);
            addTurningForce(18, 9);
        }
        double spin10 = frameSpin[0];
        double spin11 = frameSpin[1];
        double spin20 = frameSpin[2];
        double spin21 = frameSpin[3];
        int o = 0;
        for (int r = 0; r < 27; r += 3) {
            double h0 = h[r];
            half[o] = 0;
            half[o + 1] = -il * h[r + 2];
            half[o + 2] = chord * h0 + il * h[r + 1];
            half[o + 3] = spin10 * h0;
            half[o + 4] = spin11 * h0;
            half[o + 5] = 0;
            half[o + 6] = spin20 * h0;
            half[o + 7] = spin21 * h0;
            half[o + 8] = 0;
            o += 9;
        }
        addStretch();
        if (geometric) {
            addFrameSpinRate();
        }
        for (int r = 0; r < 9; r++) {
            int mirrored = 10 * r;
            int end = 9 * r + 9;
            for (int k = 10 * r; k < end; k++) {
                kLocal[k] = -half[k] - half[mirrored];
                mirrored += 9;
            }
        }
        for (int r = 0; r < 6; r++) {
            int own = 7 * r;
            int end = 6 * r + 6;
            for (int k = 10 * r + 30; own < end; k++) {
                kLocal[k] += ka[own++];
            }
        }
        // of the blocks that turn as one the lower triangles count as well
        for (int d = 0; d < 81; d += 30) {
            kLocal[d + 9] = kLocal[d + 1];
            kLocal[d + 18] = kLocal[d + 2];
            kLocal[d + 19] = kLocal[d + 11];
        }
    }

    /**
     * A curved element that is stretched turns its ends: their moments per stretch, against the spins of nodes and
     * frame.
     */
    private void addStretch() {
        double[] b = beam.perStretch;
        double s0 = b[0] + b[3];
        double s1 = b[1] + b[4];
        double s2 = b[2] + b[5];
        half[1] += s2 / ln;
        half[2] -= (eta * s0 + s1) / ln;
        half[3] += b[0] - frameSpin[0] * s0;
        half[4] += b[1] - frameSpin[1] * s0;
        half[5] += b[2];
        half[6] += b[3] - frameSpin[2] * s0;
        half[7] += b[4] - frameSpin[3] * s0;
        half[8] += b[5];
    }

    private void addTurningForce(int row, int at) {
        double vx = 0.5 * fLocal[at];
        double vy = 0.5 * fLocal[at + 1];
        double vz = 0.5 * fLocal[at + 2];
        h[row + 1] -= vz;
        h[row + 2] += vy;
        h[row + 3] += vz;
        h[row + 5] -= vx;
        h[row + 6] -= vy;
        h[row + 7] += vx;
    }

    /**
     * - dG m: the frame's spin per displacement changes with the chord's length and with how the nodes sit in the
     * frame.
     */
    private void addFrameSpinRate() {
        double m1 = beam.moment[0] + beam.moment[3];
        double m2 = beam.moment[1] + beam.moment[4];
        double m3 = beam.moment[2] + beam.moment[5];
        half[9] -= 0.5 * m3 / (ln * ln);
        half[18] += 0.5 * (eta * m1 + m2) / (ln * ln);
        double scale = 0.5 * m1 / q2;
        double chord = eta / ln;
        double il = 1 / ln;
        double f10 = frameSpin[0];
        double f11 = frameSpin[1];
        double f20 = frameSpin[2];
        double f21 = frameSpin[3];
        turnSecondAxes(1, scale, -il * q12, il * q11, -il * q22, il * q21);
        turnSecondAxes(2, scale, -il * q13, chord * q13, -il * q23, chord * q23);
        turnSecondAxes(3, scale, 0, (f10 - 1) * q13, 0, f10 * q23);
        turnSecondAxes(4, scale, q13, f11 * q13, 0, f11 * q23);
        turnSecondAxes(5, scale, -q12, q11, 0, 0);
        turnSecondAxes(6, scale, 0, f20 * q13, 0, (f20 - 1) * q23);
        turnSecondAxes(7, scale, 0, f21 * q13, q23, f21 * q23);
        turnSecondAxes(8, scale, 0, 0, -q22, q21);
    }

    /** What comes of the change of the local x and y of both nodes' second axes per displacement k. */
    private void turnSecondAxes(int k, double scale, double x1, double y1, double x2, double y2) {
        double y = 0.5 * (y1 + y2) / q2;
        half[18 + k] += scale / ln * (0.5 * (x1 + x2) - eta * q2 * y);
        half[27 + k] += 0.5 * scale * (y1 - q12 * y);
        half[36 + k] -= 0.5 * scale * (x1 - q11 * y);
        half[54 + k] += 0.5 * scale * (y2 - q22 * y);
        half[63 + k] -= 0.5 * scale * (x2 - q21 * y);
    }

    private boolean kinematics(BeamFrame frame, int e, FrameState state) {
        int a = e;
        int b = e + 1;
        double[] x = state.position;
        double dx = x[3 * b] - x[3 * a];
        double dy = x[3 * b + 1] - x[3 * a + 1];
        double dz = x[3 * b + 2] - x[3 * a + 2];
        ln = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (!(ln > 0)) {
            return false;
        }
        Rotations.multiply(state.rotation, 9 * a, frame.axes, 9 * e, first);
        Rotations.multiply(state.rotation, 9 * b, frame.axes, 9 * e, second);
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
        Rotations.transposeMultiply(triad, first, local);
        Rotations.logarithm(local, beam.theta, 0);
        q11 = local[1];
        q12 = local[4];
        q13 = local[7];
        Rotations.transposeMultiply(triad, second, local);
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

    private void frameRotation() {
        frameSpin[0] = 0.5 * q12 / q2;
        frameSpin[1] = -0.5 * q11 / q2;
        frameSpin[2] = 0.5 * q22 / q2;
        frameSpin[3] = -0.5 * q21 / q2;
        fLocal[0] = 0;
        fLocal[6] = 0;
        double m1 = beam.moment[0] + beam.moment[3];
        double m2 = beam.moment[1] + beam.moment[4];
        double m3 = beam.moment[2] + beam.moment[5];
        fLocal[1] = m3 / ln;
        fLocal[2] = -(eta * m1 + m2) / ln;
        fLocal[3] = beam.moment[0] - frameSpin[0] * m1;
        fLocal[4] = beam.moment[1] - frameSpin[1] * m1;
        fLocal[5] = beam.moment[2];
        fLocal[7] = -fLocal[1];
        fLocal[8] = -fLocal[2];
        fLocal[9] = beam.moment[3] - frameSpin[2] * m1;
        fLocal[10] = beam.moment[4] - frameSpin[3] * m1;
        fLocal[11] = beam.moment[5];
    }

    private void toFixedAxes() {
        for (int block = 0; block < 12; block += 3) {
            double x = fLocal[block];
            double y = fLocal[block + 1];
            double z = fLocal[block + 2];
            force[block] = triad[0] * x + triad[1] * y + triad[2] * z;
            force[block + 1] = triad[3] * x + triad[4] * y + triad[5] * z;
            force[block + 2] = triad[6] * x + triad[7] * y + triad[8] * z;
        }
        double tension = beam.section[0];
        for (int i = 0; i < 3; i++) {
            force[i] -= triad[3 * i] * tension;
            force[6 + i] += triad[3 * i] * tension;
        }
    }
}
