package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * One value of one place with the errors of measurement in it, and how far it may move before its criterion ends
 * differently.
 */
final class ValueMargin {
    private final List<String> sources;
    private final double[] parts;
    private final double sd;
    private final double below;
    private final double above;
    private final double stays;

    /**
     * {@code below} and {@code above} are the ways to the nearest limits, in the unit of the value; infinite where none
     * lies there.
     */
    private ValueMargin(List<String> sources, double[] parts, double below, double above) {
        this.sources = sources;
        this.parts = parts;
        this.below = below;
        this.above = above;
        double sum = 0;
        for (double p : parts) {
            sum += p * p;
        }
        this.sd = Math.sqrt(sum);
        this.stays = sd == 0 ? 1 : 1 - tail(below) - tail(above);
    }

    /** On each side only the nearest limit counts: whoever passes the next has passed it. */
    static ValueMargin of(List<Compared> limits) {
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
        List<String> sources = new ArrayList<>();
        for (String s : m.sources()) {
            if (Compared.measured(s) && m.part(s) != 0) {
                sources.add(s);
            }
        }
        double[] parts = new double[sources.size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = m.part(sources.get(i));
        }
        return new ValueMargin(sources, parts, below, above);
    }

    /** The measurements that play a part in it, sorted. */
    List<String> sources() {
        return sources;
    }

    private double part(String source) {
        int i = place(source);
        return i < 0 ? 0 : parts[i];
    }

    private int place(String source) {
        return Collections.binarySearch(sources, source);
    }

    boolean shares(ValueMargin other) {
        for (String s : sources) {
            if (other.place(s) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** The same with the error of one measurement divided by sqrt 2. */
    ValueMargin repeated(String source) {
        int i = place(source);
        if (i < 0) {
            return this;
        }
        double[] less = parts.clone();
        less[i] /= Math.sqrt(2);
        return new ValueMargin(sources, less, below, above);
    }

    /** How the value moves to first order with draws whose numbers stand at these places by measurement. */
    Line line(Map<String, Integer> places) {
        int[] at = new int[parts.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = places.getOrDefault(sources.get(i), -1);
        }
        return new Line(at, parts, below, above);
    }

    /** A value as a straight line over draws; a measurement that is not drawn, at -1, does not move. */
    record Line(int[] at, double[] parts, double below, double above) {
        /** True when errors of so many standard deviations carry the value past a limit. */
        boolean crossed(double[] deviations) {
            double moved = 0;
            for (int i = 0; i < at.length; i++) {
                moved += at[i] < 0 ? 0 : parts[i] * deviations[at[i]];
            }
            return moved > above || -moved > below;
        }
    }

    /** Probability that the value stays between its limits. */
    double stays() {
        return stays;
    }

    private double tail(double distance) {
        return Double.isInfinite(distance) ? 0 : NormalTail.beyond(distance, sd);
    }

    /** Correlation of the errors of two values; 0 when one has no error. */
    double correlation(ValueMargin other) {
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += parts[i] * other.part(sources.get(i));
        }
        return sd == 0 || other.sd == 0 ? 0 : sum / (sd * other.sd);
    }

    /** Probability that this value stays when that one does. */
    double staysGiven(ValueMargin other) {
        double r = correlation(other);
        if (r == 0 || other.stays == 0) {
            return stays;
        }
        double both = TwoNormals.inside(-below / sd, above / sd, -other.below / other.sd, other.above / other.sd, r);
        return Math.max(0, Math.min(1, both / other.stays));
    }
}
