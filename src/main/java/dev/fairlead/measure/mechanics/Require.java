package dev.fairlead.measure.mechanics;

/** Argument checks shared by the input records. */
final class Require {
    private Require() {}

    static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be a positive number: " + value);
        }
    }

    static void notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be zero or a positive number: " + value);
        }
    }
}
