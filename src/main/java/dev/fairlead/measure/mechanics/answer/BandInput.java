package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.FoldRange;
import dev.fairlead.measure.mechanics.geometry.Require;
import java.util.List;

/**
 * What a force band is asked for.
 *
 * @param wire nominal wire
 * @param eLow lowest modulus the wire may have, MPa
 * @param eHigh highest modulus the wire may have, MPa
 * @param standOffRight how far the passive front stands before the brackets on account of the right fold, mm
 * @param standOffLeft the same for the left fold, mm
 * @param ties ways the wire may be tied; the first is the nominal one
 * @param stressLimits bending stresses whose stand-off is wanted, MPa
 */
public record BandInput(
        WireSpec wire,
        double eLow,
        double eHigh,
        ArchGeometry arch,
        FoldRange right,
        FoldRange left,
        double standOffRight,
        double standOffLeft,
        List<Ties> ties,
        Seat seat,
        List<Double> stressLimits,
        Mesh mesh) {
    /** All four tied, all four tied without sliding, laterals alone. */
    public static final List<Ties> USUAL_TIES = List.of(Ties.FOUR, Ties.FOUR_NO_SLIDING, Ties.LATERALS);
    /**
     * Drawn steel, 20 % under the handbook's 193 GPa: Goldberg, Vanderby and Burstone, J. Dent. Res. 56 (1977) 1227.
     * MPa.
     */
    public static final double STEEL_E_LOW = 154_000;
    /** Upper end of what is used for stainless steel wire, MPa. */
    public static final double STEEL_E_HIGH = 200_000;

    public BandInput {
        Require.positive("lowest modulus", eLow);
        Require.notNegative("stand-off, right", standOffRight);
        Require.notNegative("stand-off, left", standOffLeft);
        Require.positive("stand-off", Math.max(standOffRight, standOffLeft));
        if (!(eLow <= wire.e() && wire.e() <= eHigh)) {
            throw new IllegalArgumentException(
                    "the modulus must lie within its own range: " + eLow + ", " + wire.e() + ", " + eHigh);
        }
        if (ties.isEmpty()) {
            throw new IllegalArgumentException("at least one way of tying is needed");
        }
        ties = List.copyOf(ties);
        stressLimits = List.copyOf(stressLimits);
    }

    /** Stand-off of the side opened more, mm. */
    public double standOff() {
        return Math.max(standOffRight, standOffLeft);
    }

    boolean mirrored() {
        return arch.curve().symmetric() && right.equals(left) && standOffRight == standOffLeft;
    }
}
