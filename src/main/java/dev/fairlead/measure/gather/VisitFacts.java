package dev.fairlead.measure.gather;

import dev.fairlead.facts.ActivatedFoldBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.VisitReadingsBuilder;
import dev.fairlead.facts.VisitSeenBuilder;
import dev.fairlead.measure.schedule.Activations;
import dev.fairlead.measure.schedule.Contradictions;
import dev.fairlead.measure.wire.Elastic;
import dev.fairlead.measure.wire.Forces;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Mobility;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import java.util.List;

/** Each activation visit. */
final class VisitFacts {
    /** At a visit that only looks, with no stand-off read, there is no force to work out. */
    static final Forces NONE = new Forces(
            Measured.notApplicable(), Measured.notApplicable(), Measured.notApplicable(), Measured.notApplicable());

    private static final Place VISITS = new Place("/visits", "");

    private VisitFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        for (int i = 0; i < c.visits().size(); i++) {
            Visit v = c.visits().get(i);
            for (Side side : Side.values()) {
                Answer opened = Activations.on(v, side);
                out.add(ActivatedFoldBuilder.builder()
                        .place(FactPlaces.visit(i, side))
                        .visit(i + 1)
                        .side(side)
                        .opened(opened)
                        .standOff(asked(opened, v.side(side).standOff()))
                        .legsOutOfParallel(asked(opened, v.side(side).legsOutOfParallel()))
                        .build());
            }
        }
        for (int i = 0; i < c.visits().size(); i++) {
            Visit v = c.visits().get(i);
            Answer opened = Activations.any(v);
            boolean idle = opened.no()
                    && !v.left().standOff().known()
                    && !v.right().standOff().known();
            Forces f = idle ? NONE : s.parts().force().at(c, i, s.book());
            Measured gauge = v.gauge();
            out.add(VisitSeenBuilder.builder()
                    .place(FactPlaces.visit(i))
                    .visit(i + 1)
                    .weeksSince(s.activations().weeksSince(i))
                    .weeksUnseen(s.activations().weeksUnseen(i, s.day()))
                    .frontOffLevel(asked(opened, v.frontOffLevel()))
                    .plaque(v.plaque())
                    .newWhiteSpots(v.newWhiteSpots())
                    .forceLow(gauge.known() ? gauge : f.low())
                    .forceHigh(gauge.known() ? gauge : f.high())
                    .peakStress(f.peakStress())
                    .overProof(f.peakStress().minus(Elastic.proof(c.wire())))
                    .intrusivePerIncisor(f.intrusivePerIncisor())
                    .newRecession(v.newRecession())
                    .mobilityAboveI(mobile(v.mobility()))
                    .blanching(v.blanching())
                    .lastingPain(v.lastingPain())
                    .resorption(v.resorption())
                    .build());
        }
        Contradictions x = Contradictions.of(s.activations());
        out.add(VisitReadingsBuilder.builder()
                .place(VISITS)
                .datesInOrder(x.datesInOrder())
                .standOffApart(x.standOff())
                .standOffApartSoFar(x.standOffSoFar())
                .closedSideRose(x.closedSide())
                .advanceApart(x.advance())
                .advanceApartSoFar(x.advanceSoFar())
                .build());
    }

    /** What was read counts always; where nothing was opened nobody need have read it. */
    private static Measured asked(Answer opened, Measured read) {
        return opened.no() && !read.known() ? Measured.notApplicable() : read;
    }

    private static Answer mobile(Fact<Mobility> grade) {
        return grade.known()
                ? Answer.of(grade.is(Mobility.GRADE_II) || grade.is(Mobility.GRADE_III))
                : Answers.absent(grade);
    }
}
