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
                mayNotApply = true,
                label = "force on the gauge")
        Measured gauge,

        @Field(
                value = "Forward movement of the incisors since the start, measured.",
                unit = Unit.MM,
                low = -3,
                high = 12,
                error = ErrorKind.MOUTH_RULER,
                label = "incisors forward since the start")
        Measured incisorAdvance,

        @Field("Is there new recession?") Answer newRecession,
        @Field("Greatest mobility of a lower incisor.") Fact<Mobility> mobility,
        @Field("Is there blanching that stays?") Answer blanching,
        @Field("Did pain last more than a few days?") Answer lastingPain,

        @Field(value = "Does a film since the start show root resorption?", mayNotApply = true)
        Answer resorption,

        @Field("Was the incisors' inclination checked again, on film or clinically?")
        Answer inclinationRechecked,

        @Field(
                value =
                        "Height of the passive front above or below the bracket slots after opening and levelling, without sign.",
                unit = Unit.MM,
                low = 0,
                high = 5,
                error = ErrorKind.MOUTH_RULER,
                label = "front above or below the slots")
        Measured frontOffLevel,

        @Field(
                value = "Share of tooth surfaces with plaque at this visit (O'Leary's plaque control record).",
                unit = Unit.PERCENT,
                low = 0,
                high = 100,
                error = ErrorKind.PERCENTAGE)
        Measured plaque,

        @Field("Are there new white spots since the start?") Answer newWhiteSpots,

        @Field("Was it decided, on record, whether a film of the lower incisors' roots is needed?")
        Answer rootFilmDecided) {
    /** What was done and seen on one side. */
    public VisitSide side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
