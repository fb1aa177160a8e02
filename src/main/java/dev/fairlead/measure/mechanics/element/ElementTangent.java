package dev.fairlead.measure.mechanics.element;

/** Tangent stiffness of one element in fixed axes. */
public final class ElementTangent {
    /**
     * Symmetric part of the tangent in fixed axes: blocks of 3 x 3 for the first node's translation with itself and
     * with both nodes' rotations, and for the rotations with each other. The second node's translation is the first
     * one's opposite.
     */
    private final double[] blocks = new double[54];

    /** Takes the 9 x 9 tangent {@code kLocal} over, turned into fixed axes by {@code triad}. */
    void turn(double[] kLocal, double[] triad) {
        turnBlock(kLocal, triad, 0, 0, 0);
        turnBlock(kLocal, triad, 0, 1, 9);
        turnBlock(kLocal, triad, 0, 2, 18);
        turnBlock(kLocal, triad, 1, 1, 27);
        turnBlock(kLocal, triad, 1, 2, 36);
        turnBlock(kLocal, triad, 2, 2, 45);
    }

    private void turnBlock(double[] kLocal, double[] triad, int br, int bc, int to) {
        int from = 27 * br + 3 * bc;
        double xx = triad[0];
        double xy = triad[1];
        double xz = triad[2];
        double yx = triad[3];
        double yy = triad[4];
        double yz = triad[5];
        double zx = triad[6];
        double zy = triad[7];
        double zz = triad[8];
        for (int i = 0; i < 9; i += 3) {
            double t0 = triad[i];
            double t1 = triad[i + 1];
            double t2 = triad[i + 2];
            double a = t0 * kLocal[from] + t1 * kLocal[from + 9] + t2 * kLocal[from + 18];
            double b = t0 * kLocal[from + 1] + t1 * kLocal[from + 10] + t2 * kLocal[from + 19];
            double c = t0 * kLocal[from + 2] + t1 * kLocal[from + 11] + t2 * kLocal[from + 20];
            blocks[to + i] = a * xx + b * xy + c * xz;
            blocks[to + i + 1] = a * yx + b * yy + c * yz;
            blocks[to + i + 2] = a * zx + b * zy + c * zz;
        }
    }

    /**
     * Puts the tangent into the stiffness of the whole wire, of which only lower triangles count: on top of that of the
     * element before.
     */
    public void addTo(ChainMatrix m, int e) {
        double[] own = m.own;
        double[] next = m.next;
        double[] k = blocks;
        for (int i = 0; i < 3; i++) {
            int across = i;
            int to = 36 * e + 6 * i;
            for (int ij = 3 * i; ij < 3 * i + 3; ij++) {
                double uu = k[ij];
                double first1 = k[9 + across];
                double second1 = k[18 + across];
                own[to] += uu;
                own[to + 18] += first1;
                own[to + 21] += k[27 + ij];
                next[to] = -uu;
                next[to + 3] = -k[9 + ij];
                next[to + 18] = second1;
                next[to + 21] = k[36 + across];
                own[to + 36] = uu;
                own[to + 54] = -second1;
                own[to + 57] = k[45 + ij];
                across += 3;
                to++;
            }
        }
    }
}
