package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Inserted;
import dev.fairlead.facts.InsertedEnd;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.InsertedSide;
import dev.fairlead.model.Insertion;
import dev.fairlead.model.Side;
import java.util.List;

/** The checklist answered at the chair. */
final class InsertionFacts {
    private static final Place[] SIDES = Places.sides("/insertion");
    private static final Place INSERTION = new Place("/insertion", "");

    private InsertionFacts() {}

    static void add(Source s, List<CaseFact> out) {
        Insertion i = s.c().insertion();
        for (Side side : Side.values()) {
            InsertedSide x = i.side(side);
            out.add(new InsertedEnd(
                    SIDES[side.ordinal()],
                    side,
                    x.endProud(),
                    x.cutEndCaught(),
                    x.bentBehind(),
                    x.stopGap(),
                    underHook(s.c(), side),
                    x.cheekSore()));
        }
        out.add(new Inserted(
                INSERTION,
                i.gingivalClearance(),
                i.blanching(),
                i.passiveGap(),
                i.bracketsTied(),
                i.eyeProtection(),
                i.airwayGuard(),
                i.instructionsGiven()));
    }

    /** Where the tube carries a hook, "does not apply" leaves the question open. */
    private static Answer underHook(Case c, Side side) {
        Answer answer = c.insertion().side(side).underHook();
        return answer.doesNotApply() && c.hardware().tube(side).hook().yes()
                ? Answer.unknown("/insertion/" + side.word() + "/underHook")
                : answer;
    }
}
