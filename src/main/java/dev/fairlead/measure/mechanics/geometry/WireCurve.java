package dev.fairlead.measure.mechanics.geometry;

/**
 * Plane curve the front of the wire follows, from one tube's mesial end to the other's, by arc length from the midline.
 *
 * <p>Arc length is negative on the patient's right and positive on the left; x and y in mm on the axes of this package.
 */
public interface WireCurve {
    /** Arc length over which a change is read, mm. */
    double STEP = 1e-3;

    /** Arc length from the midline to the mesial end of the right tube, mm, positive. */
    double rightLength();

    /** Arc length from the midline to the mesial end of the left tube, mm, positive. */
    double leftLength();

    /** Transverse position at an arc length from the midline, mm. */
    double x(double arcLength);

    /** Anterior position at an arc length from the midline, mm. */
    double y(double arcLength);

    /**
     * Where the curve is at an arc length from the midline, and how that changes per mm of it: x and y of both, in the
     * first two places.
     */
    default void at(double arcLength, double[] place, double[] change) {
        place[0] = x(arcLength);
        place[1] = y(arcLength);
        double from = Math.max(-rightLength(), arcLength - STEP);
        double to = Math.min(leftLength(), arcLength + STEP);
        change[0] = (x(to) - x(from)) / (to - from);
        change[1] = (y(to) - y(from)) / (to - from);
    }

    /** True when left and right are alike, so that one side stands for both. */
    default boolean symmetric() {
        return false;
    }

    /** Whole length between the tubes' mesial ends, mm. */
    default double perimeter() {
        return rightLength() + leftLength();
    }
}
