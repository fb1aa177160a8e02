package dev.fairlead.model;

/** The bracket of one lower incisor. */
public record Bracket(
        @Field(
                value = "Slot height (0.018 in = 0.457 mm, 0.022 in = 0.559 mm).",
                unit = Unit.MM,
                low = 0.3,
                high = 0.8,
                error = ErrorKind.NONE)
        Measured slot,

        @Field("Is it bonded?") Answer bonded,
        @Field("Is it loose?") Answer loose,

        @Field(
                value = "Distance of its middle from the midline along the arch.",
                unit = Unit.MM,
                low = 0.5,
                high = 14,
                error = ErrorKind.BENCH_LENGTH,
                label = "distance from the midline")
        Measured fromMidline,

        @Field(
                value = "From the tooth's labial surface to the middle of the wire in the slot.",
                unit = Unit.MM,
                low = 0.5,
                high = 3,
                error = ErrorKind.BENCH_LENGTH,
                label = "slot in front of the tooth")
        Measured slotOffset) {
    /** A bracket of which nothing is known; {@code pointer} says where it would stand in the case. */
    public static Bracket blank(String pointer) {
        return new Bracket(
                Measured.unknown(pointer + "/slot"),
                Answer.unknown(pointer + "/bonded"),
                Answer.unknown(pointer + "/loose"),
                Measured.unknown(pointer + "/fromMidline"),
                Measured.unknown(pointer + "/slotOffset"));
    }
}
