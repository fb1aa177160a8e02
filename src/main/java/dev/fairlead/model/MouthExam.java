package dev.fairlead.model;

import dev.fairlead.model.Choices.PeriodontalAdvice;

/** Hygiene, caries, gingiva, habits, and what the child cannot tolerate. */
public record MouthExam(
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
        Answer periodontalOpinion,

        @Field(
                value = "What the periodontal opinion says of advancing the lower incisors.",
                mayNotApply = true,
                label = "advice of the periodontal opinion")
        Fact<PeriodontalAdvice> opinionSays,

        @Field(
                value = "Were habits looked for: lip trap, tongue thrust, sucking, mentalis strain?",
                label = "habits looked for")
        Answer habitsLookedFor,

        @Field("Is one of these habits there?") Answer habit) {}
