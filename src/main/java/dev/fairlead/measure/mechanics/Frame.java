package dev.fairlead.measure.mechanics;

/** Straight two-node beam elements of one cross-section, rigidly joined at nodes, in their unloaded shape. */
final class Frame {
    final double[] rest;
    final int[] from;
    final int[] to;
    final Section section;
    /** Element axes at rest, nine per element, row-major; the columns are the element's own x, y and z. */
    final double[] axes;
    final double[] length;

    /**
     * @param rest node positions, three per node, mm
     * @param up direction that lies in every element's local x-z plane; only matters for a section that is not round. Null: any
     */
    Frame(double[] rest, int[] from, int[] to, Section section, double[] up) {
        this.rest = rest;
        this.from = from;
        this.to = to;
        this.section = section;
        this.axes = new double[9 * from.length];
        this.length = new double[from.length];
        for (int e = 0; e < from.length; e++) {
            layOut(e, up);
        }
    }

    /** Elements from each node to the next, so that the stiffness matrix keeps a narrow band. */
    static Frame chain(double[] rest, Section section) {
        return chain(rest, section, null);
    }

    static Frame chain(double[] rest, Section section, double[] up) {
        int elements = rest.length / 3 - 1;
        int[] from = new int[elements];
        int[] to = new int[elements];
        for (int e = 0; e < elements; e++) {
            from[e] = e;
            to[e] = e + 1;
        }
        return new Frame(rest, from, to, section, up);
    }

    int nodes() {
        return rest.length / 3;
    }

    int elements() {
        return from.length;
    }

    private void layOut(int e, double[] up) {
        double dx = rest[3 * to[e]] - rest[3 * from[e]];
        double dy = rest[3 * to[e] + 1] - rest[3 * from[e] + 1];
        double dz = rest[3 * to[e] + 2] - rest[3 * from[e] + 2];
        double l = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (!(l > 0)) {
            throw new IllegalArgumentException("element " + e + " has no length");
        }
        length[e] = l;
        double[] x = {dx / l, dy / l, dz / l};
        double[] z = up == null ? leastAligned(x) : up;
        double[] y = unit(cross(z, x));
        double[] third = cross(x, y);
        for (int i = 0; i < 3; i++) {
            axes[9 * e + 3 * i] = x[i];
            axes[9 * e + 3 * i + 1] = y[i];
            axes[9 * e + 3 * i + 2] = third[i];
        }
    }

    private static double[] leastAligned(double[] x) {
        int k = 0;
        for (int i = 1; i < 3; i++) {
            if (Math.abs(x[i]) < Math.abs(x[k])) {
                k = i;
            }
        }
        double[] axis = new double[3];
        axis[k] = 1;
        return axis;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double l = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
        return new double[] {a[0] / l, a[1] / l, a[2] / l};
    }
}
