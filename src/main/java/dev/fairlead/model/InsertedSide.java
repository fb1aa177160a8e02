package dev.fairlead.model;

/** Checklist answers for one side at the chair. */
public record InsertedSide(
        @Field(
                value = "How far the cut end stands proud of the tube distally.",
                unit = Unit.MM,
                low = 0,
                high = 10,
                error = ErrorKind.MOUTH_RULER,
                label = "cut end stands out")
        Measured endProud,

        @Field("Was the cut-off piece caught and accounted for?")
        Answer cutEndCaught,

        @Field("Is the wire bent behind the tube?") Answer bentBehind,

        @Field(
                value = "Gap between the fold and the mesial of the tube.",
                unit = Unit.MM,
                low = 0,
                high = 8,
                error = ErrorKind.FEELER,
                label = "gap fold to tube")
        Measured stopGap,

        @Field(value = "Does the fold sit under the hook?", mayNotApply = true)
        Answer underHook,

        @Field("Does the fold feel sharp or dig into the cheek?")
        Answer cheekSore) {}
