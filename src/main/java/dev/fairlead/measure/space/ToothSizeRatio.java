package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * Ratio of lower to upper crown widths and the excess that it means (Bolton 1958, 1962).
 *
 * @param percent 100 x lower / upper, %
 * @param lowerExcess how much the lower teeth are too wide for the upper ones, mm; negative when the upper ones are too wide
 * @param upperExcess how much the upper teeth are too wide for the lower ones, mm
 */
public record ToothSizeRatio(Measured percent, Measured lowerExcess, Measured upperExcess) {
    /** Mean ratio of the six front teeth, %. */
    public static final double ANTERIOR = 77.2;
    /** Mean ratio of twelve teeth, %. */
    public static final double OVERALL = 91.3;

    /** Compares sums of widths, mm, with a mean ratio in per cent. */
    public static ToothSizeRatio of(Measured lower, Measured upper, double meanPercent) {
        return new ToothSizeRatio(
                lower.ratioTo(upper, 100, Unit.PERCENT),
                lower.minus(upper.times(meanPercent / 100)),
                upper.minus(lower.times(100 / meanPercent)));
    }
}
