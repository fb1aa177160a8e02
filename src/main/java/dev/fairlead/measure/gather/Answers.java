package dev.fairlead.measure.gather;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Plan;

/** Yes-or-no answers that follow from facts of other kinds. */
final class Answers {
    private Answers() {}

    /** What stands for an answer that rests on a fact that is not known. */
    static Answer absent(Fact<?> fact) {
        return fact.applies() ? Answer.unknown(fact.missing()) : Answer.NOT_APPLICABLE;
    }

    /** What stands for an answer that rests on a number that is not known. */
    static Answer absent(Measured number) {
        return number.applies() ? Answer.unknown(number.missing()) : Answer.NOT_APPLICABLE;
    }

    /** Whether the fact has that value. */
    static <T> Answer is(Fact<T> fact, T value) {
        return fact.known() ? Answer.of(fact.is(value)) : absent(fact);
    }

    /** Whether the tooth itself is in the mouth. */
    static Answer erupted(Fact<ToothState> state) {
        return is(state, ToothState.ERUPTED);
    }

    /** Whether something dated has happened: a day is a yes, "does not apply" a no. */
    static Answer happened(Fact<?> day) {
        return day.known() ? Answer.YES : day.applies() ? Answer.unknown(day.missing()) : Answer.NO;
    }

    /** Whether the plan names one side that advances more. */
    static Answer sided(Plan plan) {
        Fact<Sides> more = plan.moreOn();
        return more.known() ? Answer.of(more.is(Sides.LEFT) || more.is(Sides.RIGHT)) : absent(more);
    }

    /**
     * The steel wire went in: something of the day of insertion or a visit is recorded. It is asked together with
     * {@code beside}, and while that is missing nothing is told of it.
     */
    static Answer wireIn(Case c, Answer beside) {
        boolean in = !c.visits().isEmpty()
                || c.insertion().date().known()
                || c.insertion().bracketsTied().known();
        return beside.missing().isEmpty() ? Answer.of(in) : beside;
    }

    /** Whether what {@code asked} names was dealt with; where it names nothing there is nothing to deal with. */
    static Answer settled(Answer asked, Answer dealtWith, String pointer) {
        return asked.no() ? Answer.YES : dealtWith.doesNotApply() ? Answer.unknown(pointer) : dealtWith;
    }
}
