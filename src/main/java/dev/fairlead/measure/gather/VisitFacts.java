package dev.fairlead.measure.gather;

import dev.fairlead.facts.ActivatedFoldBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.VisitSeenBuilder;
import dev.fairlead.measure.wire.Elastic;
import dev.fairlead.measure.wire.Forces;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Mobility;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import java.util.List;

/** Each activation visit. */
final class VisitFacts {
    private VisitFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        for (int i = 0; i < c.visits().size(); i++) {
            Visit v = c.visits().get(i);
            for (Side side : Side.values()) {
                if (leftClosed(v.activated(), side)) {
                    continue;
                }
                out.add(ActivatedFoldBuilder.builder()
                        .place(FactPlaces.visit(i, side))
                        .visit(i + 1)
                        .side(side)
                        .standOff(v.side(side).standOff())
                        .legsOutOfParallel(v.side(side).legsOutOfParallel())
                        .build());
            }
        }
        for (int i = 0; i < c.visits().size(); i++) {
            Visit v = c.visits().get(i);
            Forces f = s.parts().force().at(c, i, s.book());
            Measured gauge = v.gauge();
            out.add(VisitSeenBuilder.builder()
                    .place(FactPlaces.visit(i))
                    .visit(i + 1)
                    .weeksSince(s.activations().weeksSince(i))
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
    }

    /** True when it is known that this side's fold was not opened, so that there is nothing to judge there. */
    private static boolean leftClosed(Fact<Sides> activated, Side side) {
        return activated.is(Sides.NONE) || activated.is(side == Side.LEFT ? Sides.RIGHT : Sides.LEFT);
    }

    private static Answer mobile(Fact<Mobility> grade) {
        return grade.known()
                ? Answer.of(grade.is(Mobility.GRADE_II) || grade.is(Mobility.GRADE_III))
                : Answers.absent(grade);
    }
}
