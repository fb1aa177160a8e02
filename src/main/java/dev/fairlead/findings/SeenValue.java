package dev.fairlead.findings;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.Threshold;

/**
 * A value of this case beside the threshold that it was held against.
 *
 * @param limitName full name of the threshold
 * @param says what the threshold is
 * @param value in {@code unit}
 * @param error one standard deviation in {@code unit}; 0 when the value is exact
 * @param limit value of the threshold in {@code unit}
 * @param margin distance to the limit in {@code unit}, positive on the side that passes
 * @param close the error reaches across the limit
 * @param text the value with its error and unit, as written for people
 * @param limitText the limit with its unit, as written for people
 */
public record SeenValue(String limitName, String says, double value, double error, Unit unit, double limit, double margin, boolean close,
        String text, String limitText) {
    static SeenValue of(Measured m, Threshold t) {
        double margin = t.bound() == Threshold.Bound.UPPER ? t.value() - m.value() : m.value() - t.value();
        double sd = m.sd();
        boolean close = sd > 0 && Math.abs(margin) <= sd;
        return new SeenValue(t.name(), t.says(), m.value(), sd, t.unit(), t.value(), margin, close, Numbers.beside(m, t), Numbers.text(t));
    }
}
