package dev.fairlead.model;

import java.util.Map;

/** Brackets, tubes and bands in the mouth, and what came before steel. */
public record Hardware(
        @Field("Brackets by ISO 3950 number of their tooth.")
        Map<Tooth, Bracket> brackets,

        @Field("Band and tube on 36.") Tube left,
        @Field("Band and tube on 46.") Tube right,

        @Field("Were the four incisors aligned with a flexible sectional wire first?")
        Answer flexibleWireFirst,

        @Field("Displacement of the contact points when steel is to go in.")
        Contacts contactsNow,

        @Field("Is the arch made on a working model taken over the bands?")
        Answer modelOverBands,

        @Field("Are the buccal segments free of any other wire or appliance?")
        Answer buccalSegmentsFree) {
    public Hardware {
        brackets = Map.copyOf(brackets);
    }

    /** The bracket of a tooth; all unknown when the case says nothing of it. */
    public Bracket bracket(Tooth tooth) {
        Bracket found = brackets.get(tooth);
        return found != null ? found : Bracket.blank("/hardware/brackets/" + tooth);
    }

    /** The band and tube of one side. */
    public Tube tube(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
