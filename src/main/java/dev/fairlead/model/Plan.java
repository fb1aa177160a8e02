package dev.fairlead.model;

import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Choices.Sides;
import java.time.LocalDate;

/** What is planned. */
public record Plan(
        @Field(
                value = "Forward movement of the incisors planned on the left.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.NONE,
                planned = true,
                step = 0.5)
        Measured advanceLeft,

        @Field(
                value = "Forward movement of the incisors planned on the right.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.NONE,
                planned = true,
                step = 0.5)
        Measured advanceRight,

        @Field(
                value = "The side that is to advance more because the midline is off; both when it is not sided.",
                label = "side to advance more")
        Fact<Sides> moreOn,

        @Field(
                value = "How far the passive front is to stand before the brackets at each activation, the same on both"
                        + " sides; left out where the plan is sided.",
                unit = Unit.MM,
                low = 0,
                high = 6,
                error = ErrorKind.NONE,
                planned = true,
                step = 0.5,
                label = "stand-off")
        Measured standOff,

        @Field(
                value = "The same on the left of a sided plan; left out where both sides are alike.",
                unit = Unit.MM,
                low = 0,
                high = 6,
                error = ErrorKind.NONE,
                planned = true,
                step = 0.5,
                label = "stand-off left, sided plan",
                mayNotApply = true)
        Measured standOffLeft,

        @Field(
                value = "The same on the right of a sided plan; left out where both sides are alike.",
                unit = Unit.MM,
                low = 0,
                high = 6,
                error = ErrorKind.NONE,
                planned = true,
                step = 0.5,
                label = "stand-off right, sided plan",
                mayNotApply = true)
        Measured standOffRight,

        @Field(
                value = "Weeks between activations.",
                unit = Unit.WEEK,
                low = 1,
                high = 20,
                planned = true,
                step = 1,
                label = "weeks between activations")
        Measured intervalWeeks,

        @Field(value = "both-sides at each visit, or alternating.", planned = true, label = "sides activated")
        Fact<Pattern> pattern,

        @Field(value = "Does the plan address the habit that is there?", mayNotApply = true)
        Answer habitAddressed,

        @Field(value = "Day on which the wire is to go in.", label = "day the wire goes in")
        Fact<LocalDate> start,

        @Field(
                value = "Percentile of the probability table to read.",
                unit = Unit.PERCENT,
                low = 5,
                high = 95,
                planned = false,
                mayNotApply = true,
                label = "percentile of the table")
        Measured percentile) {
    /** Planned forward movement on one side, mm. */
    public Measured advance(Side side) {
        return side == Side.LEFT ? advanceLeft : advanceRight;
    }

    /**
     * Planned stand-off on one side, mm. Where one side is planned for itself, so is the other: what is said of both
     * never stands in for a side that was forgotten.
     */
    public Measured standOff(Side side) {
        return sidedStandOff() ? side == Side.LEFT ? standOffLeft : standOffRight : standOff;
    }

    /** Where {@link #standOff(Side)} stands in a case. */
    public String standOffPointer(Side side) {
        return "/plan/standOff" + (sidedStandOff() ? side == Side.LEFT ? "Left" : "Right" : "");
    }

    /** True when at least one side has a stand-off of its own. */
    public boolean sidedStandOff() {
        return standOffLeft.known() || standOffRight.known();
    }
}
