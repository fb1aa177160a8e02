package dev.fairlead.measure.gather;

import dev.fairlead.facts.AntimeresBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.LowerIncisorBuilder;
import dev.fairlead.facts.ToothWidthBuilder;
import dev.fairlead.measure.records.CrownWidths;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Bracket;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.PeriodontalAdvice;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Widths, antimeres and lower incisors. Widths and antimeres of the four incisors always stand, for the plan rests on
 * them; those of other teeth stand where they were measured. A pair of which one tooth was measured waits for the
 * other, unless that is known not to stand in the mouth.
 */
final class ToothFacts {
    private static final List<Tooth> OTHERS = others();
    private static final Tooth[] LEFT_INCISORS = {Tooth.of(31), Tooth.of(32)};

    private ToothFacts() {}

    private static List<Tooth> others() {
        List<Tooth> others = new ArrayList<>();
        for (int number = 11; number <= 85; number++) {
            if (Tooth.exists(number) && !Tooth.LOWER_INCISORS.contains(Tooth.of(number))) {
                others.add(Tooth.of(number));
            }
        }
        return List.copyOf(others);
    }

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Readings r = s.readings();
        for (Tooth t : Tooth.LOWER_INCISORS) {
            width(s, t, out);
        }
        for (Tooth t : OTHERS) {
            if (CrownWidths.has(t)
                    && (r.tooth(t).width().known()
                            || r.tooth(t.antimere()).width().known() && mayStand(r, t))) {
                width(s, t, out);
            }
        }
        for (Tooth t : LEFT_INCISORS) {
            pair(s, t, out);
        }
        for (Tooth t : OTHERS) {
            if (t.side() != Side.LEFT) {
                continue;
            }
            boolean left = r.tooth(t).width().known();
            boolean right = r.tooth(t.antimere()).width().known();
            if (left && (right || mayStand(r, t.antimere())) || right && mayStand(r, t)) {
                pair(s, t, out);
            }
        }
        Answer advance = any(c.plan().advanceLeft()).or(any(c.plan().advanceRight()));
        for (Tooth t : Tooth.LOWER_INCISORS) {
            ToothRecord x = r.tooth(t);
            Bracket b = c.hardware().bracket(t);
            out.add(LowerIncisorBuilder.builder()
                    .place(FactPlaces.tooth(t))
                    .tooth(t)
                    .erupted(Answers.erupted(x.state()))
                    .gingivaThickness(x.gingivaThickness())
                    .keratinised(x.keratinised())
                    .recession(seen(x.recession()))
                    .periodontalOpinion(opinion(c))
                    .opinionAllows(says(c, PeriodontalAdvice.MAY_ADVANCE))
                    .opinionForbids(says(c, PeriodontalAdvice.DO_NOT_ADVANCE))
                    .advancePlanned(advance)
                    .bonded(b.bonded())
                    .loose(b.loose())
                    .wireIn(Answers.wireIn(c, b.bonded()))
                    .slotClearance(b.slot().minus(c.wire().size()))
                    .build());
        }
    }

    private static void width(Gathered s, Tooth t, List<CaseFact> out) {
        Measured width = s.readings().width(t);
        out.add(ToothWidthBuilder.builder()
                .place(FactPlaces.tooth(t))
                .tooth(t)
                .width(width)
                .mean(width.known() ? Measured.exact(CrownWidths.of(t).mean(), Unit.MM) : width)
                .deviation(CrownWidths.deviation(t, width))
                .build());
    }

    private static void pair(Gathered s, Tooth left, List<CaseFact> out) {
        out.add(AntimeresBuilder.builder()
                .place(FactPlaces.pair(left))
                .left(left)
                .difference(s.readings()
                        .width(left)
                        .minus(s.readings().width(left.antimere()))
                        .abs())
                .build());
    }

    /**
     * Recorded as standing in the mouth, a primary tooth also by what its successor's place is said to hold, or not
     * recorded at all: its width could be measured, and may have been forgotten.
     */
    private static boolean mayStand(Readings r, Tooth t) {
        Fact<ToothState> state = r.tooth(t).state();
        Fact<ToothState> place =
                t.primary() ? r.tooth(Tooth.of(t.number() - 40)).state() : Fact.notApplicable();
        return state.is(ToothState.ERUPTED)
                || t.primary() && state.is(ToothState.PRIMARY_PRESENT)
                || place.is(ToothState.PRIMARY_PRESENT)
                || !state.known() && !place.known();
    }

    private static Answer any(Measured advance) {
        return advance.known() ? Answer.of(advance.value() > Measured.ROUNDING) : Answers.absent(advance);
    }

    /** Zero says that no recession was seen: there is no size that could have been misread. */
    private static Measured seen(Measured recession) {
        return recession.known() && recession.value() == 0 ? Measured.exact(0, recession.unit()) : recession;
    }

    /** An opinion whose content is recorded is there, whether anybody said so or not. */
    private static Answer opinion(Case c) {
        Answer given = c.mouth().periodontalOpinion();
        return !given.known() && given.applies() && c.mouth().opinionSays().known() ? Answer.YES : given;
    }

    /** Whether the opinion says this; without an opinion nobody did, and with one it has to say something. */
    private static Answer says(Case c, PeriodontalAdvice advice) {
        Fact<PeriodontalAdvice> said = c.mouth().opinionSays();
        Answer given = c.mouth().periodontalOpinion();
        if (said.known()) {
            return Answers.is(said, advice);
        }
        return given.no() || given.doesNotApply()
                ? Answer.NO
                : Answer.unknown(given.known() ? List.of("/mouth/opinionSays") : given.missing());
    }
}
