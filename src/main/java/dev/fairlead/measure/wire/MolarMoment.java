package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.Solution;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * What tips a lower first molar distally: the couple of the wire in the tube, and the distal force times its height
 * over the molar's centre of resistance.
 */
public final class MolarMoment {
    /**
     * Depth of the centre of resistance below the tube, mm, from memory: near the furcation of the roots, some 9 mm
     * below a tube in the middle of the crown; its error takes 6 to 12 mm for two standard deviations to either side.
     */
    private static final Measured DEPTH = Measured.exact(9, Unit.MM)
            .withError("depth of the first molar's centre of resistance below the tube, from memory", 1.5);

    private MolarMoment() {}

    public static Measured depth() {
        return DEPTH;
    }

    /** Couple of the wire at the mesial end of the tube, N mm; positive tips the crown distally. */
    public static double couple(Solution.Side side) {
        return side.moment().x();
    }

    /** Moment about the centre of resistance, N mm; positive tips the crown distally. */
    public static Measured tipping(Solution.Side side) {
        double distal = -side.force().y();
        return DEPTH.chain(couple(side) + distal * DEPTH.value(), distal, Unit.RATIO);
    }
}
