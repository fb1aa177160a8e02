package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.OffsetArch;
import dev.fairlead.measure.working.LatestAnswers;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.util.List;

/**
 * The line of the wire's middle, through the slots of the brackets and the tubes: the child's arch, which follows the
 * labial surfaces, with the distance of slot and tube added.
 *
 * @param front from the labial surface of the incisors to the middle of the wire in the slots, mm
 * @param left from where the arch's width was taken on the left out to the middle of the wire in the tube, mm
 * @param right the same on the right
 */
public record WireLine(PatientArch arch, Measured front, Measured left, Measured right) {
    /**
     * Distance in the slot where none was measured, mm, from memory: 0.9 to 1.3 from the tooth to the base of the slot,
     * 0.1 to 0.3 of adhesive, and half the wire, in all 1.2 to 1.9; the error takes these for two standard deviations
     * to either side.
     */
    static final double SLOT = 1.55;

    static final double SLOT_SD = 0.18;
    /**
     * The same for a tube, mm: none, for the width of an arch is taken between the tubes; taken on the teeth, the
     * tube's middle lies 1.0 to 1.3 further out (from memory), which the error stands for in part.
     */
    static final double TUBE = 0;

    static final double TUBE_SD = 0.3;
    private static final String SLOT_SOURCE = "distance of the slots from the teeth, not measured";
    private static final String TUBE_SOURCE = "distance of the tubes from where the arch was measured, not known";
    private static final int REMEMBERED = 256;
    private static final LatestAnswers<ArchCurve, Gains> GAINS = new LatestAnswers<>(REMEMBERED, Gains::of);

    /** Length that a half of the line gains per mm of distance at the front and at its tube, mm per mm. */
    private record Gains(double leftByFront, double leftByTube, double rightByFront, double rightByTube) {
        static Gains of(ArchCurve curve) {
            ArcRuler plain = curve.ruler();
            ArcRuler front = new OffsetArch(curve, SLOT, 0, 0).ruler();
            ArcRuler all = new OffsetArch(curve, SLOT, SLOT, SLOT).ruler();
            return new Gains(
                    (front.end() - plain.end()) / SLOT,
                    (all.end() - front.end()) / SLOT,
                    (plain.start() - front.start()) / SLOT,
                    (front.start() - all.start()) / SLOT);
        }
    }

    /** The line of a case's wire; distances that were not measured are assumed, with an error. */
    public static WireLine of(Case c, PatientArch arch) {
        List<Measured> slots = Tooth.LOWER_INCISORS.stream()
                .map(t -> c.hardware().bracket(t).slotOffset())
                .filter(Measured::known)
                .toList();
        Measured front = slots.isEmpty()
                ? Measured.exact(SLOT, Unit.MM).withError(SLOT_SOURCE, SLOT_SD)
                : Measured.sum(slots).times(1.0 / slots.size());
        return new WireLine(arch, front, tube(c, Side.LEFT), tube(c, Side.RIGHT));
    }

    private static Measured tube(Case c, Side side) {
        Measured given = c.hardware().tube(side).slotOffset();
        return given.known() ? given : Measured.exact(TUBE, Unit.MM).withError(TUBE_SOURCE, TUBE_SD);
    }

    /** True when the distance of at least one slot was measured. */
    public boolean slotsMeasured() {
        return front.sources().stream().noneMatch(SLOT_SOURCE::equals);
    }

    /** The line itself; refused when nothing is known of the arch. */
    public ArchCurve curve() {
        return new OffsetArch(arch.curve(), front.value(), left.value(), right.value());
    }

    /**
     * What the line is longer than the arch from the midline to one tube, mm; to first order in the distances, true to
     * 0.05 mm.
     */
    Measured longer(Side side) {
        if (!arch.known()) {
            return Measured.exact(0, Unit.MM);
        }
        Gains g = GAINS.of(arch.curve());
        return side == Side.LEFT
                ? front.times(g.leftByFront()).plus(left.times(g.leftByTube()))
                : front.times(g.rightByFront()).plus(right.times(g.rightByTube()));
    }

    /** Where a place so far along the arch from the midline lies along the line, mm, positive on the left. */
    double along(double onArch) {
        return curve().ruler().fromMidline(arch.curve().ruler().parameterAt(onArch));
    }
}
