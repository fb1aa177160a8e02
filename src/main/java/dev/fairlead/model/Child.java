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
        Fact<Population> population,

        @Field(
                value = "Is a class III relation known in a parent, brother or sister?",
                label = "class III in the family")
        Answer familyClassIII,

        @Field(value = "Was the medical history taken?", label = "medical history")
        Answer historyTaken,

        @Field(
                value =
                        "Does it name a latex or metal allergy, bleeding, a heart condition that asks for antibiotic cover,"
                                + " asthma or a medicine that matters?",
                label = "medical finding")
        Answer medicalFinding,

        @Field(value = "Was advice sought on what the history names?", mayNotApply = true, label = "medical advice")
        Answer medicalAdvice) {}
