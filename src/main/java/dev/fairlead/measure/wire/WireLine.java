package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.OffsetArch;
import dev.fairlead.measure.archform.Point;
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
    /** Steps from the midline to a tube. */
    private static final int STEPS = 48;

    /**
     * Length that a half of the line gains per mm of distance at the front and at its tube, mm per mm. A line beside
     * another is longer by the distance times the turn (Steiner's formula for parallel curves); on the way from one
     * distance to the other it runs aslant as well.
     */
    private record Gains(double byFront, double byTube) {
        static Gains of(ArchCurve curve, double end) {
            double midline = curve.midline();
            Point place = curve.at(midline);
            Point heading = curve.tangent(midline);
            double middle = place.x();
            double across = curve.at(end).x() - middle;
            double share = 0;
            double byFront = 0;
            double byTube = 0;
            for (int i = 1; i <= STEPS; i++) {
                double u = midline + (end - midline) * i / STEPS;
                Point there = curve.at(u);
                Point ahead = curve.tangent(u);
                double then = OffsetArch.share((there.x() - middle) / across);
                double turn =
                        -Math.signum(end) * Math.atan2(heading.quarterTurn().dot(ahead), heading.dot(ahead));
                double slant = SLOT * (then - share) * (then - share) / (2 * there.distance(place));
                byFront += turn * (1 - (share + then) / 2) + slant;
                byTube += turn * (share + then) / 2 - slant;
                place = there;
                heading = ahead;
                share = then;
            }
            return new Gains(byFront, byTube);
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
        boolean onLeft = side == Side.LEFT;
        Gains g = Gains.of(arch.curve(), onLeft ? 1 : -1);
        return front.times(g.byFront()).plus((onLeft ? left : right).times(g.byTube()));
    }

    /** Where a place so far along the arch from the midline lies along the line, mm, positive on the left. */
    double along(double onArch) {
        return curve().ruler().fromMidline(arch.curve().ruler().parameterAt(onArch));
    }
}
