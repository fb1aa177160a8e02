package dev.fairlead.model;

import dev.fairlead.model.Choices.Role;
import java.time.LocalDate;

/** A finding that a person answers for. */
public record Waiver(
        @Field("Identifier of the criterion.") Fact<String> criterion,
        @Field("Why the finding is accepted; a stop needs a reason of substance.") Fact<String> reason,
        @Field("Role of the person who waives; never a name.") Fact<Role> by,
        @Field("Day of the waiver.") Fact<LocalDate> date,
        @Field("Day after which it no longer holds.") Fact<LocalDate> expires) {}
