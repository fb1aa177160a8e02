package dev.fairlead.measure.wire;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.mechanics.ArchCurve;
import dev.fairlead.measure.mechanics.ArchPath;

/** An arch that is asked for both coordinates of one place after another: it looks up each place once. For one thread. */
final class WalkedPath implements ArchCurve {
    private final ArchPath path;
    private double last = Double.NaN;
    private Point place;

    WalkedPath(ArchPath path) {
        this.path = path;
    }

    private Point at(double arcLength) {
        if (arcLength != last) {
            place = path.place(arcLength);
            last = arcLength;
        }
        return place;
    }

    @Override
    public double x(double arcLength) {
        return at(arcLength).x();
    }

    @Override
    public double y(double arcLength) {
        return at(arcLength).y();
    }

    @Override
    public double rightLength() {
        return path.rightLength();
    }

    @Override
    public double leftLength() {
        return path.leftLength();
    }

    @Override
    public boolean symmetric() {
        return path.symmetric();
    }

    @Override
    public String toString() {
        return path.toString();
    }
}
