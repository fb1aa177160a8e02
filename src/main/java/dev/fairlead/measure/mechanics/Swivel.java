package dev.fairlead.measure.mechanics;

/**
 * Support that lets a node lying along y turn about the fixed x axis and spin about its own axis, and about nothing else: a round tail hinging in
 * a tube.
 *
 * <p>Its three rotational degrees of freedom are measured about x, about the tail as it lies now, and about the normal to both, the blocked one.
 * With finite rotations "rotation about z held" would depend on the order of the two free turns; this does not, and keeps the tangent symmetric.
 */
final class Swivel {
    final int node;
    /** Direction of the tail in the y-z plane. */
    private double cosine = 1;
    private double sine;

    Swivel(int node) {
        this.node = node;
    }

    void follow(FrameState state) {
        double y = state.rotation[9 * node + 4];
        double z = state.rotation[9 * node + 7];
        double l = Math.hypot(y, z);
        cosine = y / l;
        sine = z / l;
    }

    /** Turns the moment at offset at of an element's force, and the matching rows and columns of its tangent (null: none), into own axes. */
    void toOwnAxes(double[] force, double[] tangent, int at) {
        double my = force[at + 1];
        double mz = force[at + 2];
        force[at + 1] = cosine * my + sine * mz;
        force[at + 2] = -sine * my + cosine * mz;
        if (tangent == null) {
            return;
        }
        int y = at + 1;
        int z = at + 2;
        for (int i = 0; i < 12; i++) {
            double a = tangent[12 * i + y];
            double b = tangent[12 * i + z];
            tangent[12 * i + y] = cosine * a + sine * b;
            tangent[12 * i + z] = -sine * a + cosine * b;
        }
        for (int i = 0; i < 12; i++) {
            double a = tangent[12 * y + i];
            double b = tangent[12 * z + i];
            tangent[12 * y + i] = cosine * a + sine * b;
            tangent[12 * z + i] = -sine * a + cosine * b;
        }
        // the spin axis itself turns about x, so the blocked moment couples the two free turns
        tangent[12 * at + y] += 0.5 * force[z];
        tangent[12 * y + at] += 0.5 * force[z];
    }

    /** Applies the rotational part of a step given in own axes: the spin first, then the turn about x. */
    void advance(FrameState state, double aboutX, double spin) {
        Rotations.rotate(state.rotation, 9 * node, 0, cosine * spin, sine * spin);
        Rotations.rotate(state.rotation, 9 * node, aboutX, 0, 0);
    }

    /** Turns the moment at this node back to fixed axes. */
    void toFixedAxes(double[] perDegree) {
        int at = 6 * node + 3;
        double t = perDegree[at + 1];
        double n = perDegree[at + 2];
        perDegree[at + 1] = cosine * t - sine * n;
        perDegree[at + 2] = sine * t + cosine * n;
    }
}
