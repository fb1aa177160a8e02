package dev.fairlead.measure.picture;

/**
 * A named point as it was placed: pixels of a picture (x to the right, y down, z 0) or mm of a scan or table (z up).
 */
public record PlacedPoint(String name, double x, double y, double z) {
    private static final double FARTHEST = 1e6;

    public PlacedPoint {
        if (!(Math.abs(x) < FARTHEST) || !(Math.abs(y) < FARTHEST) || !(Math.abs(z) < FARTHEST)) {
            throw new IllegalArgumentException("point " + name + " has coordinates that no picture has");
        }
    }

    /** A point of a plane picture. */
    public static PlacedPoint flat(String name, double x, double y) {
        return new PlacedPoint(name, x, y, 0);
    }
}
