package dev.fairlead.measure.uncertainty;

/** Area of a normal distribution. */
public final class NormalTail {
    /**
     * Step of the midpoint rule: what the rule leaves out is exp(-(pi / STEP)^2), which is less than a double can show
     * beside 1.
     */
    private static final double STEP = 0.5;
    /**
     * Squares of the points of the rule, and the bell curve there; beyond the last it is less than a double can show
     * beside 1.
     */
    private static final double[] SQUARES = new double[13];

    private static final double[] BELL = new double[SQUARES.length];

    static {
        for (int i = 0; i < SQUARES.length; i++) {
            double t = (i + 0.5) * STEP;
            SQUARES[i] = t * t;
            BELL[i] = StrictMath.exp(-t * t);
        }
    }

    private NormalTail() {}

    /**
     * Probability that a normal error of this standard deviation exceeds {@code distance} (0 or more, same unit) in one
     * direction.
     */
    public static double beyond(double distance, double sd) {
        if (!(distance >= 0 && sd >= 0)) {
            throw new IllegalArgumentException("distance and error are 0 or more, not " + distance + " and " + sd);
        }
        return sd == 0 ? 0 : erfc(distance / (sd * Math.sqrt(2))) / 2;
    }

    /** Probability that one standard normal variable lies below {@code z}. */
    static double below(double z) {
        return z < 0 ? erfc(-z / Math.sqrt(2)) / 2 : 1 - erfc(z / Math.sqrt(2)) / 2;
    }

    /**
     * Complementary error function of 0 or more: 2 x / pi exp(-x^2) times the integral of exp(-t^2) / (t^2 + x^2) over
     * t, by the midpoint rule with what the pole at t = ix adds to it (Matta &amp; Reichel 1971; Hunter &amp; Regan
     * 1972; cited from memory).
     */
    static double erfc(double x) {
        double bell = StrictMath.exp(-x * x);
        if (bell == 0) {
            return 0;
        }
        double sum = 0;
        for (int i = SQUARES.length - 1; i >= 0; i--) {
            sum += BELL[i] / (SQUARES[i] + x * x);
        }
        double rule = 2 * STEP * x / Math.PI * bell * sum;
        return x < Math.PI / STEP ? rule + 2 / (1 + StrictMath.exp(2 * Math.PI * x / STEP)) : rule;
    }
}
