package dev.fairlead.model;

import dev.fairlead.model.Choices.FormClass;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Section;
import dev.fairlead.model.Choices.Temper;

/** The archwire as planned and as chosen. */
public record WirePlan(
        @Field("Material.") Fact<Material> material,

        @Field(value = "Cross-section.", label = "cross-section")
        Fact<Section> section,

        @Field(
                value = "Planned diameter (0.020 in = 0.508 mm).",
                unit = Unit.MM,
                low = 0.3,
                high = 0.8,
                planned = true,
                label = "planned diameter")
        Measured plannedSize,

        @Field(
                value = "Diameter of the wire in hand.",
                unit = Unit.MM,
                low = 0.3,
                high = 0.8,
                label = "diameter of the wire in hand")
        Measured size,

        @Field(
                value = "Modulus of elasticity as its maker declares it.",
                unit = Unit.GPA,
                low = 20,
                high = 240,
                mayNotApply = true,
                label = "modulus of elasticity")
        Measured modulus,

        @Field(
                value = "0.2 % proof strength as its maker declares it.",
                unit = Unit.MPA,
                low = 300,
                high = 3000,
                mayNotApply = true)
        Measured proofStrength,

        @Field("Temper.") Fact<Temper> temper,

        @Field(value = "Form class of the preformed arch.", planned = true)
        Fact<FormClass> formClass,

        @Field(
                value = "Width of the preformed or reshaped arch where the molar tubes are.",
                unit = Unit.MM,
                low = 30,
                high = 70,
                error = ErrorKind.BENCH_LENGTH,
                label = "width of the wire at the molar tubes")
        Measured formMolarWidth,

        @Field(
                value = "Width of the preformed or reshaped arch at the canines.",
                unit = Unit.MM,
                low = 15,
                high = 45,
                error = ErrorKind.BENCH_LENGTH,
                label = "width of the wire at the canines")
        Measured formCanineWidth,

        @Field(
                value = "Depth of the preformed or reshaped arch from the molar tubes to the front.",
                unit = Unit.MM,
                low = 12,
                high = 50,
                error = ErrorKind.BENCH_LENGTH,
                label = "depth of the wire")
        Measured formDepth,

        @Field("Was it reshaped to the patient's arch?") Answer reshaped,

        @Field(
                value = "Radius of the round plier beak where the folds are bent.",
                unit = Unit.MM,
                low = 0.2,
                high = 3,
                error = ErrorKind.CALIPER,
                planned = true,
                step = 0.1)
        Measured beakRadius,

        @Field(
                value = "Length of the blank before bending.",
                unit = Unit.MM,
                low = 60,
                high = 250,
                error = ErrorKind.BENCH_LENGTH)
        Measured blankLength) {}
