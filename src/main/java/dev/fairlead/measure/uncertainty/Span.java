package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Measured;
import java.util.Arrays;
import java.util.List;

/** One value of one place with the errors of measurement in it, and how far it may move before its criterion ends differently. */
final class Span {
    private final String[] sources;
    private final double[] parts;
    private final double sd;
    private final double below;
    private final double above;

    /** {@code below} and {@code above} are the ways to the nearest limits, in the unit of the value; infinite where none lies there. */
    private Span(String[] sources, double[] parts, double below, double above) {
        this.sources = sources;
        this.parts = parts;
        this.below = below;
        this.above = above;
        this.sd = Math.sqrt(Arrays.stream(parts).map(p -> p * p).sum());
    }

    /** On each side only the nearest limit counts: whoever passes the next has passed it. */
    static Span of(List<Compared> limits) {
        double below = Double.POSITIVE_INFINITY;
        double above = Double.POSITIVE_INFINITY;
        for (Compared c : limits) {
            if (c.over()) {
                below = Math.min(below, c.distance());
            } else {
                above = Math.min(above, c.distance());
            }
        }
        Measured m = limits.get(0).value();
        String[] sources = m.sources().stream().filter(Compared::measured).toArray(String[]::new);
        return new Span(sources, Arrays.stream(sources).mapToDouble(m::part).toArray(), below, above);
    }

    boolean rests(String source) {
        return part(source) != 0;
    }

    private double part(String source) {
        int i = Arrays.binarySearch(sources, source);
        return i < 0 ? 0 : parts[i];
    }

    boolean shares(Span other) {
        return Arrays.stream(sources).anyMatch(other::rests);
    }

    /** The same with the error of one measurement divided by sqrt 2. */
    Span repeated(String source) {
        int i = Arrays.binarySearch(sources, source);
        if (i < 0) {
            return this;
        }
        double[] less = parts.clone();
        less[i] /= Math.sqrt(2);
        return new Span(sources, less, below, above);
    }

    /** Probability that the value stays between its limits. */
    double stays() {
        return sd == 0 ? 1 : 1 - tail(below) - tail(above);
    }

    private double tail(double distance) {
        return Double.isInfinite(distance) ? 0 : NormalTail.beyond(distance, sd);
    }

    /** Correlation of the errors of two values; 0 when one has no error. */
    double correlation(Span other) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += parts[i] * other.part(sources[i]);
        }
        return sd == 0 || other.sd == 0 ? 0 : sum / (sd * other.sd);
    }

    /** Probability that this value stays when that one does. */
    double staysGiven(Span other) {
        double r = correlation(other);
        double given = other.stays();
        if (r == 0 || given == 0) {
            return stays();
        }
        double both = TwoNormals.inside(-below / sd, above / sd, -other.below / other.sd, other.above / other.sd, r);
        return Math.max(0, Math.min(1, both / given));
    }
}
