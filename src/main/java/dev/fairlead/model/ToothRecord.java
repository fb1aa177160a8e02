package dev.fairlead.model;

import dev.fairlead.model.Choices.ToothState;

/** What is known of one tooth. */
public record ToothRecord(
        @Field("primary-present (the primary predecessor stands there), erupted, unerupted or missing.")
        Fact<ToothState> state,

        @Field(
                value = "Largest mesiodistal crown width; repeats in a list.",
                unit = Unit.MM,
                low = 2.5,
                high = 14,
                error = ErrorKind.TOOTH_WIDTH)
        Measured width,

        @Field(
                value = "Thickness of the labial gingiva.",
                unit = Unit.MM,
                low = 0,
                high = 5,
                error = ErrorKind.GINGIVA,
                label = "gingival thickness")
        Measured gingivaThickness,

        @Field(
                value = "Width of keratinised gingiva on the labial side.",
                unit = Unit.MM,
                low = 0,
                high = 12,
                error = ErrorKind.PROBE,
                label = "keratinised gingiva")
        Measured keratinised,

        @Field(
                value = "Labial recession below the cemento-enamel junction; 0 when there is none.",
                unit = Unit.MM,
                low = 0,
                high = 10,
                error = ErrorKind.PROBE,
                zeroIsNone = true)
        Measured recession) {
    private static final java.util.Map<String, ToothRecord> BLANKS = new java.util.concurrent.ConcurrentHashMap<>();

    /** A tooth of which nothing is known; {@code pointer} says where it would stand in the case. */
    public static ToothRecord blank(String pointer) {
        return BLANKS.computeIfAbsent(
                pointer,
                p -> new ToothRecord(
                        Fact.unknown(p + "/state"),
                        Measured.unknown(p + "/width"),
                        Measured.unknown(p + "/gingivaThickness"),
                        Measured.unknown(p + "/keratinised"),
                        Measured.unknown(p + "/recession")));
    }
}
