package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Solution.Part;
import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.CurvedBeam;
import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.geometry.WireCurve;
import java.util.ArrayList;
import java.util.List;

/**
 * Passive shape of the wire: the front at the brackets, the tails where the opened folds leave them, as nodes from the
 * distal end of the right tube to that of the left.
 */
final class Centreline {
    /** Nodes of one side, from the distal end of the tube to the midline. */
    private static final class Half {
        final List<double[]> points = new ArrayList<>();
        final List<Part> parts = new ArrayList<>();
        final List<CurvedBeam> bows = new ArrayList<>();
        int mesialEnd;
        int foldEnd;
        int lateral;
        int central;

        void start(double x, double y, double z) {
            points.add(new double[] {x, y, z});
        }

        void straight(Part part, double x, double y, double z) {
            parts.add(part);
            bows.add(null);
            points.add(new double[] {x, y, z});
        }

        /** A piece of a curve from the last point on, curved or straight as the mesh has it. */
        void piece(Part part, Mesh mesh, Curve curve, double from, double to) {
            double[] end = new double[3];
            double[] along = new double[3];
            if (!mesh.curved()) {
                curve.at(to, end, along);
                straight(part, end[0], end[1], end[2]);
                return;
            }
            CurvedBeam bow = new CurvedBeam();
            for (int p = 0; p < CurvedBeam.POINTS; p++) {
                curve.at(from + (to - from) * p / (CurvedBeam.POINTS - 1), end, along);
                for (int k = 0; k < 3; k++) {
                    bow.at[3 * p + k] = end[k];
                    bow.along[3 * p + k] = along[k] * (to - from);
                }
            }
            // a straight piece too short for an element of its own may lie before the curve
            System.arraycopy(points.get(last()), 0, bow.at, 0, 3);
            parts.add(part);
            bows.add(bow);
            points.add(end);
        }

        int last() {
            return points.size() - 1;
        }
    }

    /** A curve by a parameter: its place, mm, and how that changes with the parameter. */
    private interface Curve {
        void at(double f, double[] place, double[] change);
    }

    final double[] nodes;
    final Part[] parts;
    private final CurvedBeam[] bows;
    final Ends right;
    final Ends left;
    final int midline;

    /** Node numbers that matter on one side. */
    record Ends(int tubeDistal, int tubeMesial, int foldEnd, int lateral, int central) {}

    private Centreline(Half r, Half l) {
        int n = r.points.size() + l.points.size() - 1;
        nodes = new double[3 * n];
        parts = new Part[n - 1];
        bows = new CurvedBeam[n - 1];
        midline = r.last();
        for (int i = 0; i < r.points.size(); i++) {
            System.arraycopy(r.points.get(i), 0, nodes, 3 * i, 3);
        }
        for (int i = 0; i < l.last(); i++) {
            System.arraycopy(l.points.get(i), 0, nodes, 3 * (n - 1 - i), 3);
            parts[n - 2 - i] = l.parts.get(i);
            bows[n - 2 - i] = l.bows.get(i) == null ? null : l.bows.get(i).reversed();
        }
        for (int i = 0; i < r.last(); i++) {
            parts[i] = r.parts.get(i);
            bows[i] = r.bows.get(i);
        }
        right = new Ends(0, r.mesialEnd, r.foldEnd, r.lateral, r.central);
        left = new Ends(n - 1, n - 1 - l.mesialEnd, n - 1 - l.foldEnd, n - 1 - l.lateral, n - 1 - l.central);
    }

    static Centreline of(Setup setup) {
        return new Centreline(
                half(setup, setup.right(), setup.alphaR(), -1), half(setup, setup.left(), setup.alphaL(), 1));
    }

    /** The right half alone, up to the midline. */
    static Centreline rightHalf(Setup setup) {
        Half right = half(setup, setup.right(), setup.alphaR(), -1);
        Half none = new Half();
        none.points.add(right.points.get(right.last()));
        return new Centreline(right, none);
    }

    /** The wire as a frame. */
    BeamFrame frame(SectionStiffness section, Mesh mesh) {
        return mesh.curved() ? BeamFrame.curved(nodes, section, bows) : BeamFrame.chain(nodes, section);
    }

    /** Length of wire between two nodes, mm. */
    double length(int fromNode, int toNode) {
        double sum = 0;
        for (int i = fromNode; i < toNode; i++) {
            sum += bows[i] != null
                    ? bows[i].length()
                    : Math.sqrt(Math.pow(nodes[3 * i + 3] - nodes[3 * i], 2)
                            + Math.pow(nodes[3 * i + 4] - nodes[3 * i + 1], 2)
                            + Math.pow(nodes[3 * i + 5] - nodes[3 * i + 2], 2));
        }
        return sum;
    }

    private static Half half(Setup setup, FoldSpec fold, double alpha, int side) {
        Half h = new Half();
        WireCurve curve = setup.arch().curve();
        double reach = side < 0 ? curve.rightLength() : curve.leftLength();
        double tubeX = Math.abs(curve.x(side * reach));
        double tubeY = curve.y(side * reach);
        // in the plane of the fold: p forward, w away from the tube, both from the closed fold's tube; the third leg
        // ends where it always does
        double p = -FoldKinematics.forward(fold, alpha);
        double w = -FoldKinematics.gingival(fold, alpha);
        var draw = new Pen(h, fold, side, tubeX, tubeY, setup.mesh());
        draw.startAt(p - setup.arch().tubeLength(), w);
        draw.straight(Part.TUBE, setup.arch().tubeLength(), 0);
        h.mesialEnd = h.last();
        draw.straight(Part.GAP, fold.gap(), 0);
        double r1 = FoldKinematics.openedRadius(fold, alpha);
        draw.bend(Part.BEND_1, r1, 0, Math.PI - alpha);
        draw.straight(Part.LEG_2, fold.leg(), Math.PI - alpha);
        draw.bend(Part.BEND_2, r1, Math.PI - alpha, alpha - Math.PI);
        draw.straight(Part.LEG_3, fold.leg3(), 0);
        h.foldEnd = h.last();
        run(h, setup, side, fold.gap() - fold.leg() + fold.leg3());
        return h;
    }

    /**
     * From the third leg along the arch form to the midline; buccal and vertical offsets fade out before the lateral
     * incisor.
     */
    private static void run(Half h, Setup setup, int side, double forwardOfTube) {
        WireCurve curve = setup.arch().curve();
        ArchGeometry arch = setup.arch();
        double level = setup.bracketLevel();
        double reach = side < 0 ? curve.rightLength() : curve.leftLength();
        double[] end = h.points.get(h.last());
        double start = forwardOfTube <= 0 ? reach - forwardOfTube : abreast(curve, side, reach, forwardOfTube);
        double buccal = end[0] - x(curve, side, reach, start);
        double vertical = end[2] - level;
        double length = start - arch.lateral();
        Curve run = (f, place, change) -> {
            double fade = 1 - 3 * f * f + 2 * f * f * f;
            double faster = 6 * f * (f - 1);
            double s = start - f * length;
            curve.at(side * Math.min(s, reach), place, change);
            // behind the tube's mesial end the arch form goes straight on
            boolean behind = s > reach;
            place[0] += buccal * fade;
            place[1] -= behind ? s - reach : 0;
            place[2] = level + vertical * fade;
            change[0] = (behind ? 0 : -side * length * change[0]) + buccal * faster;
            change[1] = behind ? length : -side * length * change[1];
            change[2] = vertical * faster;
        };
        pieces(h, setup, Part.RUN, run, length);
        h.lateral = h.last();
        front(h, setup, side, arch.lateral(), arch.central(), level);
        h.central = h.last();
        front(h, setup, side, arch.central(), 0, level);
    }

    private static void front(Half h, Setup setup, int side, double from, double to, double level) {
        WireCurve curve = setup.arch().curve();
        pieces(
                h,
                setup,
                Part.FRONT,
                (f, place, change) -> {
                    double s = side * (from + (to - from) * f);
                    curve.at(s, place, change);
                    place[2] = level;
                    change[0] *= side * (to - from);
                    change[1] *= side * (to - from);
                    change[2] = 0;
                },
                from - to);
    }

    private static void pieces(Half h, Setup setup, Part part, Curve curve, double length) {
        int n = setup.mesh().pieces(length);
        for (int i = 1; i <= n; i++) {
            h.piece(part, setup.mesh(), curve, (i - 1.0) / n, (double) i / n);
        }
    }

    /** The arch form goes on straight behind the tube's mesial end. */
    private static double x(WireCurve curve, int side, double reach, double s) {
        return curve.x(side * Math.min(s, reach));
    }

    /** Arc length from the midline at which the arch form first lies so far in front of the tube's mesial end. */
    private static double abreast(WireCurve curve, int side, double reach, double forward) {
        double tubeY = curve.y(side * reach);
        double near = reach;
        double far = reach;
        double step = forward / 2;
        while (curve.y(side * far) - tubeY < forward) {
            near = far;
            far -= step;
            if (far <= 0) {
                throw new IllegalArgumentException("the fold's third leg reaches beyond the front of the arch");
            }
        }
        for (int i = 0; i < 60; i++) {
            double mid = (near + far) / 2;
            if (curve.y(side * mid) - tubeY < forward) {
                near = mid;
            } else {
                far = mid;
            }
        }
        return far;
    }

    /** Draws straights and bends in the plane of a fold. */
    private static final class Pen {
        /**
         * A shorter straight piece gets no element of its own, which would be very stiff, but is joined to the next,
         * mm.
         */
        private static final double SHORTEST = 0.05;

        private final Half half;
        private final int side;
        private final double tubeX;
        private final double tubeY;
        private final double sine;
        private final double cosine;
        private final Mesh mesh;
        private double p;
        private double w;

        Pen(Half half, FoldSpec fold, int side, double tubeX, double tubeY, Mesh mesh) {
            this.half = half;
            this.side = side;
            this.tubeX = tubeX;
            this.tubeY = tubeY;
            this.sine = Math.sin(fold.tip());
            this.cosine = Math.cos(fold.tip());
            this.mesh = mesh;
        }

        void startAt(double startP, double startW) {
            p = startP;
            w = startW;
            half.start(side * (tubeX + w * sine), tubeY + p, -w * cosine);
        }

        void straight(Part part, double length, double heading) {
            if (length < SHORTEST) {
                p += length * Math.cos(heading);
                w += length * Math.sin(heading);
                return;
            }
            int n = mesh.pieces(length);
            double p0 = p;
            double w0 = w;
            for (int i = 1; i <= n; i++) {
                p = p0 + length * i / n * Math.cos(heading);
                w = w0 + length * i / n * Math.sin(heading);
                half.straight(part, side * (tubeX + w * sine), tubeY + p, -w * cosine);
            }
        }

        /** Arc of radius r from a heading through a signed turn; headings turn from forward to away from the tube. */
        void bend(Part part, double r, double heading, double turn) {
            double sign = Math.signum(turn);
            double p0 = p - sign * r * Math.sin(heading);
            double w0 = w + sign * r * Math.cos(heading);
            Curve arc = (a, place, change) -> {
                double across = w0 - sign * r * Math.cos(a);
                double deeper = sign * r * Math.sin(a);
                place[0] = side * (tubeX + across * sine);
                place[1] = tubeY + p0 + deeper;
                place[2] = -across * cosine;
                change[0] = side * deeper * sine;
                change[1] = sign * r * Math.cos(a);
                change[2] = -deeper * cosine;
            };
            int n = mesh.perBend();
            for (int i = 1; i <= n; i++) {
                half.piece(part, mesh, arc, heading + turn * (i - 1) / n, heading + turn * i / n);
            }
            p = p0 + sign * r * Math.sin(heading + turn);
            w = w0 - sign * r * Math.cos(heading + turn);
        }
    }
}
