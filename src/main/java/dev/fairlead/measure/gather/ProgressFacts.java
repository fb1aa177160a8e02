package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.ProgressBuilder;
import dev.fairlead.facts.SideProgressBuilder;
import dev.fairlead.measure.schedule.Progressed;
import dev.fairlead.measure.schedule.Response;
import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import java.util.List;
import java.util.function.Function;

/** How the front has moved so far. */
final class ProgressFacts {
    private static final Place[] SIDES = FactPlaces.within("/visits");
    private static final Place VISITS = new Place("/visits", "");
    private static final Measured NO_VISITS = Measured.unknown("/visits");

    private ProgressFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Measured left = s.activations().forward(Side.LEFT);
        Measured right = s.activations().forward(Side.RIGHT);
        for (Side side : Side.values()) {
            Measured done = side == Side.LEFT ? left : right;
            Measured planned = c.plan().advance(side);
            Measured spare = s.activations().none() ? NO_VISITS : reach(s, side).minus(done.max(planned));
            Measured distalNow = last(c, v -> v.side(side).molarDistal());
            Measured advanced = Progressed.byIncisors(c);
            out.add(SideProgressBuilder.builder()
                    .place(SIDES[side.ordinal()])
                    .side(side)
                    .foldWireSpare(spare)
                    .response(Response.of(s.activations(), side, s.book()))
                    .molarDistal(
                            distalNow.known()
                                    ? distalNow
                                    : farthest(c, v -> v.side(side).molarDistal(), distalNow))
                    .molarDistalNow(distalNow)
                    .pastPlan(
                            (advanced.known() ? advanced : farthest(c, Visit::incisorAdvance, advanced)).minus(planned))
                    .pastPlanNow(advanced.minus(planned))
                    .pastPlanBySpace(Progressed.bySpace(c, side).minus(planned))
                    .build());
            s.book()
                    .add(() -> Working.of(
                            "activation.forward." + Say.side(side),
                            "Activation",
                            "opened so far on the " + Say.side(side) + ", which is no measured advance",
                            done,
                            "travel of a fold opened to the summed gap: 2 r' sin a + L (1 - cos a), sin a = gap / L",
                            "",
                            "",
                            "geometry"));
            s.book()
                    .add(() -> Working.of(
                            "activation.fold-wire-spare." + Say.side(side),
                            "Activation",
                            "wire left in the " + Say.side(side) + " fold",
                            spare,
                            "reach of the fold (4 r + L) - the larger of travel so far and planned advance",
                            Say.num(reach(s, side)) + " - max(" + Say.num(done) + ", " + Say.num(planned) + ")",
                            "At its full reach the leg stands upright.",
                            "geometry"));
        }
        Measured leftLeads = left.minus(right);
        Measured apart = leftLeads.abs();
        Measured otherLeads = otherSideLeads(c.plan().moreOn(), leftLeads);
        List<Measured> leads = LeadBounds.of(c, leftLeads);
        out.add(ProgressBuilder.builder()
                .place(VISITS)
                .sidesApart(apart)
                .sidesApartSoFar(Bounds.or(apart, LeadBounds.leastApart(leads)))
                .sidedPlan(Answers.sided(c.plan()))
                .otherSideLeads(otherLeads)
                .otherSideLeadsSoFar(Bounds.or(
                        otherLeads,
                        LeadBounds.least(leads, lead -> otherSideLeads(c.plan().moreOn(), lead))))
                .sinceRecheck(s.activations().sinceRecheck())
                .recheckTold(s.activations().recheckTold())
                .monthsWithoutRootDecision(s.activations().monthsWithoutRootDecision(s.day()))
                .rootDecisionTold(s.activations().rootDecisionTold())
                .build());
    }

    private static Measured last(Case c, Function<Visit, Measured> reading) {
        return c.visits().isEmpty()
                ? NO_VISITS
                : reading.apply(c.visits().get(c.visits().size() - 1));
    }

    /**
     * The largest of all readings that were taken: harm that was seen stays seen when the last visit has no reading.
     */
    private static Measured farthest(Case c, Function<Visit, Measured> reading, Measured none) {
        Measured most = none;
        for (Visit v : c.visits()) {
            Measured read = reading.apply(v);
            most = read.known() && !(most.known() && most.value() >= read.value()) ? read : most;
        }
        return most;
    }

    /** By how much the side that is to advance less was opened further; does not apply to a plan that names no side. */
    private static Measured otherSideLeads(Fact<Sides> more, Measured leftLeads) {
        if (!more.known()) {
            return more.applies() ? leftLeads.plus(Measured.unknown(more.missing())) : Measured.notApplicable();
        }
        return more.is(Sides.LEFT) ? leftLeads.times(-1) : more.is(Sides.RIGHT) ? leftLeads : Measured.notApplicable();
    }

    /** Reach of the fold as it was made: what is left in it cannot be told from the planned beak. */
    private static Measured reach(Gathered s, Side side) {
        Measured reach = WireMeasures.reach(s.c(), side);
        Measured radius = s.c().bench().fold(side).bendRadius();
        return radius.missing().isEmpty() ? reach : Measured.unknown(Pointers.union(reach.missing(), radius.missing()));
    }
}
