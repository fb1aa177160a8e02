package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * Ratio of lower to upper crown widths and the excess that it means (Bolton 1958, 1962).
 *
 * @param lower sum of the lower widths, mm
 * @param upper sum of the upper widths, mm
 * @param meanPercent mean ratio in good occlusions, %
 */
public record ToothSizeRatio(Measured lower, Measured upper, double meanPercent) {
    /** Mean ratio of the six front teeth, %. */
    public static final double ANTERIOR = 77.2;

    /** 100 x lower / upper, %. */
    public Measured percent() {
        return lower.ratioTo(upper, 100, Unit.PERCENT);
    }

    /** How much the lower teeth are too wide for the upper ones, mm; negative when the upper ones are too wide. */
    public Measured lowerExcess() {
        return lower.minus(upper.times(meanPercent / 100));
    }

    /** How much the upper teeth are too wide for the lower ones, mm; negative when the lower ones are too wide. */
    public Measured upperExcess() {
        return upper.minus(lower.times(100 / meanPercent));
    }
}
