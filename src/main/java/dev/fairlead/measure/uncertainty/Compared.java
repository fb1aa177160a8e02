package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;

/**
 * A known value of a case beside one threshold that a criterion holds it against.
 *
 * @param criterion identifier of the criterion
 * @param place JSON Pointer and words of the place, enough to tell places apart
 * @param component what was measured there
 * @param decides the criterion would end differently if this value alone lay on the other side
 */
public record Compared(String criterion, String place, String component, Measured value, Limit limit, boolean decides) {
    /**
     * Sources of error are JSON Pointers of measurements; other names are errors of a published equation or a model.
     */
    static boolean measured(String source) {
        return source.startsWith("/");
    }

    /** The same, once it is known whether it decides. */
    public Compared deciding(boolean now) {
        return new Compared(criterion, place, component, value, limit, now);
    }

    /**
     * Standard deviation from errors of measurement alone, in the unit of the value: what a repeated reading can
     * change.
     */
    public double measuredSd() {
        return Math.sqrt(measuredVariance());
    }

    double measuredVariance() {
        double sum = 0;
        for (String s : value.sources()) {
            double part = measured(s) ? value.part(s) : 0;
            sum += part * part;
        }
        return sum;
    }

    /** Distance to the limit, in the unit of the value; 0 or more. */
    public double distance() {
        return Math.abs(value.value() - limit.value());
    }

    /** True when the value lies over the limit. */
    boolean over() {
        return value.value() > limit.value();
    }

    /** Probability that errors of measurement put the true value on the other side of the limit. */
    public double flip() {
        return NormalTail.beyond(distance(), measuredSd());
    }

    /**
     * The same for any value, with the errors of published equations and models, which no repeated reading makes
     * smaller.
     */
    public static double flipWithModels(Measured value, Limit limit) {
        return NormalTail.beyond(Math.abs(value.value() - limit.value()), value.sd());
    }
}
