package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.InsertedBuilder;
import dev.fairlead.facts.InsertedEndBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.InsertedSide;
import dev.fairlead.model.Insertion;
import dev.fairlead.model.Side;
import java.util.List;

/** The checklist answered at the chair. */
final class InsertionFacts {
    private static final Place[] SIDES = FactPlaces.sides("/insertion");
    private static final Place INSERTION = new Place("/insertion", "");

    private InsertionFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Insertion i = s.c().insertion();
        for (Side side : Side.values()) {
            InsertedSide x = i.side(side);
            out.add(InsertedEndBuilder.builder()
                    .place(SIDES[side.ordinal()])
                    .side(side)
                    .endProud(x.endProud())
                    .cutEndCaught(x.cutEndCaught())
                    .bentBehind(x.bentBehind())
                    .stopGap(x.stopGap())
                    .underHook(underHook(s.c(), side))
                    .cheekSore(x.cheekSore())
                    .build());
        }
        out.add(InsertedBuilder.builder()
                .place(INSERTION)
                .gingivalClearance(i.gingivalClearance())
                .blanching(i.blanching())
                .passiveGap(i.passiveGap())
                .bracketsTied(i.bracketsTied())
                .eyeProtection(i.eyeProtection())
                .airwayGuard(i.airwayGuard())
                .instructionsGiven(i.instructionsGiven())
                .build());
    }

    /**
     * A tube without a hook settles it. Where the tube carries one, or nobody recorded whether it does, "does not
     * apply" leaves the question open.
     */
    private static Answer underHook(Case c, Side side) {
        Answer answer = c.insertion().side(side).underHook();
        Answer hook = c.hardware().tube(side).hook();
        if (answer.known() || hook.no()) {
            return answer.known() ? answer : Answer.NOT_APPLICABLE;
        }
        return answer.doesNotApply() && !hook.yes()
                ? Answer.unknown(hook.missing())
                : Answer.unknown("/insertion/" + side.word() + "/underHook");
    }
}
