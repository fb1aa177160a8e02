package dev.fairlead.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** One child's lower arch and plan: everything that is checked comes from here. */
public record Case(
        @Field(value = "The version of the case format; 1.", required = true)
        int fairlead,

        @Field(
                value = "A pseudonym for the case: letters, digits and dashes; never a name or a record number.",
                required = true,
                pattern = "[A-Za-z0-9](?:[A-Za-z0-9-]{0,38}[A-Za-z0-9])?",
                label = "pseudonym")
        String id,

        @Field(
                "The stage of care that the case has reached. Facts that are recorded of a later stage are judged all the same.")
        Fact<Stage> stage,

        @Field("The day for which the case is judged, when no other is given at the command line.")
        Fact<LocalDate> date,

        @Field(
                value = "A code for the resident who plans the case, for audits; never a name.",
                mayNotApply = true,
                pattern = "[A-Za-z0-9](?:[A-Za-z0-9-]{0,18}[A-Za-z0-9])?")
        Fact<String> resident,

        @Field(
                value = "A code for the clinic or site, for audits that compare sites; never a name.",
                mayNotApply = true,
                pattern = "[A-Za-z0-9](?:[A-Za-z0-9-]{0,18}[A-Za-z0-9])?")
        Fact<String> site,

        @Field("The child, without anything that tells who it is.")
        Child child,

        @Field("Teeth by ISO 3950 number: state and measured widths.")
        Map<Tooth, ToothRecord> teeth,

        @Field("Displacement of the five contact points of the lower front teeth before treatment.")
        Contacts contacts,

        @Field("Measured segments of the lower arch before treatment.")
        SpaceMeasures space,

        @Field("Width and depth of the lower arch, measured on the model.")
        ArchMeasures arch,

        @Field("Points on the lower arch, where they were digitised.")
        List<Landmark> landmarks,

        @Field("Readings that were taken by picture: where each came from.")
        List<PictureReading> pictured,

        @Field("Image widths of unerupted teeth on a radiograph, each beside a tooth that can be measured directly.")
        List<ToothImage> images,

        @Field("Which films were read, when, and what they show.")
        Films films,

        @Field(
                value = "Angles and distances from the lateral cephalogram before treatment.",
                label = "lateral cephalogram")
        HeadFilm headFilm,

        @Field("Overjet, overbite, midline and molar relation before treatment.")
        BiteBefore bite,

        @Field("Hygiene, caries, gingiva and what the child cannot tolerate.")
        MouthExam mouth,

        @Field("What was agreed with the guardian.") Consent consent,

        @Field("What is planned: advancement, stand-off, interval.")
        Plan plan,

        @Field("Brackets, tubes and bands in the mouth, and what came before steel.")
        Hardware hardware,

        @Field("The archwire as planned and as chosen.") WirePlan wire,

        @Field("The wire as it was made, tried in on the model.")
        Bench bench,

        @Field("The checklist answered at the chair.") Insertion insertion,
        @Field("Activations in the order of their dates.") List<Visit> visits,

        @Field("The end: target, holding arch, removal of brackets, recall.")
        Holding holding,

        @Field("Findings that a person answers for, with reason and expiry.")
        List<Waiver> waivers,

        @Field("Words that may look like a name and are none: each is then no longer doubted.")
        List<NotPerson> notPersons) {
    public Case {
        teeth = Map.copyOf(teeth);
        landmarks = List.copyOf(landmarks);
        pictured = List.copyOf(pictured);
        images = List.copyOf(images);
        visits = List.copyOf(visits);
        waivers = List.copyOf(waivers);
        notPersons = List.copyOf(notPersons);
    }

    /** The record of a tooth; all unknown when the case says nothing of it. */
    public ToothRecord tooth(Tooth tooth) {
        ToothRecord found = teeth.get(tooth);
        return found != null ? found : ToothRecord.blank("/teeth/" + tooth);
    }
}
