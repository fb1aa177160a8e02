package dev.fairlead.measure.mechanics;

import java.util.List;

/** One arch as a frame: supports, imposed displacements, and the reading of a state of balance. */
final class Model {
    final Centreline line;
    final Frame frame;
    final boolean[] held;
    private final WireSpec wire;
    private final double tubeLength;
    private final Vector rightTail;
    private final Vector leftTail;

    Model(Setup setup, Vector rightTail, Vector leftTail) {
        line = Centreline.of(setup);
        wire = setup.wire();
        tubeLength = setup.arch().tubeLength();
        this.rightTail = rightTail;
        this.leftTail = leftTail;
        frame = Frame.chain(line.nodes, wire.section());
        held = new boolean[6 * frame.nodes()];
        tube(setup.tube(), line.right);
        tube(setup.tube(), line.left);
        tie(setup.ties(), line.right);
        tie(setup.ties(), line.left);
    }

    private void tube(Tube tube, Centreline.Ends at) {
        switch (tube) {
            case FIXED -> hold(at.tubeMesial(), 0, 1, 2, 3, 4, 5);
            case SPIN -> hold(at.tubeMesial(), 0, 1, 2, 3, 5);
            case HINGE_SPIN -> hold(at.tubeMesial(), 0, 1, 2, 5);
            case TWO_POINT -> {
                hold(at.tubeMesial(), 0, 1, 2);
                hold(at.tubeDistal(), 0, 2);
            }
        }
    }

    private void tie(Ties ties, Centreline.Ends at) {
        int[] ways = switch (ties) {
            case FOUR, LATERALS -> new int[] {1, 2};
            case FOUR_NO_SLIDING -> new int[] {0, 1, 2};
            case FOUR_CLAMPED -> new int[] {0, 1, 2, 3, 4, 5};
        };
        hold(at.lateral(), ways);
        if (ties != Ties.LATERALS) {
            hold(at.central(), ways);
        }
    }

    private void hold(int node, int... ways) {
        for (int way : ways) {
            held[6 * node + way] = true;
        }
    }

    /** Displacements imposed on the supports when the given share of the stand-off is there. */
    double[] imposed(double fraction) {
        double[] u = new double[held.length];
        seat(u, line.right, rightTail, fraction);
        seat(u, line.left, leftTail, fraction);
        return u;
    }

    private void seat(double[] u, Centreline.Ends at, Vector tail, double fraction) {
        for (int node : new int[] {at.tubeMesial(), at.tubeDistal()}) {
            double[] d = {tail.x(), tail.y(), tail.z()};
            for (int i = 0; i < 3; i++) {
                if (held[6 * node + i]) {
                    u[6 * node + i] = d[i] * fraction;
                }
            }
        }
    }

    double[] noLoads() {
        return new double[held.length];
    }

    Solution solution(double fraction, Equilibrium e, int iterations) {
        int[] order = {line.right.lateral(), line.right.central(), line.left.central(), line.left.lateral()};
        Vector total = Vector.ZERO;
        Double[] brackets = new Double[4];
        for (int i = 0; i < 4; i++) {
            Vector f = onSupport(e, order[i], 0);
            total = total.plus(f);
            brackets[i] = f.y();
        }
        return new Solution(fraction, total.y(), total.z(), List.of(brackets), side(e, line.right, -1), side(e, line.left, 1), peak(e),
                e.energy(), iterations, frame.elements());
    }

    /** Force (offset 0) or moment (offset 3) of the wire on what holds a node. */
    private Vector onSupport(Equilibrium e, int node, int offset) {
        double[] v = new double[3];
        for (int i = 0; i < 3; i++) {
            int dof = 6 * node + offset + i;
            v[i] = held[dof] ? -e.internal()[dof] : 0;
        }
        return new Vector(v[0], v[1], v[2]);
    }

    private Solution.Side side(Equilibrium e, Centreline.Ends at, int side) {
        Vector distal = onSupport(e, at.tubeDistal(), 0);
        Vector force = onSupport(e, at.tubeMesial(), 0).plus(distal);
        Vector moment = onSupport(e, at.tubeMesial(), 3).plus(new Vector(0, -tubeLength, 0).cross(distal));
        return new Solution.Side(
                force, moment, swing(e, at.tubeMesial(), at.foldEnd(), side), swing(e, at.foldEnd(), at.lateral(), side));
    }

    private static double swing(Equilibrium e, int from, int to, int side) {
        double most = 0;
        for (int n = Math.min(from, to); n <= Math.max(from, to); n++) {
            most = Math.max(most, side * e.moved(n, 0));
        }
        return most;
    }

    private Solution.Peak peak(Equilibrium e) {
        double z = wire.sectionModulus();
        double bending = 0;
        double mises = 0;
        int where = 0;
        for (int el = 0; el < frame.elements(); el++) {
            double axial = Math.abs(e.tension(el)) / wire.area();
            for (int end = 0; end < 2; end++) {
                double twist = alongWire(e, el, end);
                double whole = e.moment(el, end);
                double sigma = Math.sqrt(Math.max(0, whole * whole - twist * twist)) / z;
                double tau = twist / (2 * z);
                if (sigma > bending) {
                    bending = sigma;
                    where = el;
                }
                mises = Math.max(mises, Math.sqrt(Math.pow(sigma + axial, 2) + 3 * tau * tau));
            }
        }
        return new Solution.Peak(bending, line.parts[where], where < line.midline, mises);
    }

    /** Part of an end moment that twists the wire: along the tangent of the curve at the node, not along the chord, which in a bend leans. */
    private double alongWire(Equilibrium e, int el, int end) {
        int node = el + end;
        double[] t = tangent(node);
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            double component = 0;
            for (int k = 0; k < 3; k++) {
                component += frame.axes[9 * el + 3 * k + axis] * t[k];
            }
            sum += component * e.ends()[7 * el + 1 + 3 * end + axis];
        }
        return sum;
    }

    /** Mean direction of the elements that meet at a node, at rest; an element's own axes hardly turn against its nodes. */
    private double[] tangent(int node) {
        int before = Math.max(node - 1, 0);
        int after = Math.min(node, frame.elements() - 1);
        double[] t = new double[3];
        double square = 0;
        for (int k = 0; k < 3; k++) {
            t[k] = frame.axes[9 * before + 3 * k] + frame.axes[9 * after + 3 * k];
            square += t[k] * t[k];
        }
        for (int k = 0; k < 3; k++) {
            t[k] /= Math.sqrt(square);
        }
        return t;
    }
}
