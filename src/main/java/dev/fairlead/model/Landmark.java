package dev.fairlead.model;

import dev.fairlead.model.Choices.LandmarkPoint;

/** A digitised point of the lower arch. */
public record Landmark(
        @Field("ISO 3950 number of the tooth that the point belongs to.")
        Fact<Tooth> tooth,

        @Field("Which point of the tooth it is; a point without a name is taken as the labial one.")
        Fact<LandmarkPoint> point,

        @Field(
                value = "Across the arch, growing to the patient's left.",
                unit = Unit.MM,
                low = -500,
                high = 500,
                error = ErrorKind.ARCH_DIMENSION)
        Measured x,

        @Field(
                value = "Growing towards the front.",
                unit = Unit.MM,
                low = -500,
                high = 500,
                error = ErrorKind.ARCH_DIMENSION)
        Measured y,

        @Field(
                value = "Up; leave out for points that lie in one plane.",
                unit = Unit.MM,
                low = -500,
                high = 500,
                error = ErrorKind.ARCH_DIMENSION,
                mayNotApply = true)
        Measured z) {}
