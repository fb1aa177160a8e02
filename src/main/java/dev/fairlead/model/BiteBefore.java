package dev.fairlead.model;

import dev.fairlead.model.Choices.MolarRelation;

/** Overjet, overbite, midline and molar relation before treatment. */
public record BiteBefore(
        @Field(
                value = "Overjet; a reverse overjet is negative.",
                unit = Unit.MM,
                low = -10,
                high = 20,
                error = ErrorKind.BITE)
        Measured overjet,

        @Field(
                value = "Overbite; an open bite is negative.",
                unit = Unit.MM,
                low = -10,
                high = 12,
                error = ErrorKind.BITE)
        Measured overbite,

        @Field(
                value = "Lower dental midline against the face; to the patient's left is positive.",
                unit = Unit.MM,
                low = -8,
                high = 8,
                error = ErrorKind.MIDLINE)
        Measured lowerMidline,

        @Field("Does the jaw slide forward on closing (anterior functional shift)?")
        Answer anteriorShift,

        @Field(
                value = "Do the upper incisors bite on the lower brackets or wire, or would they?",
                label = "bite on the lower brackets")
        Answer biteOnBrackets,

        @Field("Molar relation on the left.") Fact<MolarRelation> molarLeft,
        @Field("Molar relation on the right.") Fact<MolarRelation> molarRight) {}
