package dev.fairlead.model;

/** Image width of an unerupted tooth and of a tooth that can be measured directly on the same film. */
public record ToothImage(
        @Field("The unerupted tooth.") Fact<Tooth> tooth,

        @Field(value = "Its width on the film.", unit = Unit.MM, low = 3, high = 18, error = ErrorKind.TOOTH_WIDTH)
        Measured imageWidth,

        @Field("A tooth seen on the same film whose true width is in the case.")
        Fact<Tooth> reference,

        @Field(
                value = "The reference tooth's width on the film.",
                unit = Unit.MM,
                low = 3,
                high = 18,
                error = ErrorKind.TOOTH_WIDTH)
        Measured referenceImageWidth) {}
