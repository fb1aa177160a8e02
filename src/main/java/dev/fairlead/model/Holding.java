package dev.fairlead.model;

import java.time.LocalDate;

/** The end: target, holding arch, removal of brackets, recall. */
public record Holding(
        @Field(
                value = "Day of the impression for the holding arch.",
                mayNotApply = true,
                label = "day of the impression")
        Fact<LocalDate> impression,

        @Field(value = "Day on which the holding arch was cemented.", mayNotApply = true, label = "day of cementing")
        Fact<LocalDate> cemented,

        @Field(
                value = "Day on which brackets and wire came off.",
                mayNotApply = true,
                label = "day the brackets came off")
        Fact<LocalDate> debonded,

        @Field(
                value = "Day on which the holding arch came out.",
                mayNotApply = true,
                label = "day the holding arch came out")
        Fact<LocalDate> removed,

        @Field(
                value = "Left space at the end: distal of 32 to mesial of 36.",
                unit = Unit.MM,
                low = 5,
                high = 35,
                error = ErrorKind.SEGMENT)
        Measured spaceLeft,

        @Field(
                value = "Right space at the end: distal of 42 to mesial of 46.",
                unit = Unit.MM,
                low = 5,
                high = 35,
                error = ErrorKind.SEGMENT)
        Measured spaceRight,

        @Field("Displacement of the contact points at the end.")
        Contacts contacts,

        @Field(
                value = "Lower incisor to mandibular plane at the end.",
                unit = Unit.DEGREE,
                low = 60,
                high = 130,
                error = ErrorKind.FILM_ANGLE,
                label = "lower incisor to mandibular plane")
        Measured incisorMandibular,

        @Field(
                value = "Overjet at the end.",
                unit = Unit.MM,
                low = -10,
                high = 15,
                error = ErrorKind.BITE,
                label = "overjet")
        Measured overjet,

        @Field("Does the holding arch touch the cingula?") Answer touchesCingula,
        @Field("Does the holding arch lie passive?") Answer passive,

        @Field(
                value = "Gap between holding arch and tissue.",
                unit = Unit.MM,
                low = 0,
                high = 6,
                error = ErrorKind.TISSUE_GAP,
                label = "gap arch to tissue")
        Measured tissueClearance,

        @Field(
                value = "Months between looks at the second molars while the arch is in.",
                unit = Unit.MONTH,
                low = 0,
                high = 60,
                planned = true,
                step = 1,
                label = "months between looks at second molars")
        Measured secondMolarRecall,

        @Field(
                value = "Months between recalls.",
                unit = Unit.MONTH,
                low = 0,
                high = 60,
                planned = true,
                step = 1,
                label = "months between recalls")
        Measured recall,

        @Field("Is it recorded when the arch is to come out (premolars in)?")
        Answer removalPoint) {
    /** Space at the end on one side, mm. */
    public Measured space(Side side) {
        return side == Side.LEFT ? spaceLeft : spaceRight;
    }
}
