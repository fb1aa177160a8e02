package dev.fairlead.rules.catalogue;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One named number that a criterion holds values against.
 *
 * @param name full name, {@code criterion-id.threshold}
 * @param says what it is, in words
 * @param value the default, in {@code unit}
 * @param low least value that may be set
 * @param high greatest value that may be set
 * @param step the practical step in which it changes
 * @param inclusive a value exactly at the limit passes
 * @param bound which side of the limit passes
 * @param sources keys of the bibliography
 */
public record Threshold(
        String name,
        String says,
        Unit unit,
        double value,
        double low,
        double high,
        double step,
        boolean inclusive,
        Bound bound,
        List<String> sources) {
    /** Which side of a threshold passes. */
    public enum Bound {
        /** Values at or under the limit pass. */
        UPPER,
        /** Values at or over the limit pass. */
        LOWER
    }

    public Threshold {
        sources = List.copyOf(sources);
    }

    /** The limit that rules read. */
    public Limit limit() {
        return new Limit(name, value, unit, inclusive);
    }

    /** The same threshold with another value in {@link #unit()}. */
    public Threshold with(double newValue) {
        return new Threshold(name, says, unit, newValue, low, high, step, inclusive, bound, sources);
    }

    /** Why {@code newValue} may not be set, or null when it may. */
    @Nullable
    String fault(double newValue) {
        if (Double.isFinite(newValue) && newValue >= low && newValue <= high) {
            return null;
        }
        return "threshold " + name + " may be set from " + low + " to " + high + " " + unit.symbol() + ", not to "
                + newValue;
    }
}
