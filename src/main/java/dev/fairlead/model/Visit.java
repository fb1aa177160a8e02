package dev.fairlead.model;

import dev.fairlead.model.Choices.Mobility;
import dev.fairlead.model.Choices.Sides;
import java.time.LocalDate;

/** One activation visit. */
public record Visit(
        @Field("Day of the visit.") Fact<LocalDate> date,
        @Field("Which folds were opened.") Fact<Sides> activated,
        @Field("Left side.") VisitSide left,
        @Field("Right side.") VisitSide right,

        @Field(
                value = "Total labial force at tie-in, read on a gauge.",
                unit = Unit.GF,
                low = 0,
                high = 3000,
                error = ErrorKind.GAUGE,
                mayNotApply = true)
        Measured gauge,

        @Field(
                value = "Forward movement of the incisors since the start, measured.",
                unit = Unit.MM,
                low = -3,
                high = 12,
                error = ErrorKind.CLINICAL_LENGTH)
        Measured incisorAdvance,

        @Field("Is there new recession?") Answer newRecession,
        @Field("Greatest mobility of a lower incisor.") Fact<Mobility> mobility,
        @Field("Is there blanching that stays?") Answer blanching,
        @Field("Did pain last more than a few days?") Answer lastingPain,

        @Field(value = "Does a film since the start show root resorption?", mayNotApply = true)
        Answer resorption,

        @Field("Was the incisors' inclination checked again, on film or clinically?")
        Answer inclinationRechecked) {
    /** What was done and seen on one side. */
    public VisitSide side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
