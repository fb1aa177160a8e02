package dev.fairlead.measure.gather;

import dev.fairlead.measure.arch.PositionAnalysis;
import dev.fairlead.measure.schedule.SideGain;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Plan;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;

/**
 * The planned advance of each side against what that side needs. A side that has room to spare needs none.
 *
 * @param plan the plan
 * @param byArch advance that each side needs on this child's arch, mm, left and right
 * @param byRule the same by 2 mm of arch for each mm of advance, mm: it stands in for a warning, never for a pass
 */
record PlanNeeds(Plan plan, Measured[] byArch, Measured[] byRule) {
    private static final Measured NONE = Measured.exact(0, Unit.MM);

    static PlanNeeds of(Gathered s) {
        Measured[] byArch = new Measured[2];
        Measured[] byRule = new Measured[2];
        for (Side side : Side.values()) {
            Measured shortage = s.space().side(side).shortage();
            byRule[side.ordinal()] = SideGain.spreadOf(shortage.max(NONE));
            byArch[side.ordinal()] = SideGain.spreadOf(
                    PositionAnalysis.needed(s.readings(), s.space().side(side), s.arch())
                            .max(NONE));
        }
        return new PlanNeeds(s.c().plan(), byArch, byRule);
    }

    /** Planned less needed on the child's own arch, mm. */
    Measured spare(Side side) {
        return plan.advance(side).minus(byArch[side.ordinal()]);
    }

    /** The same, by the rule where the arch was not measured, mm. */
    Measured spareSoFar(Side side) {
        return plan.advance(side).minus(best(side));
    }

    private Measured best(Side side) {
        Measured need = byArch[side.ordinal()];
        return need.known() ? need : byRule[side.ordinal()];
    }

    /** Both amounts are known, and are nought; "no" where only one is known, and unknown where none is. */
    Answer noPlan() {
        Measured most = plan.advanceLeft().max(plan.advanceRight());
        return none() ? Answers.absent(most) : Answer.of(most.known() && most.value() <= Measured.ROUNDING);
    }

    private boolean none() {
        return !plan.advanceLeft().known() && !plan.advanceRight().known();
    }

    /** Exchanged, both sides would come nearer to what they need; "no" where that cannot be told of one amount. */
    Answer swapped() {
        if (none()) {
            return noPlan();
        }
        Measured left = spareSoFar(Side.LEFT);
        Measured right = spareSoFar(Side.RIGHT);
        Measured leftByRight = plan.advanceRight().minus(best(Side.LEFT));
        Measured rightByLeft = plan.advanceLeft().minus(best(Side.RIGHT));
        return Answer.of(left.known() && right.known() && nearer(leftByRight, left) && nearer(rightByLeft, right));
    }

    private static boolean nearer(Measured other, Measured now) {
        return Math.abs(other.value()) < Math.abs(now.value()) - Measured.ROUNDING;
    }
}
