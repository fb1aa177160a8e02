package dev.fairlead.model;

import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import java.time.LocalDate;

/**
 * Where one reading of a case came from that was taken by picture: on which kind of picture, when, with what scale and
 * error. The reading itself stands in its own field, beside those that were typed.
 */
public record PictureReading(
        @Field(
                "JSON Pointer of the field that the reading belongs to, such as /teeth/42/width; /landmarks for the points of the arch.")
        Fact<String> field,

        @Field(value = "The reading, in the unit of its field.", unit = Unit.RATIO, low = -60, high = 150)
        Measured value,

        @Field(
                value = "One standard deviation of the reading, in the unit of its field, scale included.",
                unit = Unit.RATIO,
                low = 0,
                high = 20)
        Measured sd,

        @Field("What it was taken on.") Fact<PictureKind> from,

        @Field(
                value = "Number of the picture: all lengths of one picture share the error of its scale.",
                low = 1,
                high = 99)
        Measured picture,

        @Field("Day on which it was measured.") Fact<LocalDate> date,

        @Field(value = "How the scale was taken; angles need none.", mayNotApply = true)
        Fact<PictureScale> scale,

        @Field(
                value = "One standard deviation of the scale, per cent of a length.",
                unit = Unit.PERCENT,
                low = 0,
                high = 20,
                mayNotApply = true)
        Measured scaleError,

        @Field("Were its points placed twice, the second time without sight of the first?")
        Answer placedTwice) {}
