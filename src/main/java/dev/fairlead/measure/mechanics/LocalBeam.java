package dev.fairlead.measure.mechanics;

/**
 * Euler-Bernoulli beam within an element's moving frame: stretch and nodal rotation vectors in, forces and stiffness per spin out. Linear but for
 * one thing: a beam whose ends turn against its chord needs more length than the chord, L (2 t1² - t1 t2 + 2 t2²) / 30 in either plane. Without
 * that a wire, which hardly stretches, is too stiff by an error that falls with the square of the element's length.
 */
final class LocalBeam {
    /** Rotation vectors of both nodes against the element frame. */
    final double[] theta = new double[6];
    /** Axial force, then the moments at the first and second node conjugate to the rotation vectors: N, N mm. */
    final double[] section = new double[7];
    /** The moments conjugate to spins. */
    final double[] moment = new double[6];
    /** Stiffness of the moments against spins, 6 x 6; unsymmetric while there is moment. */
    final double[] ka = new double[36];
    /** The moments conjugate to spins per stretch of the chord; nothing for a straight element. */
    final double[] perStretch = new double[6];
    /** Elastic energy, N mm. */
    double energy;

    /** Axial force and moments by the elastic stiffness alone, before the chord's shortening turns the axial force. */
    final double[] stress = new double[7];

    /** How much longer the wire is than its chord on account of the rotations, per rotation. */
    private final double[] slope = new double[7];
    /** Stiffness against stretch and rotation vectors. */
    private final double[] whole = new double[49];
    private double chord;
    private final double[] map = new double[18];
    private final double[] rate = new double[9];

    /** Forces from theta and the stretch of a chord of length l at rest, by a stiffness of 7 x 7. */
    void force(double[] k, double stretch, double l) {
        double longer = 0;
        for (int a = 1; a < 3; a++) {
            double t1 = theta[a];
            double t2 = theta[3 + a];
            longer += l / 30 * (2 * t1 * t1 - t1 * t2 + 2 * t2 * t2);
            slope[1 + a] = l / 30 * (4 * t1 - t2);
            slope[4 + a] = l / 30 * (4 * t2 - t1);
        }
        chord = l;
        elastic(k, stretch + longer);
        toSections();
        spinMap(0);
        spinMap(1);
        toSpins(0, section, 1, moment);
        toSpins(1, section, 4, moment);
    }

    /** The same for rotations so small that their squares count for nothing, and spins and rotation vectors are one. */
    void linear(double[] k, double stretch) {
        elastic(k, stretch);
        System.arraycopy(stress, 0, section, 0, 7);
        System.arraycopy(section, 1, moment, 0, 6);
    }

    /** Other stresses than those of theta, for the stiffness. */
    void expect(double[] forces, int o) {
        System.arraycopy(forces, o, stress, 0, 7);
        toSections();
        toSpins(0, section, 1, moment);
        toSpins(1, section, 4, moment);
    }

    private void toSections() {
        for (int i = 0; i < 7; i++) {
            section[i] = stress[i] + stress[0] * slope[i];
        }
    }

    void keep(double[] memory, int o) {
        System.arraycopy(map, 0, memory, o, 18);
        System.arraycopy(slope, 0, memory, o + 18, 7);
    }

    /** Stresses now, and what a stretch (p[0]) and spins against the element (from p[3] on) add in a state that was kept. */
    void expected(double[] memory, int m, double[] k, double[] p, double[] now, double[] out, int o) {
        double stretch = p[0];
        for (int i = 0; i < 6; i++) {
            int row = m + 3 * i;
            int node = i < 3 ? 3 : 6;
            theta[i] = memory[row] * p[node] + memory[row + 1] * p[node + 1] + memory[row + 2] * p[node + 2];
            stretch += memory[m + 19 + i] * theta[i];
        }
        elastic(k, stretch);
        for (int i = 0; i < 7; i++) {
            out[o + i] = now[o + i] + stress[i];
        }
    }

    private void elastic(double[] k, double stretch) {
        energy = 0;
        for (int i = 0; i < 7; i++) {
            int o = 7 * i;
            stress[i] = k[o] * stretch + k[o + 1] * theta[0] + k[o + 2] * theta[1] + k[o + 3] * theta[2]
                    + k[o + 4] * theta[3] + k[o + 5] * theta[4] + k[o + 6] * theta[5];
            energy += 0.5 * stress[i] * (i == 0 ? stretch : theta[i - 1]);
        }
    }

    /** Moments of a node conjugate to its spin from those conjugate to its rotation vector. */
    private void toSpins(int node, double[] from, int o, double[] to) {
        for (int i = 0; i < 3; i++) {
            to[3 * node + i] = map[9 * node + i] * from[o] + map[9 * node + 3 + i] * from[o + 1] + map[9 * node + 6 + i] * from[o + 2];
        }
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

    /** Fills ka and perStretch; without the forces' own share when only the material is asked for. */
    void stiffness(double[] k, boolean materialOnly) {
        double n = materialOnly ? 0 : stress[0] * chord / 30;
        for (int i = 1; i < 7; i++) {
            double along = k[7 * i] + k[0] * slope[i];
            whole[i] = along;
            for (int j = 1; j < 7; j++) {
                whole[7 * i + j] = k[7 * i + j] + along * slope[j] + slope[i] * k[j];
            }
            if (i % 3 != 1) {
                whole[8 * i] += 4 * n;
                whole[7 * i + (i < 4 ? i + 3 : i - 3)] -= n;
            }
        }
        toSpins(0, whole, 1, perStretch);
        toSpins(1, whole, 4, perStretch);
        // ka = map' K map, node by node; symmetric so far
        block(whole, 0, 0);
        block(whole, 1, 0);
        block(whole, 1, 1);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                ka[6 * i + 3 + j] = ka[6 * (3 + j) + i];
            }
        }
        if (!materialOnly) {
            addSpinMapRate(0);
            addSpinMapRate(1);
        }
    }

    private void block(double[] k, int na, int nb) {
        int from = 7 * (1 + 3 * na) + 1 + 3 * nb;
        for (int j = 0; j < 3; j++) {
            double m0 = map[9 * nb + j];
            double m1 = map[9 * nb + 3 + j];
            double m2 = map[9 * nb + 6 + j];
            double x = k[from] * m0 + k[from + 1] * m1 + k[from + 2] * m2;
            double y = k[from + 7] * m0 + k[from + 8] * m1 + k[from + 9] * m2;
            double z = k[from + 14] * m0 + k[from + 15] * m1 + k[from + 16] * m2;
            for (int i = 0; i < 3; i++) {
                ka[6 * (3 * na + i) + 3 * nb + j] = map[9 * na + i] * x + map[9 * na + 3 + i] * y + map[9 * na + 6 + i] * z;
            }
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
        double[] h = rate;
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
}
