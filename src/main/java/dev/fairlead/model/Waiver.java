package dev.fairlead.model;

import dev.fairlead.model.Choices.Role;
import java.time.LocalDate;

/** A finding that a person answers for. */
public record Waiver(
        @Field(value = "Identifier of the criterion.", pattern = "[a-z][a-z0-9]*(?:-[a-z0-9]+)*")
        Fact<String> criterion,

        @Field("Why the finding is accepted; a stop needs a reason of substance.")
        Fact<String> reason,

        @Field(
                "Role of the person who waives; never a name. A stop is answered for by a clinician, supervisor or director.")
        Fact<Role> by,

        @Field("Day of the waiver.") Fact<LocalDate> date,
        @Field("Day after which it no longer holds.") Fact<LocalDate> expires) {}
