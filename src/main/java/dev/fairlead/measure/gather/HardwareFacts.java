package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FirstMolarBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.ReadinessBuilder;
import dev.fairlead.measure.space.Irregularity;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Hardware;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Tube;
import java.util.List;

/** First molars with band and tube, and what came before steel. */
final class HardwareFacts {
    private static final Place[] MOLARS = {
        new Place("/hardware/left", "left, tooth 36"), new Place("/hardware/right", "right, tooth 46")
    };
    private static final Place HARDWARE = new Place("/hardware", "");
    private static final Tooth[] FIRST_MOLARS = {Tooth.of(36), Tooth.of(46)};

    private static final Tooth[] SECOND_MOLARS = {Tooth.of(37), Tooth.of(47)};

    private HardwareFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Hardware h = c.hardware();
        for (Side side : Side.values()) {
            Tube t = h.tube(side);
            out.add(FirstMolarBuilder.builder()
                    .place(MOLARS[side.ordinal()])
                    .side(side)
                    .erupted(Answers.erupted(
                            s.readings().tooth(FIRST_MOLARS[side.ordinal()]).state()))
                    .cemented(t.cemented())
                    .loose(t.loose())
                    .seated(t.marginsSeated())
                    .hook(t.hook())
                    .wireIn(Answers.wireIn(c, t.cemented()))
                    .tubeClearance(t.height().minus(c.wire().size()))
                    .secondMolarAngle(secondMolarAngle(s, side))
                    .build());
        }
        out.add(ReadinessBuilder.builder()
                .place(HARDWARE)
                .flexibleWireFirst(h.flexibleWireFirst())
                .irregularityNow(Irregularity.index(h.contactsNow()))
                .largestContactNow(Irregularity.largest(h.contactsNow()))
                .irregularitySoFar(Irregularity.indexSoFar(h.contactsNow()))
                .largestContactSoFar(Irregularity.largestSoFar(h.contactsNow()))
                .modelOverBands(h.modelOverBands())
                .buccalSegmentsFree(h.buccalSegmentsFree())
                .build());
    }

    /**
     * Angle whichever way the second molar leans, for one that leans far back is off its path as well. Where the case
     * says that it is there, "does not apply" leaves the angle open.
     */
    private static Measured secondMolarAngle(Gathered s, Side side) {
        boolean left = side == Side.LEFT;
        Measured angle =
                left ? s.c().films().secondMolarAngleLeft() : s.c().films().secondMolarAngleRight();
        boolean there =
                s.readings().tooth(SECOND_MOLARS[side.ordinal()]).state().isOther(ToothState.MISSING);
        return angle.doesNotApply() && there
                ? Measured.unknown("/films/secondMolarAngle" + (left ? "Left" : "Right"))
                : angle.abs();
    }
}
