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
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.List;

/** Room and need of each side and of the arch, and where the incisors stand. */
final class SpaceFacts {
    private static final Place[] SIDES = FactPlaces.sides("/space");
    private static final Place SPACE = new Place("/space", "");
    private static final Place HEAD_FILM = new Place("/headFilm", "");
    private static final Tooth[] FIRST_PREMOLARS = {Tooth.of(34), Tooth.of(44)};
    private static final Tooth[] SECOND_PREMOLARS = {Tooth.of(35), Tooth.of(45)};
    private static final Tooth[] SECOND_PRIMARY_MOLARS = {Tooth.of(75), Tooth.of(85)};

    private SpaceFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        for (Side side : Side.values()) {
            SideSpace x = s.space().side(side);
            out.add(BuccalSegmentBuilder.builder()
                    .place(SIDES[side.ordinal()])
                    .side(side)
                    .windowOpen(windowOpen(s.readings(), side))
                    .available(x.available())
                    .required(x.required())
                    .shortage(x.shortage())
                    .predictionSpread(x.spread())
                    .build());
        }
        out.add(SpaceBuilder.builder()
                .place(SPACE)
                .largestShortage(s.space().largestShortage())
                .totalShortage(s.space().totalShortage())
                .build());
        PredictedIncisors p = s.position();
        out.add(IncisorPositionBuilder.builder()
                .place(HEAD_FILM)
                .inclination(s.readings().incisorMandibular())
                .inclinationAfter(p.inclination())
                .compensatedAfter(p.compensated())
                .toAPogAfter(p.toAPog())
                .build());
    }

    /** The second primary molar stands, or neither premolar is in the mouth. */
    private static Answer windowOpen(Readings c, Side side) {
        int i = side.ordinal();
        Fact<ToothState> second = c.tooth(SECOND_PREMOLARS[i]).state();
        return primaryMolar(second, c.tooth(SECOND_PRIMARY_MOLARS[i]).state())
                .or(unerupted(c.tooth(FIRST_PREMOLARS[i]).state()).and(unerupted(second)));
    }

    private static Answer primaryMolar(Fact<ToothState> successor, Fact<ToothState> primary) {
        if (successor.is(ToothState.PRIMARY_PRESENT)
                || primary.is(ToothState.ERUPTED)
                || primary.is(ToothState.PRIMARY_PRESENT)) {
            return Answer.YES;
        }
        return successor.known() || primary.known() ? Answer.NO : Answers.absent(successor);
    }

    /** A place where the primary tooth still stands holds an unerupted successor. */
    private static Answer unerupted(Fact<ToothState> state) {
        return state.known()
                ? Answer.of(state.is(ToothState.UNERUPTED) || state.is(ToothState.PRIMARY_PRESENT))
                : Answers.absent(state);
    }
}
