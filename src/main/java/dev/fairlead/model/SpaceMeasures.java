package dev.fairlead.model;

/** Measured segments of the lower arch. */
public record SpaceMeasures(
        @Field(
                value = "Left: distal of 32 to mesial of 36, in a straight line.",
                unit = Unit.MM,
                low = 5,
                high = 35,
                error = ErrorKind.SEGMENT,
                label = "left segment")
        Measured left,

        @Field(
                value = "Right: distal of 42 to mesial of 46, in a straight line.",
                unit = Unit.MM,
                low = 5,
                high = 35,
                error = ErrorKind.SEGMENT,
                label = "right segment")
        Measured right,

        @Field(
                value = "Distal of 42 to distal of 32 along the arch that the incisors are to stand on.",
                unit = Unit.MM,
                low = 12,
                high = 40,
                error = ErrorKind.SEGMENT)
        Measured incisors,

        @Field(
                value = "Whole lower arch from mesial of 46 to mesial of 36, measured on its own.",
                unit = Unit.MM,
                low = 40,
                high = 95,
                error = ErrorKind.SEGMENT)
        Measured perimeter) {
    /** The buccal segment of one side. */
    public Measured side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
