package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.EndBuilder;
import dev.fairlead.facts.EndSideBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.measure.space.Irregularity;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Holding;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Room, holding arch, order of steps and recall at the end. */
final class EndFacts {
    /** Canine 8, premolars 8 and 7 mm: common practice, used only where incisor widths are missing. */
    private static final Measured COMMON_SUM = Measured.exact(8 + 8 + 7, Unit.MM);

    private static final Place[] SIDES = FactPlaces.within("/holding");
    private static final Place HOLDING = new Place("/holding", "");

    private EndFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Holding h = s.c().holding();
        Measured left = spare(s, Side.LEFT);
        Measured right = spare(s, Side.RIGHT);
        out.add(EndSideBuilder.builder()
                .place(SIDES[0])
                .side(Side.LEFT)
                .spare(left)
                .beyondNeed(beyond(s, Side.LEFT))
                .build());
        out.add(EndSideBuilder.builder()
                .place(SIDES[1])
                .side(Side.RIGHT)
                .spare(right)
                .beyondNeed(beyond(s, Side.RIGHT))
                .build());
        out.add(EndBuilder.builder()
                .place(HOLDING)
                .smallestSpare(left.min(right))
                .archStarted(started(h))
                .debonded(Answers.happened(h.debonded()))
                .cemented(Answers.happened(h.cemented()))
                .cementBeforeDebond(days(h.cemented(), h.debonded()))
                .irregularity(Irregularity.index(h.contacts()))
                .inclination(h.incisorMandibular())
                .touchesCingula(h.touchesCingula())
                .passive(h.passive())
                .tissueClearance(h.tissueClearance())
                .secondMolarRecall(h.secondMolarRecall())
                .recall(h.recall())
                .removalPoint(h.removalPoint())
                .build());
    }

    private static Measured spare(Gathered s, Side side) {
        Measured space = s.c().holding().space(side);
        Measured need = s.space().side(side).required();
        Measured target = need.known() ? need : COMMON_SUM;
        Measured spare = space.minus(target);
        s.book()
                .add(() -> Working.of(
                        "holding.spare." + Say.side(side),
                        "Holding",
                        "room to spare at the end, " + Say.side(side),
                        spare,
                        "space at the end - need of canine and premolars",
                        Say.num(space) + " - " + Say.num(target),
                        need.known() ? "" : "Incisor widths are missing: 8 + 8 + 7 = 23 mm stands for the need.",
                        need.known() ? s.space().side(side).chosen().source() : "common-practice"));
        return spare;
    }

    /** The common sum is a generous target, for few need more; what is beyond the need of one child it cannot tell. */
    private static Measured beyond(Gathered s, Side side) {
        return s.c().holding().space(side).minus(s.space().side(side).required());
    }

    /** An impression or a holding arch: one of them is a yes, both ruled out a no. */
    private static Answer started(Holding h) {
        return Answers.happened(h.impression()).or(Answers.happened(h.cemented()));
    }

    private static Measured days(Fact<LocalDate> from, Fact<LocalDate> to) {
        if (from.known() && to.known()) {
            return Measured.exact(ChronoUnit.DAYS.between(from.get(), to.get()), Unit.DAY);
        }
        return from.applies() && to.applies()
                ? Measured.unknown(Pointers.union(from.missing(), to.missing()))
                : Measured.notApplicable();
    }
}
