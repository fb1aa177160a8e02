package dev.fairlead.measure.archform;

/**
 * Hawley's construction (1905): the six front teeth on an arc of radius R = central + lateral + canine of one side, the
 * posterior teeth on straight lines to the corners of an equilateral triangle inscribed in a second circle. Closed
 * forms derived here.
 */
public record HawleyArch(double radius) implements ArchCurve {
    private static final double ROOT3 = Math.sqrt(3);

    public HawleyArch {
        Lengths.positive(radius);
    }

    @Override
    public String name() {
        return "Hawley construction";
    }

    /** Radius of the second circle, which is the side of the construction's outer triangle: 4R/sqrt 3, mm. */
    public double secondRadius() {
        return 4 * radius / ROOT3;
    }

    /** Side of the equilateral triangle in the second circle, equal to the width at the posterior ends: 4R, mm. */
    public double triangleSide() {
        return 4 * radius;
    }

    /** Angle between a posterior line and the midline, degrees: 20.94. */
    public double posteriorAngle() {
        return Math.toDegrees(Math.atan2(2 - ROOT3 / 2, 2 * ROOT3 - 0.5));
    }

    @Override
    public double width() {
        return triangleSide();
    }

    @Override
    public double depth() {
        return 2 * ROOT3 * radius;
    }

    /** Where the left front arc ends and the left posterior line begins. */
    public Point canineDistal() {
        return new Point(ROOT3 / 2 * radius, depth() - radius / 2);
    }

    @Override
    public double[] breaks() {
        double j = arcShare();
        return new double[] {-1, -j, 0, j, 1};
    }

    @Override
    public Point at(double u) {
        double s = Math.abs(u) * half();
        double side = Math.signum(u);
        if (s <= arc()) {
            double turn = s / radius;
            return new Point(side * radius * Math.sin(turn), depth() - radius * (1 - Math.cos(turn)));
        }
        Point p = canineDistal().plus(lineDirection().times(s - arc()));
        return new Point(side * p.x(), p.y());
    }

    @Override
    public Point derivative(double u) {
        return tangent(u).times(half());
    }

    @Override
    public Point tangent(double u) {
        double s = Math.abs(u) * half();
        Point t = s <= arc() ? new Point(Math.cos(s / radius), -Math.sin(s / radius)) : lineDirection();
        return u < 0 ? new Point(t.x(), -t.y()) : t;
    }

    @Override
    public ArchCurve reshaped(double newWidth, double newDepth) {
        return ScaledArch.to(this, newWidth, newDepth);
    }

    private double arc() {
        return Math.PI / 3 * radius;
    }

    private double half() {
        return arc() + canineDistal().distance(new Point(2 * radius, 0));
    }

    private double arcShare() {
        return arc() / half();
    }

    private Point lineDirection() {
        return new Point(2 * radius, 0).minus(canineDistal()).unit();
    }
}
