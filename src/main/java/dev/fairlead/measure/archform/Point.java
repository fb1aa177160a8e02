package dev.fairlead.measure.archform;

/**
 * A place or a direction in the occlusal plane, mm: x to the patient's left, y anterior. Lengths are plain square
 * roots: no mouth comes near the range where a square overflows.
 */
public record Point(double x, double y) {

    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("coordinates must be finite numbers of mm, not (" + x + ", " + y + ")");
        }
    }

    public Point plus(Point o) {
        return new Point(x + o.x, y + o.y);
    }

    public Point minus(Point o) {
        return new Point(x - o.x, y - o.y);
    }

    public Point times(double f) {
        return new Point(f * x, f * y);
    }

    public double dot(Point o) {
        return x * o.x + y * o.y;
    }

    /** Distance from the origin, mm. */
    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    /** Straight distance to the other point, mm. */
    public double distance(Point o) {
        double dx = x - o.x;
        double dy = y - o.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The same direction with length 1. */
    public Point unit() {
        double l = length();
        if (l == 0) {
            throw new ArithmeticException("a point at the origin has no direction");
        }
        return new Point(x / l, y / l);
    }

    /** Turned a quarter turn from anterior towards the patient's right, so from "leftwards" to "forwards". */
    public Point quarterTurn() {
        return new Point(-y, x);
    }

    /** Left and right exchanged. */
    public Point mirrored() {
        return new Point(-x, y);
    }
}
