package dev.fairlead.model;

import dev.fairlead.model.Choices.Role;
import java.time.LocalDate;

/** The checklist answered at the chair. */
public record Insertion(
        @Field("Left side.") InsertedSide left,
        @Field("Right side.") InsertedSide right,

        @Field(
                value = "Smallest gap between wire and gingiva.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.TISSUE_GAP,
                label = "gap wire to gum")
        Measured gingivalClearance,

        @Field("Is there blanching along the wire?") Answer blanching,

        @Field(
                value = "Largest gap at a bracket with the wire passive in the mouth.",
                unit = Unit.MM,
                low = 0,
                high = 10,
                error = ErrorKind.FEELER,
                label = "passive gap wire to bracket")
        Measured passiveGap,

        @Field(value = "Incisor brackets in which the wire is tied.", low = 0, high = 4)
        Measured bracketsTied,

        @Field("Was eye protection worn when cutting?") Answer eyeProtection,
        @Field("Was an airway guard in place when cutting?") Answer airwayGuard,

        @Field("Was the guardian told what to expect, what to avoid and whom to call?")
        Answer instructionsGiven,

        @Field("Day of insertion.") Fact<LocalDate> date,
        @Field("Role of the person who answered.") Fact<Role> answeredBy,

        @Field(
                value = "Initials of the person who answered, two or three letters.",
                mayNotApply = true,
                pattern = "[A-Za-z]{2,3}")
        Fact<String> initials,

        @Field(
                value = "Time of day, hours and minutes.",
                mayNotApply = true,
                pattern = "(?:[01][0-9]|2[0-3]):[0-5][0-9]")
        Fact<String> time) {
    /** The answers of one side. */
    public InsertedSide side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
