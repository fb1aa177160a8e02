package dev.fairlead.model;

/** Hygiene, caries, gingiva, and what the child cannot tolerate. */
public record Mouth(
        @Field(
                value = "Plaque score: share of surfaces with plaque.",
                unit = Unit.PERCENT,
                low = 0,
                high = 100,
                error = ErrorKind.PERCENTAGE)
        Measured plaqueScore,

        @Field("Is there untreated caries?") Answer untreatedCaries,
        @Field("Is there active gingivitis?") Answer activeGingivitis,
        @Field("Is a sensitivity to nickel recorded?") Answer nickelSensitivity,

        @Field("Is a periodontal opinion on the lower incisors recorded?")
        Answer periodontalOpinion) {}
