package dev.fairlead.model;

/** Width and depth of the lower arch, measured on the model. */
public record ArchMeasures(
        @Field(
                value =
                        "Between the mesial ends of the two first-molar tubes, or the buccal points where they will be.",
                unit = Unit.MM,
                low = 30,
                high = 65,
                error = ErrorKind.ARCH_DIMENSION,
                label = "width at the molar tubes")
        Measured molarWidth,

        @Field(
                value = "From that line forward to the labial midpoint between 41 and 31.",
                unit = Unit.MM,
                low = 12,
                high = 45,
                error = ErrorKind.ARCH_DIMENSION,
                label = "depth from the molar tubes")
        Measured molarDepth,

        @Field(
                value = "Between the labial points of 43 and 33, or of 83 and 73.",
                unit = Unit.MM,
                low = 15,
                high = 40,
                error = ErrorKind.ARCH_DIMENSION)
        Measured canineWidth,

        @Field(
                value = "From the line between the canine points forward to the labial midpoint between 41 and 31.",
                unit = Unit.MM,
                low = 1,
                high = 18,
                error = ErrorKind.ARCH_DIMENSION)
        Measured canineDepth) {}
