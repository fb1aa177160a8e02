package dev.fairlead.measure.mechanics.geometry;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Arch form given as points, for instance a patient's fitted arch, joined by straight pieces; the midline is where x
 * changes sign.
 */
public final class PolylineCurve implements WireCurve {
    private final double[] xs;
    private final double[] ys;
    private final double[] along;
    private final double midline;

    /**
     * @param xs transverse positions from the right tube's mesial end to the left one's, mm; negative to positive
     * @param ys anterior positions of the same points, mm
     */
    public PolylineCurve(double[] xs, double[] ys) {
        if (xs.length != ys.length || xs.length < 3) {
            throw new IllegalArgumentException("an arch needs at least three points, with as many x as y");
        }
        if (!(xs[0] < 0) || !(xs[xs.length - 1] > 0)) {
            throw new IllegalArgumentException("an arch runs from the patient's right (x < 0) to the left (x > 0)");
        }
        this.xs = xs.clone();
        this.ys = ys.clone();
        along = new double[xs.length];
        double mid = Double.NaN;
        for (int i = 1; i < xs.length; i++) {
            double step = Math.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]);
            if (!(step > 0)) {
                throw new IllegalArgumentException(
                        "arch points " + (i - 1) + " and " + i + " coincide or are not numbers");
            }
            along[i] = along[i - 1] + step;
            if (Double.isNaN(mid) && xs[i] >= 0) {
                mid = along[i - 1] + step * -xs[i - 1] / (xs[i] - xs[i - 1]);
            }
        }
        midline = mid;
    }

    /**
     * Samples a function y(x).
     *
     * @param right x of the right tube's mesial end, mm, negative
     * @param left x of the left tube's mesial end, mm, positive
     */
    public static PolylineCurve of(DoubleUnaryOperator y, double right, double left, int points) {
        double[] xs = new double[points];
        double[] ys = new double[points];
        for (int i = 0; i < points; i++) {
            // cosine spacing: arches are steepest at the molars
            xs[i] = (right + left) / 2 - (left - right) / 2 * Math.cos(Math.PI * i / (points - 1));
            ys[i] = y.applyAsDouble(xs[i]);
        }
        return new PolylineCurve(xs, ys);
    }

    @Override
    public double rightLength() {
        return midline;
    }

    @Override
    public double leftLength() {
        return along[along.length - 1] - midline;
    }

    @Override
    public double x(double arcLength) {
        return at(xs, arcLength);
    }

    @Override
    public double y(double arcLength) {
        return at(ys, arcLength);
    }

    private double at(double[] values, double arcLength) {
        double s = Math.min(Math.max(midline + arcLength, 0), along[along.length - 1]);
        int i = Arrays.binarySearch(along, s);
        if (i >= 0) {
            return values[i];
        }
        int j = -i - 2;
        double t = (s - along[j]) / (along[j + 1] - along[j]);
        return values[j] + t * (values[j + 1] - values[j]);
    }
}
