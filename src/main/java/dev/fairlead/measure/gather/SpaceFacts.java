package dev.fairlead.measure.gather;

import dev.fairlead.facts.BuccalSegmentBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.IncisorPositionBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.SpaceBuilder;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.List;

/** Room and need of each side and of the arch, and where the incisors stand. */
final class SpaceFacts {
    private static final Place[] SIDES = FactPlaces.sides("/space");
    private static final Place SPACE = new Place("/space", "");
    private static final Place HEAD_FILM = new Place("/headFilm", "");
    private static final Tooth[] SECOND_PREMOLARS = {Tooth.of(35), Tooth.of(45)};
    private static final Tooth[] SECOND_PRIMARY_MOLARS = {Tooth.of(75), Tooth.of(85)};

    private static final String[] PRIMARY_POINTERS = {"/teeth/75/state", "/teeth/85/state"};

    private SpaceFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        PlanNeeds needs = PlanNeeds.of(s);
        for (Side side : Side.values()) {
            SideSpace x = s.space().side(side);
            Answer stands = primaryStands(s.readings(), side.ordinal());
            Answer premolar = stands.yes()
                    ? Answer.NO
                    : Answers.erupted(
                            s.readings().tooth(SECOND_PREMOLARS[side.ordinal()]).state());
            out.add(BuccalSegmentBuilder.builder()
                    .place(SIDES[side.ordinal()])
                    .side(side)
                    .secondPrimaryStands(stands)
                    .premolarIn(premolar)
                    .premolarTold(stands.known() ? Answer.of(premolar.known()) : stands)
                    .available(x.available())
                    .required(x.required())
                    .shortage(x.shortage())
                    .predictionSpread(x.spread())
                    .planSpare(needs.spare(side))
                    .planSpareSoFar(needs.spareSoFar(side))
                    .noPlan(needs.noPlan())
                    .sidesSwapped(needs.swapped())
                    .build());
        }
        // the perimeter may contradict the segments: while one of them is missing it can warn and never pass
        Measured segments = s.readings()
                .segment(Side.RIGHT)
                .plus(s.readings().incisorSegment())
                .plus(s.readings().segment(Side.LEFT));
        out.add(SpaceBuilder.builder()
                .place(SPACE)
                .largestShortage(s.space().largestShortage())
                .largestKnownShortage(Bounds.largestKnown(
                        s.space().side(Side.LEFT).shortage(),
                        s.space().side(Side.RIGHT).shortage()))
                .totalShortage(s.space().required().minus(segments))
                .totalShortageSoFar(s.space().totalShortage())
                .build());
        PredictedIncisors p = s.position();
        out.add(IncisorPositionBuilder.builder()
                .place(HEAD_FILM)
                .inclination(s.readings().incisorMandibular())
                .inclinationAfter(Bounds.or(p.inclination(), p.mildest().inclination()))
                .compensatedAfter(Bounds.or(p.compensated(), p.mildest().compensated()))
                .inclinationMost(p.inclinationMost())
                .compensatedMost(p.compensatedMost())
                .toAPogAfter(p.toAPog())
                .toAPogSoFar(Bounds.or(p.toAPog(), p.mildest().toAPog()))
                .build());
    }

    /** A place where the primary tooth still stands is told by the place or by the primary tooth. */
    private static Answer primaryStands(Readings c, int side) {
        Fact<ToothState> successor = c.tooth(SECOND_PREMOLARS[side]).state();
        Fact<ToothState> primary = c.tooth(SECOND_PRIMARY_MOLARS[side]).state();
        if (successor.is(ToothState.PRIMARY_PRESENT)
                || primary.is(ToothState.ERUPTED)
                || primary.is(ToothState.PRIMARY_PRESENT)) {
            return Answer.YES;
        }
        // an unerupted premolar says nothing of the primary molar above it: it may stand, or be lost
        boolean gone =
                successor.is(ToothState.ERUPTED) || primary.is(ToothState.MISSING) || primary.is(ToothState.UNERUPTED);
        return gone ? Answer.NO : Answer.unknown(PRIMARY_POINTERS[side]);
    }
}
