package dev.fairlead.model;

/** One fold of the wire as it was made. */
public record Fold(
        @Field(
                value = "Mark of the first bend from the midline mark, along the wire.",
                unit = Unit.MM,
                low = 20,
                high = 60,
                error = ErrorKind.BENCH_LENGTH,
                label = "first mark from midline")
        Measured firstMark,

        @Field(
                value = "First bend mark distal to the tube.",
                unit = Unit.MM,
                low = 0,
                high = 10,
                error = ErrorKind.BENCH_LENGTH,
                label = "first bend behind tube")
        Measured firstBendOffset,

        @Field(
                value = "Distance between the two bends.",
                unit = Unit.MM,
                low = 0.5,
                high = 12,
                error = ErrorKind.BENCH_LENGTH,
                label = "fold length")
        Measured length,

        @Field(
                value = "Height of the fold.",
                unit = Unit.MM,
                low = 0.5,
                high = 12,
                error = ErrorKind.BENCH_LENGTH,
                label = "fold height")
        Measured height,

        @Field(
                value = "Inner radius of the tighter bend.",
                unit = Unit.MM,
                low = 0.1,
                high = 4,
                error = ErrorKind.BENCH_LENGTH,
                label = "inner radius of the tighter bend")
        Measured bendRadius,

        @Field(
                value = "How far the fold is from square to the arch and parallel to the occlusal plane.",
                unit = Unit.DEGREE,
                low = 0,
                high = 45,
                error = ErrorKind.BENCH_ANGLE,
                label = "fold out of square")
        Measured outOfSquare,

        @Field(
                value = "How far the legs are from parallel.",
                unit = Unit.DEGREE,
                low = 0,
                high = 45,
                error = ErrorKind.BENCH_ANGLE)
        Measured legsOutOfParallel,

        @Field(
                value = "Gap between fold and gingiva on the model.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.BENCH_LENGTH,
                label = "gap fold to gum")
        Measured clearGingiva,

        @Field(
                value = "Room from the fold to the cheek.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.BENCH_LENGTH,
                label = "gap fold to cheek")
        Measured clearCheek,

        @Field(
                value = "Tip of the fold towards the cheek.",
                unit = Unit.DEGREE,
                low = -30,
                high = 70,
                error = ErrorKind.BENCH_ANGLE,
                label = "fold tipped to the cheek")
        Measured buccalTip) {}
