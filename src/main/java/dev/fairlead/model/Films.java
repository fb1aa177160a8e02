package dev.fairlead.model;

import java.time.LocalDate;

/** Which records were taken, when, and what a person read on them. */
public record Films(
        @Field(value = "Date of the study models.", label = "date of the study models")
        Fact<LocalDate> models,

        @Field(value = "Date of the lateral cephalogram.", label = "date of the lateral cephalogram")
        Fact<LocalDate> headFilm,

        @Field(value = "Date of the panoramic film.", label = "date of the panoramic film")
        Fact<LocalDate> panoramic,

        @Field("Was the panoramic film read by a clinician?")
        Answer panoramicRead,

        @Field("Does it show a lower canine or premolar that is missing?")
        Answer missingTeeth,

        @Field("Does it show a supernumerary tooth in the lower arch?")
        Answer supernumerary,

        @Field("Does it show an ectopic lower canine or premolar?")
        Answer ectopic,

        @Field(value = "Is the path of the lower permanent canines normal?", label = "path of the lower canines")
        Answer caninePathNormal,

        @Field(
                value = "Is a lower primary molar infraoccluded (below the level of its neighbours)?",
                label = "infraoccluded primary molar")
        Answer infraoccludedMolar,

        @Field("Does a lower first permanent molar erupt ectopically, under the primary molar?")
        Answer ectopicFirstMolar,

        @Field("Does a film show short roots of the lower incisors?")
        Answer shortRoots,

        @Field("Does a film show root resorption of the lower incisors?")
        Answer resorption,

        @Field(
                value = "Angle between the long axes of 36 and 37; positive where 37 leans forward (mesially).",
                unit = Unit.DEGREE,
                low = -45,
                high = 90,
                error = ErrorKind.TOOTH_AXIS_ANGLE,
                mayNotApply = true)
        Measured secondMolarAngleLeft,

        @Field(
                value = "Angle between the long axes of 46 and 47; positive where 47 leans forward (mesially).",
                unit = Unit.DEGREE,
                low = -45,
                high = 90,
                error = ErrorKind.TOOTH_AXIS_ANGLE,
                mayNotApply = true)
        Measured secondMolarAngleRight) {}
