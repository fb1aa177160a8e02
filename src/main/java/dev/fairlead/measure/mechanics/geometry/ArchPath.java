package dev.fairlead.measure.mechanics.geometry;

import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.Point;
import java.util.Arrays;

/**
 * A curve of an arch walked by arc length: tabulated once, with cubic pieces between points that keep place and
 * direction.
 */
public final class ArchPath implements WireCurve {
    private static final int PIECES = 96;

    private final dev.fairlead.measure.archform.ArchCurve curve;
    private final double[] along = new double[PIECES + 1];
    /** Place and direction at the points: x, y, and x and y per mm. */
    private final double[] knots = new double[4 * (PIECES + 1)];

    /** The path of a patient's arch or of an ideal one. */
    public ArchPath(dev.fairlead.measure.archform.ArchCurve curve) {
        this.curve = curve;
        ArcRuler ruler = curve.ruler();
        double mid = curve.midline();
        int half = PIECES / 2;
        boolean alike = symmetric();
        for (int i = 0; i <= PIECES; i++) {
            if (alike && i > half) {
                mirror(PIECES - i, i);
                continue;
            }
            double u = i <= half ? -1 + (mid + 1) * i / half : mid + (1 - mid) * (i - half) / half;
            along[i] = ruler.fromMidline(u);
            Point at = curve.at(u);
            Point heading = curve.tangent(u);
            knots[4 * i] = at.x();
            knots[4 * i + 1] = at.y();
            knots[4 * i + 2] = heading.x();
            knots[4 * i + 3] = heading.y();
        }
    }

    private void mirror(int from, int to) {
        along[to] = -along[from];
        knots[4 * to] = -knots[4 * from];
        knots[4 * to + 1] = knots[4 * from + 1];
        knots[4 * to + 2] = knots[4 * from + 2];
        knots[4 * to + 3] = -knots[4 * from + 3];
    }

    @Override
    public double rightLength() {
        return -along[0];
    }

    @Override
    public double leftLength() {
        return along[PIECES];
    }

    @Override
    public boolean symmetric() {
        return curve.mirrored().equals(curve);
    }

    @Override
    public double x(double arcLength) {
        return place(arcLength).x();
    }

    @Override
    public double y(double arcLength) {
        return place(arcLength).y();
    }

    /** The point so far from the midline; the end of the curve when it lies beyond. */
    public Point place(double arcLength) {
        double[] place = new double[2];
        at(arcLength, place, new double[2]);
        return new Point(place[0], place[1]);
    }

    @Override
    public void at(double arcLength, double[] place, double[] change) {
        double s = Math.min(Math.max(arcLength, along[0]), along[PIECES]);
        int found = Arrays.binarySearch(along, s);
        int i = Math.min(found >= 0 ? found : -found - 2, PIECES - 1);
        double h = along[i + 1] - along[i];
        double t = (s - along[i]) / h;
        double back = 1 - t;
        for (int k = 0; k < 2; k++) {
            double a = knots[4 * i + k];
            double b = knots[4 * i + 4 + k];
            double da = knots[4 * i + 2 + k];
            double db = knots[4 * i + 6 + k];
            place[k] = a * back * back * (1 + 2 * t) + b * t * t * (3 - 2 * t) + h * t * back * (da * back - db * t);
            change[k] = 6 * t * back * (b - a) / h + da * back * (1 - 3 * t) + db * t * (3 * t - 2);
        }
    }

    @Override
    public String toString() {
        return "path of " + curve.name() + ", " + perimeter() + " mm";
    }
}
