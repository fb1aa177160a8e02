package dev.fairlead.measure.position;

import java.util.function.DoubleUnaryOperator;

/** One number for each side of the patient. */
public record Sides(double left, double right) {

    public Sides {
        if (!Double.isFinite(left) || !Double.isFinite(right)) {
            throw new IllegalArgumentException("both sides need a finite number, not " + left + " and " + right);
        }
    }

    public static Sides both(double value) {
        return new Sides(value, value);
    }

    public Sides minus(Sides o) {
        return new Sides(left - o.left, right - o.right);
    }

    public Sides map(DoubleUnaryOperator f) {
        return new Sides(f.applyAsDouble(left), f.applyAsDouble(right));
    }

    public double sum() {
        return left + right;
    }

    public double mean() {
        return (left + right) / 2;
    }

    public double max() {
        return Math.max(left, right);
    }

    /** Left and right exchanged. */
    public Sides mirrored() {
        return new Sides(/* left= */ right, /* right= */ left);
    }
}
