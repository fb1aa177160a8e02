package dev.fairlead.measure.archform;

import dev.fairlead.measure.working.LatestAnswers;
import java.util.Arrays;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Arc lengths of one curve, tabulated once by Gauss-Legendre quadrature over smooth panels. */
public final class ArcRuler {
    private static final int PANELS = 8;
    /**
     * Gauss-Legendre rule of ten points between -1 and 1, from one end to the other (Abramowitz &amp; Stegun, table
     * 25.4).
     */
    static final double[] POINTS = {
        -0.9739065285171717,
        -0.8650633666889845,
        -0.6794095682990244,
        -0.43339539412924716,
        -0.14887433898163122,
        0.14887433898163122,
        0.43339539412924716,
        0.6794095682990244,
        0.8650633666889845,
        0.9739065285171717
    };

    static final double[] WEIGHTS = {
        0.06667134430868803,
        0.14945134915058053,
        0.21908636251598204,
        0.26926671930999624,
        0.2955242247147529,
        0.2955242247147529,
        0.26926671930999624,
        0.21908636251598204,
        0.14945134915058053,
        0.06667134430868803
    };
    private static final double SLACK = 1e-9;
    /** Of one arch many lengths are asked for from several sides, one after the other. */
    private static final LatestAnswers<ArchCurve, ArcRuler> LATEST = new LatestAnswers<>(256, ArcRuler::new);

    private final ArchCurve curve;
    private final double[] knots;
    private final double[] lengths;
    private final double atMidline;

    /** The ruler of that curve, made anew only where it is not among the latest. */
    static ArcRuler of(ArchCurve curve) {
        return LATEST.of(curve);
    }

    private ArcRuler(ArchCurve curve) {
        this.curve = curve;
        double[] breaks = curve.breaks();
        int per = Math.max(2, (PANELS + breaks.length - 2) / (breaks.length - 1));
        knots = new double[per * (breaks.length - 1) + 1];
        lengths = new double[knots.length];
        knots[0] = breaks[0];
        for (int k = 1; k < knots.length; k++) {
            int interval = (k - 1) / per;
            int part = (k - 1) % per + 1;
            knots[k] = part == per
                    ? breaks[interval + 1]
                    : breaks[interval] + (breaks[interval + 1] - breaks[interval]) * part / per;
            lengths[k] = lengths[k - 1] + panel(knots[k - 1], knots[k]);
        }
        atMidline = fromRight(curve.midline());
    }

    /** Length of the whole curve, mm. */
    public double perimeter() {
        return lengths[lengths.length - 1];
    }

    /** Arc length of the right posterior end, from the midline, mm: not positive. */
    public double start() {
        return -atMidline;
    }

    /** Arc length of the left posterior end, from the midline, mm. */
    public double end() {
        return perimeter() - atMidline;
    }

    /** Arc length from the midline to the parameter, mm, positive to the patient's left. */
    public double fromMidline(double u) {
        return fromRight(u) - atMidline;
    }

    /** Arc length from parameter a to parameter b, mm; negative when b lies to the right of a. */
    public double between(double a, double b) {
        return fromRight(b) - fromRight(a);
    }

    /** Parameter of the point this many mm from the midline; refused when the curve ends before. */
    public double parameterAt(double fromMidline) {
        double s = fromMidline + atMidline;
        if (!(s >= -SLACK && s <= perimeter() + SLACK)) {
            throw new IllegalArgumentException("the curve runs from " + start() + " to " + end()
                    + " mm from the midline, " + fromMidline + " mm is not on it");
        }
        int found = Arrays.binarySearch(lengths, s);
        if (found >= 0) {
            return knots[found];
        }
        int right = Math.min(Math.max(-found - 1, 1), knots.length - 1);
        double from = knots[right - 1];
        double to = knots[right];
        double wanted = s - lengths[right - 1];
        if (wanted <= 0) {
            return from;
        }
        if (wanted >= lengths[right] - lengths[right - 1]) {
            return to;
        }
        double guess = from + (to - from) * wanted / (lengths[right] - lengths[right - 1]);
        return new BrentSolver(1e-14, 1e-13, 1e-13).solve(100, u -> panel(from, u) - wanted, from, to, guess);
    }

    private double fromRight(double u) {
        int found = Arrays.binarySearch(knots, u);
        if (found >= 0) {
            return lengths[found];
        }
        int right = -found - 1;
        if (right == 0 || right == knots.length) {
            throw new IllegalArgumentException("a parameter lies between -1 and 1, not at " + u);
        }
        return lengths[right - 1] + panel(knots[right - 1], u);
    }

    private double panel(double from, double to) {
        double half = (to - from) / 2;
        double mid = (to + from) / 2;
        double sum = 0;
        for (int i = 0; i < POINTS.length; i++) {
            sum += WEIGHTS[i] * curve.speed(mid + half * POINTS[i]);
        }
        return half * sum;
    }
}
