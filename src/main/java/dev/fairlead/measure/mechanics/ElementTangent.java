package dev.fairlead.measure.mechanics;

/** Tangent stiffness of one element in fixed axes. */
final class ElementTangent {
    /**
     * Symmetric part of the tangent in fixed axes: blocks of 3 x 3 for the first node's translation with itself and with both nodes' rotations, and
     * for the rotations with each other. The second node's translation is the first one's opposite.
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
        for (int i = 0; i < 3; i++) {
            double t0 = triad[3 * i];
            double t1 = triad[3 * i + 1];
            double t2 = triad[3 * i + 2];
            double a = t0 * kLocal[from] + t1 * kLocal[from + 9] + t2 * kLocal[from + 18];
            double b = t0 * kLocal[from + 1] + t1 * kLocal[from + 10] + t2 * kLocal[from + 19];
            double c2 = t0 * kLocal[from + 2] + t1 * kLocal[from + 11] + t2 * kLocal[from + 20];
            blocks[to + 3 * i] = a * triad[0] + b * triad[1] + c2 * triad[2];
            blocks[to + 3 * i + 1] = a * triad[3] + b * triad[4] + c2 * triad[5];
            blocks[to + 3 * i + 2] = a * triad[6] + b * triad[7] + c2 * triad[8];
        }
    }

    /** Adds the tangent to the stiffness of the whole wire, of which only lower triangles count. */
    void addTo(ChainMatrix m, int e) {
        double[] own = m.own;
        double[] next = m.next;
        int a = 36 * e;
        int b = a + 36;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                int ij = 6 * i + j;
                double uu = blocks[3 * i + j];
                double first1 = blocks[9 + 3 * j + i];
                double second1 = blocks[18 + 3 * j + i];
                own[a + ij] += uu;
                own[a + ij + 18] += first1;
                own[a + ij + 21] += blocks[27 + 3 * i + j];
                next[a + ij] -= uu;
                next[a + ij + 3] -= blocks[9 + 3 * i + j];
                next[a + ij + 18] += second1;
                next[a + ij + 21] += blocks[36 + 3 * j + i];
                own[b + ij] += uu;
                own[b + ij + 18] -= second1;
                own[b + ij + 21] += blocks[45 + 3 * i + j];
            }
        }
    }
}
