package dev.fairlead.measure.archform;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A chain hung from the posterior ends, height falling from the front by a (cosh(x/a) - 1) (use for arches: MacConaill
 * & Scher 1949, from memory).
 */
public record CatenaryArch(double width, double a) implements ArchCurve {

    public CatenaryArch {
        Lengths.positive(width, a);
    }

    /** The catenary between ends this far apart and this deep, mm. */
    public static CatenaryArch of(double width, double depth) {
        Lengths.positive(width, depth);
        double ratio = 2 * depth / width;
        // (cosh c - 1)/c grows from 0 like c/2 and lies above c/2 everywhere, so the root lies below 2 ratio
        double c = new BrentSolver(1e-15, 1e-14, 1e-15)
                .solve(200, v -> 2 * Math.pow(Math.sinh(v / 2), 2) - ratio * v, 1e-9 * ratio, bound(ratio));
        return new CatenaryArch(width, width / (2 * c));
    }

    private static double bound(double ratio) {
        return Math.min(2 * ratio * (1 + 1e-12), 40 + Math.log1p(ratio));
    }

    @Override
    public String name() {
        return "catenary";
    }

    @Override
    public double depth() {
        return fall(width / 2);
    }

    @Override
    public Point at(double u) {
        double x = u * width / 2;
        return new Point(x, depth() - fall(x));
    }

    @Override
    public Point derivative(double u) {
        return new Point(width / 2, -width / 2 * Math.sinh(u * width / (2 * a)));
    }

    @Override
    public CatenaryArch reshaped(double newWidth, double newDepth) {
        return of(newWidth, newDepth);
    }

    private double fall(double x) {
        double s = Math.sinh(x / (2 * a));
        return 2 * a * s * s;
    }
}
