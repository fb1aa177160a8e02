package dev.fairlead.measure.mechanics;

/** Linear Euler-Bernoulli beam within an element's moving frame: stretch and nodal rotation vectors in, forces and stiffness per spin out. */
final class LocalBeam {
    /** Rotation vectors of both nodes against the element frame. */
    final double[] theta = new double[6];
    /** Axial force, then the moments at the first and second node conjugate to the rotation vectors: N, N mm. */
    final double[] section = new double[7];
    /** The moments conjugate to spins. */
    final double[] moment = new double[6];
    /** Stiffness of the moments against spins, 6 x 6; unsymmetric while there is moment. */
    final double[] ka = new double[36];
    /** Elastic energy, N mm. */
    double energy;

    private final double[] map = new double[18];
    private final double[] rate = new double[9];

    /** Forces from theta and the length of the chord. */
    void force(Section s, double l0, double ln) {
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

    /** Fills ka; without the moments' own share when only the material is asked for. */
    void stiffness(Section s, double l0, boolean materialOnly) {
        double t = s.gj() / l0;
        double y = s.eiY() / l0;
        double z = s.eiZ() / l0;
        // ka = map' K map, with K coupling the two nodes axis by axis
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
