package dev.fairlead.measure.mechanics.geometry;

/** Argument checks shared by the input records. */
public final class Require {
    private Require() {}

    public static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be a positive number: " + value);
        }
    }

    public static void notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be zero or a positive number: " + value);
        }
    }
}
