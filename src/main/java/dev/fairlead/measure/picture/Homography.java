package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/**
 * The plane perspective that takes four corners in a picture to the corners of a rectangle (direct linear
 * transformation of four points; Hartley and Zisserman, Multiple View Geometry, 2nd ed., 4.1; from memory).
 */
final class Homography {
    private final double[] h;
    private final List<PlacedPoint> corners;

    private Homography(double[] h, List<PlacedPoint> corners) {
        this.h = h;
        this.corners = corners;
    }

    /** Corners upper left, upper right, lower right, lower left go to a rectangle with its lower left at the origin. */
    static Homography of(List<PlacedPoint> corners, double width, double height) {
        if (corners.size() != 4) {
            throw new IllegalArgumentException("a frame has four corners, not " + corners.size());
        }
        double[][] to = {{0, height}, {width, height}, {width, 0}, {0, 0}};
        double[][] a = new double[8][8];
        double[] b = new double[8];
        for (int i = 0; i < 4; i++) {
            double x = corners.get(i).x();
            double y = corners.get(i).y();
            double u = to[i][0];
            double v = to[i][1];
            a[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y};
            a[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y};
            b[2 * i] = u;
            b[2 * i + 1] = v;
        }
        if (!convex(corners)) {
            throw new IllegalArgumentException(
                    "the four corners are not in order: upper left, upper right, lower right, lower left");
        }
        try {
            return new Homography(
                    new LUDecomposition(new Array2DRowRealMatrix(a), 1e-9)
                            .getSolver()
                            .solve(new ArrayRealVector(b))
                            .toArray(),
                    List.copyOf(corners));
        } catch (MathRuntimeException e) {
            throw new IllegalArgumentException("three of the four corners lie on one line", e);
        }
    }

    Point place(double x, double y) {
        double w = h[6] * x + h[7] * y + 1;
        return new Point((h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w);
    }

    /** The pixel that goes to a place in mm. */
    Point pixel(Point mm) {
        double a = h[0] - mm.x() * h[6];
        double b = h[1] - mm.x() * h[7];
        double c = h[3] - mm.y() * h[6];
        double d = h[4] - mm.y() * h[7];
        double u = mm.x() - h[2];
        double v = mm.y() - h[5];
        double det = a * d - b * c;
        return new Point((u * d - b * v) / det, (a * v - c * u) / det);
    }

    /** True outside the corners: beyond them nothing holds the perspective. */
    boolean outside(double x, double y) {
        for (int i = 0; i < 4; i++) {
            if (turn(corners.get(i), corners.get((i + 1) % 4), x, y) < 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean convex(List<PlacedPoint> c) {
        for (int i = 0; i < 4; i++) {
            if (!(turn(
                            c.get(i),
                            c.get((i + 1) % 4),
                            c.get((i + 2) % 4).x(),
                            c.get((i + 2) % 4).y())
                    > 0)) {
                return false;
            }
        }
        return true;
    }

    private static double turn(PlacedPoint a, PlacedPoint b, double x, double y) {
        return (b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x());
    }
}
