package dev.fairlead.model;

/** What was agreed with the guardian. */
public record Consent(
        @Field("Did the guardian consent?") Answer guardian,

        @Field("Were the limits of stability explained and recorded?")
        Answer stabilityExplained,

        @Field(
                value = "Were root resorption, white spots, gum recession and breakage explained and recorded?",
                label = "risks explained")
        Answer risksExplained) {}
