package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.PlannedActivationBuilder;
import dev.fairlead.measure.wire.Elastic;
import dev.fairlead.measure.wire.Forces;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;
import java.util.function.BinaryOperator;

/** The activation that is planned, before the wire goes in. */
final class PlanFacts {
    private static final Place PLAN = new Place("/plan", "");
    private static final String FIRST_VISIT = "/visits/0/";

    private PlanFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Forces f = c.visits().isEmpty() ? planned(s) : VisitFacts.NONE;
        out.add(PlannedActivationBuilder.builder()
                .place(PLAN)
                .standOff(c.plan().standOff(Side.RIGHT).max(c.plan().standOff(Side.LEFT)))
                .standOffMost(known(c, Measured::max))
                .standOffLeast(known(c, Measured::min))
                .interval(c.plan().intervalWeeks())
                .forceLow(f.low())
                .forceHigh(f.high())
                .peakStress(f.peakStress())
                .overProof(f.peakStress().minus(Elastic.proof(c.wire())))
                .build());
    }

    /** What is known of both sides, put together; a stand-off of 0 on a side that is not to advance is none. */
    private static Measured known(Case c, BinaryOperator<Measured> both) {
        Measured right = c.plan().standOff(Side.RIGHT);
        Measured left = c.plan().standOff(Side.LEFT);
        boolean noRight = !right.known() || still(c, Side.RIGHT);
        boolean noLeft = !left.known() || still(c, Side.LEFT);
        return noRight == noLeft ? both.apply(right, left) : noRight ? left : right;
    }

    private static boolean still(Case c, Side side) {
        return c.plan().sidedStandOff()
                && c.plan().standOff(side).known()
                && c.plan().standOff(side).value() == 0
                && c.plan().advance(side).known()
                && c.plan().advance(side).value() == 0;
    }

    private static Forces planned(Gathered s) {
        Forces f = s.parts().force().planned(s.c());
        return new Forces(ofPlan(f.low()), ofPlan(f.high()), ofPlan(f.peakStress()), Measured.notApplicable());
    }

    /** What is missing stands in the plan, and no gauge can be read before the wire is in. */
    private static Measured ofPlan(Measured m) {
        return m.missing().isEmpty()
                ? m
                : Measured.unknown(m.missing().stream()
                        .filter(p -> !p.equals(FIRST_VISIT + "gauge"))
                        .map(p -> p.startsWith(FIRST_VISIT) ? "/plan/" + p.substring(FIRST_VISIT.length()) : p)
                        .toList());
    }
}
