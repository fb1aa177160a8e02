package dev.fairlead.measure.mechanics;

/**
 * One state of balance of a frame.
 *
 * @param displacement six per node as linear theory gives them; null after large rotations, where position and rotation matrix say it
 * @param internal force and moment the frame asks for at each degree of freedom: where held, what the support exerts on the frame
 * @param ends per element axial force (N), then both end moments about the element's own axes (N mm)
 * @param energy elastic energy, N mm
 */
record Equilibrium(Frame frame, FrameState state, double[] displacement, double[] internal, double[] ends, double energy) {

    /** How far a node has moved along an axis (0 x, 1 y, 2 z), mm. */
    double moved(int node, int axis) {
        return displacement != null
                ? displacement[6 * node + axis]
                : state.position[3 * node + axis] - frame.rest[3 * node + axis];
    }

    /** Bending moment at the first (0) or second (1) end of an element, N mm. */
    double bending(int element, int end) {
        return Math.hypot(ends[7 * element + 2 + 3 * end], ends[7 * element + 3 + 3 * end]);
    }

    /** Whole moment, bending and twist, at the first (0) or second (1) end of an element, N mm. */
    double moment(int element, int end) {
        return Math.hypot(bending(element, end), ends[7 * element + 1 + 3 * end]);
    }

    /** Twisting moment in an element, N mm. */
    double torsion(int element) {
        return ends[7 * element + 4];
    }

    /** Tension in an element, N. */
    double tension(int element) {
        return ends[7 * element];
    }
}
