package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.EndBuilder;
import dev.fairlead.facts.EndSideBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.measure.schedule.Dates;
import dev.fairlead.measure.space.Irregularity;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Holding;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.util.List;

/** Room, holding arch, order of steps and recall at the end. */
final class EndFacts {
    /**
     * Canine 8, premolars 8 and 7 mm, and how far children differ from it: common practice. It warns where incisor
     * widths are missing, and never passes.
     */
    private static final Measured COMMON_SUM = Measured.of(8 + 8 + 7, Unit.MM, "customary sum of 23 mm", 0.9);

    private static final List<Tooth> SECOND_MOLARS = List.of(Tooth.of(37), Tooth.of(47));
    private static final Place[] SIDES = FactPlaces.within("/holding");
    private static final Place HOLDING = new Place("/holding", "");

    private EndFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Holding h = s.c().holding();
        Measured left = spare(s, Side.LEFT);
        Measured right = spare(s, Side.RIGHT);
        Measured leftOfSum = spareOfSum(s, Side.LEFT);
        Measured rightOfSum = spareOfSum(s, Side.RIGHT);
        for (Side side : Side.values()) {
            Measured spare = side == Side.LEFT ? left : right;
            Measured ofSum = side == Side.LEFT ? leftOfSum : rightOfSum;
            out.add(EndSideBuilder.builder()
                    .place(SIDES[side.ordinal()])
                    .side(side)
                    .spare(spare)
                    .spareOfSum(ofSum)
                    .build());
        }
        out.add(EndBuilder.builder()
                .place(HOLDING)
                .smallestSpare(left.min(right))
                .leastKnownSpare(Bounds.smallestKnown(Bounds.or(left, leftOfSum), Bounds.or(right, rightOfSum)))
                .archStarted(started(h))
                .debonded(Answers.happened(h.debonded()))
                .cemented(Answers.happened(h.cemented()))
                .cementBeforeDebond(Dates.days(h.cemented(), h.debonded()))
                .irregularity(Irregularity.index(h.contacts()))
                .inclination(h.incisorMandibular())
                .touchesCingula(h.touchesCingula())
                .passive(h.passive())
                .tissueClearance(h.tissueClearance())
                .monthsHeld(monthsHeld(s))
                .secondMolarsTold(secondMolarsTold(s.c()))
                .secondMolarRecall(h.secondMolarRecall())
                .recall(h.recall())
                .removalPoint(h.removalPoint())
                .build());
    }

    private static Measured spare(Gathered s, Side side) {
        Measured space = s.c().holding().space(side);
        Measured need = s.space().side(side).required();
        Measured spare = space.minus(need);
        s.book()
                .add(() -> Working.of(
                        "holding.spare." + Say.side(side),
                        "Holding",
                        "room to spare at the end, " + Say.side(side),
                        spare,
                        "space at the end - need of canine and premolars",
                        Say.num(space) + " - " + Say.num(need),
                        "",
                        s.space().side(side).chosen().source()));
        return spare;
    }

    /** Against the customary sum, where this child's need is not known; it may be less than the need. */
    private static Measured spareOfSum(Gathered s, Side side) {
        Measured need = s.space().side(side).required();
        if (need.known() || !need.applies()) {
            return Measured.notApplicable();
        }
        Measured spare = s.c().holding().space(side).minus(COMMON_SUM);
        s.book()
                .add(() -> Working.of(
                        "holding.spare-of-sum." + Say.side(side),
                        "Holding",
                        "room to spare at the end against the customary sum, " + Say.side(side),
                        spare,
                        "space at the end - (8 + 8 + 7 mm)",
                        Say.num(s.c().holding().space(side)) + " - 23",
                        "Incisor widths are missing, so this child's need is unknown: the sum can warn and never pass.",
                        "common-practice"));
        return spare;
    }

    /**
     * How long the holding arch has been in while not all second molars are known to be in, to the day of the check or
     * the day on which it came out.
     */
    private static Measured monthsHeld(Gathered s) {
        Holding h = s.c().holding();
        boolean in = SECOND_MOLARS.stream().allMatch(t -> s.c().tooth(t).state().is(ToothState.ERUPTED));
        return in ? Measured.notApplicable() : Dates.months(h.cemented(), Dates.earlier(h.removed(), s.day()));
    }

    private static Answer secondMolarsTold(Case c) {
        Answer cemented = Answers.happened(c.holding().cemented());
        return cemented.known()
                ? Answer.of(
                        SECOND_MOLARS.stream().anyMatch(t -> c.tooth(t).state().isOther(ToothState.ERUPTED)))
                : cemented;
    }

    /** An impression or a holding arch: one of them is a yes, both ruled out a no. */
    private static Answer started(Holding h) {
        return Answers.happened(h.impression()).or(Answers.happened(h.cemented()));
    }
}
