package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Natural cubic spline through given points, from right to left, over their chord length: follows every irregularity.
 */
public final class SplineArch implements ArchCurve {
    private final List<Point> knots;
    private final double[] parameters;
    private final PolynomialSplineFunction x;
    private final PolynomialSplineFunction y;
    private final PolynomialSplineFunction dx;
    private final PolynomialSplineFunction dy;
    private final double midline;

    /** Spline through these points, given from the right posterior end to the left posterior end, mm. */
    public SplineArch(List<Point> knots) {
        if (knots.size() < 3) {
            throw new IllegalArgumentException("a spline arch needs at least 3 points, not " + knots.size());
        }
        this.knots = List.copyOf(knots);
        parameters = parameters(knots);
        SplineInterpolator natural = new SplineInterpolator();
        x = natural.interpolate(parameters, knots.stream().mapToDouble(Point::x).toArray());
        y = natural.interpolate(parameters, knots.stream().mapToDouble(Point::y).toArray());
        dx = x.polynomialSplineDerivative();
        dy = y.polynomialSplineDerivative();
        midline = crossing();
    }

    private static double[] parameters(List<Point> knots) {
        double[] u = new double[knots.size()];
        for (int i = 1; i < u.length; i++) {
            double chord = knots.get(i).distance(knots.get(i - 1));
            if (chord == 0) {
                throw new IllegalArgumentException("two neighbouring points of a spline coincide at " + knots.get(i));
            }
            u[i] = u[i - 1] + chord;
        }
        double total = u[u.length - 1];
        for (int i = 0; i < u.length; i++) {
            u[i] = 2 * u[i] / total - 1;
        }
        u[u.length - 1] = 1;
        return u;
    }

    private double crossing() {
        double best = Double.NaN;
        for (int i = 1; i < parameters.length; i++) {
            double left = knots.get(i).x();
            double right = knots.get(i - 1).x();
            if (right <= 0 && left > 0) {
                double root = right == 0
                        ? parameters[i - 1]
                        : new BrentSolver(1e-14, 1e-13).solve(200, x, parameters[i - 1], parameters[i]);
                // overlapping teeth may cross the midline more than once: the foremost crossing is the front
                if (Double.isNaN(best) || y.value(root) > y.value(best)) {
                    best = root;
                }
            }
        }
        if (Double.isNaN(best)) {
            throw new IllegalArgumentException("the points do not run from the patient's right to the left");
        }
        return best;
    }

    @Override
    public String name() {
        return "cubic spline";
    }

    @Override
    public Point at(double u) {
        return new Point(x.value(u), y.value(u));
    }

    @Override
    public Point derivative(double u) {
        return new Point(dx.value(u), dy.value(u));
    }

    @Override
    public double midline() {
        return midline;
    }

    @Override
    public double[] breaks() {
        return parameters.clone();
    }

    @Override
    public SplineArch mirrored() {
        List<Point> other = new ArrayList<>(knots.stream().map(Point::mirrored).toList());
        Collections.reverse(other);
        return new SplineArch(other);
    }

    @Override
    public ArchCurve reshaped(double newWidth, double newDepth) {
        return ScaledArch.to(this, newWidth, newDepth);
    }
}
