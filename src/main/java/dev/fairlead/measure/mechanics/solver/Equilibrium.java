package dev.fairlead.measure.mechanics.solver;

import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.FrameState;
import org.jspecify.annotations.Nullable;

/**
 * One state of balance of a frame.
 *
 * @param displacement six per node as linear theory gives them; null after large rotations, where position and rotation
 *     matrix say it
 * @param internal force and moment the frame asks for at each degree of freedom: where held, what the support exerts on
 *     the frame
 * @param ends per element axial force (N), then both end moments about the element's own axes (N mm)
 * @param turns per element rotation vectors of both nodes against the element's own axes, which go with the chord;
 *     nothing in linear theory
 * @param energy elastic energy, N mm
 */
public record Equilibrium(
        BeamFrame frame,
        FrameState state,
        double @Nullable [] displacement,
        double[] internal,
        double[] ends,
        double[] turns,
        double energy) {

    /** How far a node has moved along an axis (0 x, 1 y, 2 z), mm. */
    public double moved(int node, int axis) {
        return displacement != null
                ? displacement[6 * node + axis]
                : state.position[3 * node + axis] - frame.rest[3 * node + axis];
    }

    /**
     * How far the wire at a share of an element has moved along an axis, mm: as if fixed to either node, the nearer one
     * the more.
     */
    public double moved(int element, double share, int axis) {
        double[] p = frame.place(element, share);
        return (1 - share) * carried(element, p, axis) + share * carried(element + 1, p, axis);
    }

    /** Movement of a place that is fixed to a node. */
    private double carried(int node, double[] place, int axis) {
        double[] arm = new double[3];
        for (int k = 0; k < 3; k++) {
            arm[k] = place[k] - frame.rest[3 * node + k];
        }
        if (displacement != null) {
            int a = (axis + 1) % 3;
            int b = (axis + 2) % 3;
            return displacement[6 * node + axis]
                    + displacement[6 * node + 3 + a] * arm[b]
                    - displacement[6 * node + 3 + b] * arm[a];
        }
        double turned = 0;
        for (int k = 0; k < 3; k++) {
            turned += state.rotation[9 * node + 3 * axis + k] * arm[k];
        }
        return moved(node, axis) + turned - arm[axis];
    }

    /**
     * Moment in the wire at a share of an element.
     *
     * @return the bending part and the twisting part, N mm
     */
    public double[] moments(int element, double share) {
        double[] t = inElement(element, frame.direction(element, share));
        // how far a piece of the wire has turned against the chord: the slope of the beam's cubic
        double first = 1 - 4 * share + 3 * share * share;
        double second = 3 * share * share - 2 * share;
        double x = turn(element, 0, 1 - share, share);
        double y = turn(element, 1, first, second);
        double z = turn(element, 2, first, second);
        double[] m = moment(element, share);
        double twist = m[0] * (t[0] + y * t[2] - z * t[1])
                + m[1] * (t[1] + z * t[0] - x * t[2])
                + m[2] * (t[2] + x * t[1] - y * t[0]);
        double whole = m[0] * m[0] + m[1] * m[1] + m[2] * m[2];
        return new double[] {Math.sqrt(Math.max(0, whole - twist * twist)), twist};
    }

    /** What balances the moment at the second node and the force there, in the element's own axes. */
    private double[] moment(int element, double share) {
        int o = 7 * element;
        double l = frame.length[element];
        double fy = -(ends[o + 3] + ends[o + 6]) / l;
        double fz = (ends[o + 2] + ends[o + 5]) / l;
        double[] p = frame.place(element, share);
        for (int k = 0; k < 3; k++) {
            p[k] = frame.rest[3 * element + 3 + k] - p[k];
        }
        double[] arm = inElement(element, p);
        return new double[] {
            ends[o + 4] + arm[1] * fz - arm[2] * fy,
            ends[o + 5] + arm[2] * ends[o] - arm[0] * fz,
            ends[o + 6] + arm[0] * fy - arm[1] * ends[o]
        };
    }

    private double turn(int element, int axis, double first, double second) {
        return first * turns[6 * element + axis] + second * turns[6 * element + 3 + axis];
    }

    private double[] inElement(int element, double[] v) {
        double[] own = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                own[i] += frame.axes[9 * element + 3 * k + i] * v[k];
            }
        }
        return own;
    }

    /** Bending moment at the first (0) or second (1) end of an element, N mm. */
    public double bending(int element, int end) {
        return Math.hypot(ends[7 * element + 2 + 3 * end], ends[7 * element + 3 + 3 * end]);
    }

    /** Twisting moment in an element, N mm. */
    public double torsion(int element) {
        return ends[7 * element + 4];
    }

    /** Tension in an element, N. */
    public double tension(int element) {
        return ends[7 * element];
    }
}
