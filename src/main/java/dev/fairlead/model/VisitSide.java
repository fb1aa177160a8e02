package dev.fairlead.model;

/** What was done and seen on one side at one visit. */
public record VisitSide(
        @Field(
                value = "How much wider the gap between two legs was made at its free end than at its bend.",
                unit = Unit.MM,
                low = 0,
                high = 6,
                error = ErrorKind.BENCH_LENGTH,
                label = "fold opened by")
        Measured gapOpened,

        @Field(
                value = "How far the passive front stands before the brackets on this side.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.MOUTH_RULER,
                label = "stand-off")
        Measured standOff,

        @Field(
                value = "How far the legs are from parallel after opening.",
                unit = Unit.DEGREE,
                low = 0,
                high = 45,
                error = ErrorKind.BENCH_ANGLE)
        Measured legsOutOfParallel,

        @Field(
                value = "Distal of the lateral incisor to mesial of the first molar, before this activation.",
                unit = Unit.MM,
                low = 5,
                high = 35,
                error = ErrorKind.SEGMENT)
        Measured space,

        @Field(
                value = "How far the first molar has tipped or moved distally since the start.",
                unit = Unit.MM,
                low = -5,
                high = 8,
                error = ErrorKind.MOUTH_RULER,
                label = "molar moved back")
        Measured molarDistal) {}
