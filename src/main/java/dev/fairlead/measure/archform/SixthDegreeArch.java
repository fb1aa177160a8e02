package dev.fairlead.measure.archform;

import java.util.Arrays;

/**
 * The polynomial Y = A X^6 + B X^2 with Y the distance behind the front (Noroozi, Nik & Saeeda, Angle Orthod
 * 2001;71:386), cut off at the posterior ends.
 */
public record SixthDegreeArch(double width, double a, double b) implements ArchCurve {
    // shares between -1/2 and 1 fall all the way back from the front; kept off the rim, where rounding decides
    private static final double LEAST_SHARE = -0.499;
    private static final double MOST_SHARE = 0.999;
    private static final double NEAR_END = 0.98;

    public SixthDegreeArch {
        Lengths.positive(width);
        double m2 = width * width / 4;
        if (!(b >= 0) || !(b + 3 * a * m2 * m2 >= 0) || a == 0 && b == 0 || Double.isInfinite(a + b)) {
            throw new IllegalArgumentException(
                    "no arch: the polynomial with A " + a + " and B " + b + " turns back before the posterior ends");
        }
    }

    // written out: what Java makes of a record at the first call takes a start longer than all the geometry that is
    // looked up by it
    private double[] parts() {
        return new double[] {width, a, b};
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof SixthDegreeArch c && Arrays.equals(parts(), c.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** The polynomial through the front, both canine points and both posterior points. */
    public static SixthDegreeArch through(ArchDimensions m) {
        double c2 = m.canineWidth() * m.canineWidth() / 4;
        double m2 = m.molarWidth() * m.molarWidth() / 4;
        double a = (m.molarDepth() / m2 - m.canineDepth() / c2) / (m2 * m2 - c2 * c2);
        return new SixthDegreeArch(m.molarWidth(), a, m.canineDepth() / c2 - a * c2 * c2);
    }

    /**
     * The polynomial of this width and depth that comes nearest to the canine points, mm: through them where such an
     * arch exists, else the arch with the nearest share that does not turn back before its ends.
     */
    public static SixthDegreeArch near(double width, double depth, double canineWidth, double canineDepth) {
        Lengths.positive(width, depth, canineWidth, canineDepth);
        double across = Math.min(canineWidth / width, NEAR_END);
        double k2 = across * across;
        double fallen = Math.min(canineDepth / depth, NEAR_END);
        // fallen = share k^6 + (1 - share) k^2
        double share = (fallen - k2) / (k2 * (k2 * k2 - 1));
        return ofShare(width, depth, share);
    }

    /** Share of the depth that comes from the sixth-degree term. */
    public double share() {
        return a * Math.pow(width / 2, 6) / depth();
    }

    /**
     * The polynomial of this width and depth, of whose depth the given share comes from the sixth-degree term; a share
     * outside the range in which the polynomial is an arch is brought to its rim.
     */
    public static SixthDegreeArch ofShare(double width, double depth, double wanted) {
        double share = Math.max(LEAST_SHARE, Math.min(MOST_SHARE, wanted));
        double m2 = width * width / 4;
        return new SixthDegreeArch(width, share * depth / (m2 * m2 * m2), (1 - share) * depth / m2);
    }

    @Override
    public String name() {
        return "sixth-degree polynomial";
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
        double x = u * width / 2;
        return new Point(width / 2, width / 2 * slope(x));
    }

    @Override
    public double speed(double u) {
        double slope = slope(u * width / 2);
        return width / 2 * Math.sqrt(1 + slope * slope);
    }

    @Override
    public SixthDegreeArch reshaped(double newWidth, double newDepth) {
        return ofShare(newWidth, newDepth, share());
    }

    /** dy/dx at x mm to the left of the midline; also beyond the ends. */
    double slope(double x) {
        double x2 = x * x;
        return -(6 * a * x2 * x2 + 2 * b) * x;
    }

    /** Second derivative of y at x, 1/mm. */
    double bend(double x) {
        double x2 = x * x;
        return -(30 * a * x2 * x2 + 2 * b);
    }

    /** How far behind the front the curve lies at x, mm; also beyond the ends. */
    double fall(double x) {
        double x2 = x * x;
        return (a * x2 * x2 + b) * x2;
    }
}
