package dev.fairlead.measure.mechanics.element;

/**
 * Euler-Bernoulli beam within an element's moving frame: stretch and nodal rotation vectors in, forces and stiffness
 * per spin out. Linear but for one thing: a beam whose ends turn against its chord needs more length than the chord, L
 * (2 t1² - t1 t2 + 2 t2²) / 30 in either plane. Without that a wire, which hardly stretches, is too stiff by an error
 * that falls with the square of the element's length.
 */
public final class LocalBeam {
    /** Rotation vectors of both nodes against the element frame. */
    public final double[] theta = new double[6];
    /** Axial force, then the moments at the first and second node conjugate to the rotation vectors: N, N mm. */
    public final double[] section = new double[7];
    /** The moments conjugate to spins. */
    final double[] moment = new double[6];
    /**
     * Stiffness of the moments against spins, 6 x 6: its symmetric part, as it is unsymmetric while there is moment.
     */
    final double[] ka = new double[36];
    /** The moments conjugate to spins per stretch of the chord; nothing for a straight element. */
    final double[] perStretch = new double[6];
    /** Elastic energy, N mm. */
    public double energy;

    /** Axial force and moments by the elastic stiffness alone, before the chord's shortening turns the axial force. */
    public final double[] stress = new double[7];

    /** How much longer the wire is than its chord on account of the rotations, per rotation. */
    private final double[] slope = new double[7];
    /** Stiffness against stretch and rotation vectors. */
    private final double[] whole = new double[49];

    private double chord;
    private final double[] map = new double[18];
    private final double[] rate = new double[9];
    private final double[] turned = new double[9];

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

    /**
     * Stresses now, and what a stretch (p[0]) and spins against the element (from p[3] on) add in a state that was
     * kept.
     */
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
        double x1 = theta[0];
        double y1 = theta[1];
        double z1 = theta[2];
        double x2 = theta[3];
        double y2 = theta[4];
        double z2 = theta[5];
        int o = 0;
        for (int i = 0; i < 7; i++) {
            stress[i] = k[o] * stretch
                    + k[o + 1] * x1
                    + k[o + 2] * y1
                    + k[o + 3] * z1
                    + k[o + 4] * x2
                    + k[o + 5] * y2
                    + k[o + 6] * z2;
            o += 7;
        }
        energy = 0.5
                * (stress[0] * stretch
                        + stress[1] * x1
                        + stress[2] * y1
                        + stress[3] * z1
                        + stress[4] * x2
                        + stress[5] * y2
                        + stress[6] * z2);
    }

    /** Moments of a node conjugate to its spin from those conjugate to its rotation vector. */
    private void toSpins(int node, double[] from, int o, double[] to) {
        for (int i = 0; i < 3; i++) {
            to[3 * node + i] = map[9 * node + i] * from[o]
                    + map[9 * node + 3 + i] * from[o + 1]
                    + map[9 * node + 6 + i] * from[o + 2];
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
        for (int i = 1; i < 7; i++) {
            int row = 7 * i;
            double lengthens = slope[i];
            double along = k[row] + k[0] * lengthens;
            whole[i] = along;
            int last = i < 4 ? 3 : 6;
            for (int j = 1; j <= last; j++) {
                whole[row + j] = k[row + j] + along * slope[j] + lengthens * k[j];
            }
        }
        if (!materialOnly) {
            double n = stress[0] * chord / 30;
            for (int y = 2; y < 4; y++) {
                whole[8 * y] += 4 * n;
                whole[8 * y + 24] += 4 * n;
                whole[8 * y + 21] -= n;
            }
        }
        toSpins(0, whole, 1, perStretch);
        toSpins(1, whole, 4, perStretch);
        // ka = map' K map, node by node
        block(0, 0);
        block(1, 0);
        block(1, 1);
        if (!materialOnly) {
            addSpinMapRate(0);
            addSpinMapRate(1);
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                ka[6 * i + 3 + j] = ka[6 * j + 18 + i];
            }
        }
    }

    private void block(int na, int nb) {
        double[] k = whole;
        int from = 7 * (1 + 3 * na) + 1 + 3 * nb;
        int left = 9 * na;
        int right = 9 * nb;
        int to = 18 * na + 3 * nb;
        for (int j = 0; j < 3; j++) {
            double m0 = map[right];
            double m1 = map[right + 3];
            double m2 = map[right + 6];
            double x = k[from] * m0 + k[from + 1] * m1 + k[from + 2] * m2;
            double y = k[from + 7] * m0 + k[from + 8] * m1 + k[from + 9] * m2;
            double z = k[from + 14] * m0 + k[from + 15] * m1 + k[from + 16] * m2;
            ka[to] = map[left] * x + map[left + 3] * y + map[left + 6] * z;
            ka[to + 6] = map[left + 1] * x + map[left + 4] * y + map[left + 7] * z;
            ka[to + 12] = map[left + 2] * x + map[left + 5] * y + map[left + 8] * z;
            right++;
            to++;
        }
    }

    /**
     * Adds the symmetric part of d(map' m)/dtheta times map: the moment's own change as the rotation vector changes.
     */
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
        Rotations.multiply(h, 0, map, 9 * node, turned);
        double yx = 0.5 * (turned[1] + turned[3]);
        double zx = 0.5 * (turned[2] + turned[6]);
        double zy = 0.5 * (turned[5] + turned[7]);
        int to = 21 * node;
        ka[to] += turned[0];
        ka[to + 1] += yx;
        ka[to + 2] += zx;
        ka[to + 6] += yx;
        ka[to + 7] += turned[4];
        ka[to + 8] += zy;
        ka[to + 12] += zx;
        ka[to + 13] += zy;
        ka[to + 14] += turned[8];
    }
}
