package dev.fairlead.measure.mechanics;

import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.Point;
import java.util.Arrays;

/** A curve of an arch walked by arc length: tabulated once, with cubic pieces between points that keep place and direction. */
public final class ArchPath implements ArchCurve {
    private static final int PIECES = 240;

    private final dev.fairlead.measure.archform.ArchCurve curve;
    private final double[] along = new double[PIECES + 1];
    private final Point[] at = new Point[PIECES + 1];
    private final Point[] heading = new Point[PIECES + 1];

    /** The path of a patient's arch or of an ideal one. */
    public ArchPath(dev.fairlead.measure.archform.ArchCurve curve) {
        this.curve = curve;
        ArcRuler ruler = curve.ruler();
        double mid = curve.midline();
        for (int i = 0; i <= PIECES; i++) {
            int half = PIECES / 2;
            double u = i <= half ? -1 + (mid + 1) * i / half : mid + (1 - mid) * (i - half) / half;
            along[i] = ruler.fromMidline(u);
            at[i] = curve.at(u);
            heading[i] = curve.tangent(u);
        }
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
        double s = Math.min(Math.max(arcLength, along[0]), along[PIECES]);
        int found = Arrays.binarySearch(along, s);
        if (found >= 0) {
            return at[found];
        }
        int i = -found - 2;
        double h = along[i + 1] - along[i];
        double t = (s - along[i]) / h;
        double back = 1 - t;
        double here = back * back * (1 + 2 * t);
        double next = t * t * (3 - 2 * t);
        double leave = h * t * back * back;
        double arrive = h * t * t * back;
        return new Point(at[i].x() * here + at[i + 1].x() * next + heading[i].x() * leave - heading[i + 1].x() * arrive,
                at[i].y() * here + at[i + 1].y() * next + heading[i].y() * leave - heading[i + 1].y() * arrive);
    }

    @Override
    public String toString() {
        return "path of " + curve.name() + ", " + perimeter() + " mm";
    }
}
