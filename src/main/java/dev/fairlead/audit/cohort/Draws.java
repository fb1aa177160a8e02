package dev.fairlead.audit.cohort;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Draws from one case's own stream of random numbers, rounded as a person would write them. */
final class Draws {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final SplittableRandom random;

    private Draws(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The stream of case {@code index}: it depends on seed and index alone, not on the cases before it. */
    static Draws of(long seed, long index) {
        return new Draws(new SplittableRandom(seed ^ (index * GOLDEN)).nextLong());
    }

    RandomGenerator random() {
        return random;
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A normal value, drawn again until it lies between the two ends. */
    double normal(double mean, double sd, double low, double high) {
        for (int i = 0; i < 50; i++) {
            double v = mean + sd * random.nextGaussian();
            if (v >= low && v <= high) {
                return v;
            }
        }
        return uniform(low, high);
    }

    int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    @SafeVarargs
    final <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }

    /** To a tenth, as rulers are read. */
    static double tenth(double v) {
        return Math.rint(v * 10) / 10 + 0.0;
    }

    static double half(double v) {
        return Math.rint(v * 2) / 2;
    }

    /** A uniform value to a tenth. */
    double tenth(double low, double high) {
        return tenth(uniform(low, high));
    }

    /** Two readings of one true value, each off by a normal error, to a tenth. */
    double[] twice(double value, double error) {
        return new double[] {
            tenth(value + normal(0, error, -2 * error, 2 * error)),
            tenth(value + normal(0, error, -2 * error, 2 * error))
        };
    }
}
