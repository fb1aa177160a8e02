package dev.fairlead.measure.archform;

/**
 * The polynomial Y = A X^6 + B X^2 with Y the distance behind the front (Noroozi, Nik & Saeeda, Angle Orthod 2001;71:386),
 * cut off at the posterior ends.
 */
public record SixthDegreeArch(double width, double a, double b) implements ArchCurve {

    public SixthDegreeArch {
        Sizes.positive(width);
        double m2 = width * width / 4;
        if (!(b >= 0) || !(b + 3 * a * m2 * m2 >= 0) || !(b + a * m2 * m2 > 0) || Double.isInfinite(a + b)) {
            throw new IllegalArgumentException(
                    "no arch: the polynomial with A " + a + " and B " + b + " turns back before the posterior ends");
        }
    }

    /** The polynomial through the front, both canine points and both posterior points. */
    public static SixthDegreeArch through(ArchMeasures m) {
        double c2 = m.canineWidth() * m.canineWidth() / 4;
        double m2 = m.molarWidth() * m.molarWidth() / 4;
        double a = (m.molarDepth() / m2 - m.canineDepth() / c2) / (m2 * m2 - c2 * c2);
        return new SixthDegreeArch(m.molarWidth(), a, m.canineDepth() / c2 - a * c2 * c2);
    }

    /** The polynomial of this width and depth, of whose depth the given share comes from the sixth-degree term. */
    static SixthDegreeArch ofShare(double width, double depth, double share) {
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
        return new Point(width / 2, -width / 2 * (6 * a * Math.pow(x, 4) + 2 * b) * x);
    }

    @Override
    public SixthDegreeArch reshaped(double newWidth, double newDepth) {
        return ofShare(newWidth, newDepth, a * Math.pow(width / 2, 6) / depth());
    }

    private double fall(double x) {
        double x2 = x * x;
        return (a * x2 * x2 + b) * x2;
    }
}
