package dev.fairlead.model;

/** The band and tube of one first molar. */
public record Tube(
        @Field(
                value = "Smallest inner dimension of the tube.",
                unit = Unit.MM,
                low = 0.3,
                high = 1.5,
                error = ErrorKind.NONE,
                label = "inner height of the tube")
        Measured height,

        @Field(
                value = "Length of the tube.",
                unit = Unit.MM,
                low = 1.5,
                high = 8,
                error = ErrorKind.BENCH_LENGTH,
                label = "tube length")
        Measured length,

        @Field("Is the band cemented?") Answer cemented,
        @Field("Is the band loose?") Answer loose,
        @Field("Are the margins of the band seated?") Answer marginsSeated,
        @Field("Does the tube carry a hook?") Answer hook,

        @Field(
                value = "Height of the tube above the bracket slots; negative when it lies below.",
                unit = Unit.MM,
                low = -6,
                high = 10,
                error = ErrorKind.BENCH_LENGTH,
                label = "tube above the bracket slots")
        Measured aboveBrackets,

        @Field(
                value =
                        "From where the arch's width was taken out to the middle of the tube; 0 where it was taken at the tube.",
                unit = Unit.MM,
                low = 0,
                high = 3,
                error = ErrorKind.BENCH_LENGTH,
                label = "tube out from the width")
        Measured slotOffset) {}
