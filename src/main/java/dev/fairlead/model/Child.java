package dev.fairlead.model;

import dev.fairlead.model.Choices.Population;
import dev.fairlead.model.Choices.Sex;

/** The child, without anything that tells who it is. */
public record Child(
        @Field(value = "Age in years and tenths on the day of the records.", unit = Unit.YEAR, low = 4, high = 18)
        Measured age,

        @Field("Sex, for published regressions and exfoliation tables.")
        Fact<Sex> sex,

        @Field(value = "A population whose published width regression applies to this child.", mayNotApply = true)
        Fact<Population> population) {}
