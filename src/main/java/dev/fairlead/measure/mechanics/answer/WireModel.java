package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.geometry.Vector;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import java.util.List;

/** One arch as a frame: supports, imposed displacements, and the reading of a state of balance. */
final class WireModel {
    /** Pieces of an element between which its movement and stress are looked at; and where the highest stress is. */
    private static final int FEW = 4;

    private static final int MANY = 20;
    /** So near to the highest stress at few places another element may hold it. */
    private static final double NEAR = 0.93;

    final Centreline line;
    final BeamFrame frame;
    final boolean[] held;
    private final WireSpec wire;
    private final double tubeLength;
    private final double innerRight;
    private final double innerLeft;
    private final Vector rightTail;
    private final Vector leftTail;

    WireModel(Setup setup, Vector rightTail, Vector leftTail) {
        line = Centreline.of(setup);
        wire = setup.wire();
        tubeLength = setup.arch().tubeLength();
        innerRight = inner(setup, setup.right(), setup.alphaR());
        innerLeft = inner(setup, setup.left(), setup.alphaL());
        this.rightTail = rightTail;
        this.leftTail = leftTail;
        frame = line.frame(wire.section(), setup.mesh());
        held = new boolean[6 * frame.nodes()];
        support(setup.tube(), setup.ties());
    }

    private WireModel(WireModel same, TailSupport tube, Ties ties) {
        line = same.line;
        wire = same.wire;
        tubeLength = same.tubeLength;
        innerRight = same.innerRight;
        innerLeft = same.innerLeft;
        rightTail = same.rightTail;
        leftTail = same.leftTail;
        frame = same.frame;
        held = new boolean[same.held.length];
        support(tube, ties);
    }

    /** The same wire otherwise supported. */
    WireModel with(TailSupport tube, Ties ties) {
        return new WireModel(this, tube, ties);
    }

    private void support(TailSupport tube, Ties ties) {
        tube(tube, line.right);
        tube(tube, line.left);
        tie(ties, line.right);
        tie(ties, line.left);
    }

    private void tube(TailSupport tube, Centreline.Ends at) {
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
        return new Solution(
                fraction,
                total.y(),
                total.z(),
                List.of(brackets),
                side(e, line.right, -1),
                side(e, line.left, 1),
                peak(e),
                e.energy(),
                iterations,
                frame.elements());
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
                force,
                moment,
                swing(e, at.tubeMesial(), at.foldEnd(), side),
                swing(e, at.foldEnd(), at.lateral(), side));
    }

    private double swing(Equilibrium e, int from, int to, int side) {
        double most = 0;
        for (int el = Math.min(from, to); el < Math.max(from, to); el++) {
            for (int p = 0; p <= FEW; p++) {
                most = Math.max(most, side * e.moved(el, (double) p / FEW, 0));
            }
        }
        return most;
    }

    /** Looks at a few places of every element, and closely where the stress comes near the highest. */
    private Solution.Peak peak(Equilibrium e) {
        double[] most = new double[frame.elements()];
        double[] whole = new double[frame.elements()];
        double highest = 0;
        for (int el = 0; el < frame.elements(); el++) {
            look(e, el, frame.bow(el) == null ? 1 : FEW, most, whole);
            highest = Math.max(highest, most[el]);
        }
        int where = 0;
        double mises = 0;
        for (int el = 0; el < frame.elements(); el++) {
            if (frame.bow(el) != null && most[el] > NEAR * highest) {
                look(e, el, MANY, most, whole);
            }
            where = most[el] > most[where] ? el : where;
            mises = Math.max(mises, whole[el]);
        }
        double inner = 0;
        for (int el = 0; el < frame.elements(); el++) {
            inner = Math.max(inner, most[el] * innerShare(el));
        }
        return new Solution.Peak(most[where], line.parts[where], where < line.midline, inner, mises);
    }

    /**
     * Stress on the inner side of a bend over that of a straight wire, (4 c² - c - 1) / (4 c (c - 1)) with c the
     * diameter of the bend over that of the wire (Wahl's factor of round wire in bending, from memory).
     */
    static double innerFactor(double radius, double diameter) {
        double c = 2 * radius / diameter;
        return (4 * c * c - c - 1) / (4 * c * (c - 1));
    }

    private double innerShare(int el) {
        boolean bend = line.parts[el] == Solution.Part.BEND_1 || line.parts[el] == Solution.Part.BEND_2;
        return bend ? el < line.midline ? innerRight : innerLeft : 1;
    }

    private static double inner(Setup setup, FoldSpec fold, double alpha) {
        return innerFactor(Math.PI * fold.r() / (Math.PI - alpha), setup.wire().d());
    }

    private void look(Equilibrium e, int el, int pieces, double[] most, double[] whole) {
        double z = wire.sectionModulus();
        double axial = Math.abs(e.tension(el)) / wire.area();
        for (int p = 0; p <= pieces; p++) {
            double[] m = e.moments(el, (double) p / pieces);
            double tau = m[1] / (2 * z);
            double sigma = m[0] / z;
            most[el] = Math.max(most[el], sigma);
            whole[el] = Math.max(whole[el], Math.sqrt((sigma + axial) * (sigma + axial) + 3 * tau * tau));
        }
    }
}
