package dev.fairlead.measure.archform;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Finds the point of one curve nearest to a given point. */
final class Projector {
    private static final int SAMPLES = 48;

    /** Nearest point: its parameter, itself, and the distance of the given point, positive outside the arch, mm. */
    record Foot(double u, Point point, double outside) {}

    private final ArchCurve curve;
    private final double[] parameters;
    private final List<Point> samples;

    Projector(ArchCurve curve) {
        this.curve = curve;
        parameters = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            parameters[i] = 2.0 * i / SAMPLES - 1;
        }
        samples = Arrays.stream(parameters).mapToObj(curve::at).toList();
    }

    ArchCurve curve() {
        return curve;
    }

    Foot nearest(Point p) {
        int best = 0;
        for (int i = 1; i <= SAMPLES; i++) {
            if (samples.get(i).distance(p) < samples.get(best).distance(p)) {
                best = i;
            }
        }
        double lo = parameters[Math.max(0, best - 1)];
        double hi = parameters[Math.min(SAMPLES, best + 1)];
        return refine(curve, p, lo, hi);
    }

    /** Nearest point within the bracket, by the root of the tangential component of the distance. */
    private static Foot refine(ArchCurve curve, Point p, double lo, double hi) {
        double atLo = along(curve, p, lo);
        double atHi = along(curve, p, hi);
        double u;
        if (atLo < 0 && atHi > 0) {
            u = new BrentSolver(1e-12, 1e-12, 1e-13).solve(100, v -> along(curve, p, v), lo, hi);
        } else if (atLo >= 0) {
            u = lo;
        } else {
            u = hi;
        }
        Point foot = curve.at(u);
        Point off = p.minus(foot);
        double side = curve.normal(u).dot(off);
        return new Foot(u, foot, side < 0 ? -off.length() : off.length());
    }

    private static double along(ArchCurve curve, Point p, double u) {
        return curve.at(u).minus(p).dot(curve.tangent(u));
    }
}
