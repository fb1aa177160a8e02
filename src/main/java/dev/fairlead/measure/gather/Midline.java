package dev.fairlead.measure.gather;

import dev.fairlead.measure.schedule.SideGain;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;

/**
 * What the planned amounts do to the lower midline. The front turns away from the side that gains more, by half the
 * difference of what the two sides gain; a side gains {@link SideGain} for each mm of advance.
 *
 * @param after lower midline against the face after the planned amounts, mm; to the patient's left is positive
 * @param amountsDiffer left and right advance by different amounts
 * @param carriesOff the midline ends further off than it began
 * @param wordAgrees the side that the plan names is the one that the amounts advance more
 */
record Midline(Measured after, Answer amountsDiffer, Answer carriesOff, Answer wordAgrees) {
    static Midline of(Case c) {
        Measured now = c.bite().lowerMidline();
        Measured more = c.plan().advanceLeft().minus(c.plan().advanceRight());
        Measured after = now.minus(SideGain.room(more).times(0.5));
        return new Midline(
                after, differ(more), carries(now, after), agrees(c.plan().moreOn(), more));
    }

    private static Answer differ(Measured more) {
        return more.known() ? Answer.of(Math.abs(more.value()) > Measured.ROUNDING) : Answers.absent(more);
    }

    private static Answer carries(Measured now, Measured after) {
        return after.known()
                ? Answer.of(Math.abs(after.value()) > Math.abs(now.value()) + Measured.ROUNDING)
                : Answers.absent(after);
    }

    private static Answer agrees(Fact<Sides> named, Measured more) {
        if (!named.known() || !more.known()) {
            return named.known() ? Answers.absent(more) : Answers.absent(named);
        }
        Sides by =
                Math.abs(more.value()) <= Measured.ROUNDING ? Sides.BOTH : more.value() > 0 ? Sides.LEFT : Sides.RIGHT;
        return Answer.of(named.is(by) || by == Sides.BOTH && named.is(Sides.NONE));
    }
}
