package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Measured;
import java.util.List;

/**
 * One value of one place, and how far it may move to either side before its criterion ends differently.
 *
 * @param below way down to the nearest limit, in the unit of the value; infinite where none lies there
 * @param above way up to the nearest limit; infinite where none lies there
 */
record Span(Measured value, double below, double above) {
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
        return new Span(limits.get(0).value(), below, above);
    }

    /** What one measurement contributes to the error; less for the one that is repeated. */
    double part(String source, String repeated) {
        double part = Compared.measured(source) ? value.part(source) : 0;
        return source.equals(repeated) ? part / Math.sqrt(2) : part;
    }

    private double sd(String repeated) {
        double sum = 0;
        for (String s : value.sources()) {
            double part = part(s, repeated);
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /** Probability that the value stays between its limits. */
    double stays(String repeated) {
        double sd = sd(repeated);
        return sd == 0 ? 1 : 1 - tail(below, sd) - tail(above, sd);
    }

    private static double tail(double distance, double sd) {
        return Double.isInfinite(distance) ? 0 : NormalTail.beyond(distance, sd);
    }

    /** Correlation of the errors of two values; 0 when one has no error. */
    double correlation(Span other, String repeated) {
        double sum = 0;
        for (String s : value.sources()) {
            sum += part(s, repeated) * other.part(s, repeated);
        }
        double scale = sd(repeated) * other.sd(repeated);
        return scale == 0 ? 0 : sum / scale;
    }

    /** Probability that this value stays when that one does. */
    double staysGiven(Span other, String repeated) {
        double given = other.stays(repeated);
        double mine = sd(repeated);
        double its = other.sd(repeated);
        if (given == 0 || mine == 0 || its == 0) {
            return stays(repeated);
        }
        double both = TwoNormals.inside(-below / mine, above / mine, -other.below / its, other.above / its, correlation(other, repeated));
        return Math.max(0, Math.min(1, both / given));
    }
}
