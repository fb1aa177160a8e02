package dev.fairlead.measure.mechanics.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much force the tied-in wire has, as far as that can be known: the tube decides between hinged and held, and
 * modulus, ties and unmeasured folds widen the two.
 *
 * @param low lowest total labial force over all variants, N
 * @param high highest total labial force over all variants, N
 * @param hinged nominal wire, tail hinging in the tube
 * @param held nominal wire, tail held by the tube
 * @param hingedCurve force against movement, hinged
 * @param heldCurve force against movement, held
 * @param stress stand-offs at which the stress limits are reached
 * @param rightOnly right fold opened alone; empty when the left one is not opened anyway
 * @param leftOnly left fold opened alone; empty when the right one is not opened anyway
 * @param variants how many cases were solved for low and high
 */
public record ForceBand(
        double low,
        double high,
        Solution hinged,
        Solution held,
        LoadDeflection hingedCurve,
        LoadDeflection heldCurve,
        List<StressReach> stress,
        Optional<OneSide> rightOnly,
        Optional<OneSide> leftOnly,
        int variants)
        implements BandResult {

    public ForceBand {
        stress = List.copyOf(stress);
    }

    /** Mean of the two nominal ends per incisor, N: a mean, not what any one tooth gets. */
    public double meanPerIncisor() {
        return (hinged.forward() + held.forward()) / 8;
    }

    /**
     * Stand-off at which the peak bending stress reaches a limit, the fold opened as far as that needs.
     *
     * @param limit MPa
     * @param hinged mm; empty: not reached within searchedTo
     * @param held mm; empty: not reached within searchedTo
     * @param earliest held, with the highest modulus the wire may have, mm; empty: not reached within searchedTo
     * @param searchedTo largest stand-off looked at, mm
     */
    public record StressReach(
            double limit, OptionalDouble hinged, OptionalDouble held, OptionalDouble earliest, double searchedTo) {}

    /**
     * One fold opened, the other left closed.
     *
     * @param hinged total labial force, N
     * @param held total labial force, N
     * @param shareHinged of the force with both folds opened
     * @param shareHeld of the force with both folds opened
     */
    public record OneSide(double hinged, double held, double shareHinged, double shareHeld) {}
}
