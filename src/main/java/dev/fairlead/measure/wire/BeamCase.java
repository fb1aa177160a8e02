package dev.fairlead.measure.wire;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.mechanics.answer.Mesh;
import dev.fairlead.measure.mechanics.answer.Setup;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.answer.WireSpec;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.ArchPath;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the beam model is asked, as it was measured: nothing is rounded, so that answers do not jump between inputs that
 * hardly differ. Equal cases have equal answers.
 *
 * @param d diameter of the wire, mm
 * @param curve line of the wire through the slots, between the mesial ends of the tubes
 * @param tubeLength mm
 * @param central bracket of the central incisors along the arch from the midline, mm
 * @param lateral the same for the lateral incisors, mm
 * @param above height of the tubes above the brackets with the wire tied in, mm; empty: a wire levelled to its closed
 *     folds
 */
record BeamCase(
        double d,
        ArchCurve curve,
        double tubeLength,
        double central,
        double lateral,
        FoldSpec right,
        FoldSpec left,
        double standOffRight,
        double standOffLeft,
        OptionalDouble above) {
    /**
     * Modulus that the model is solved with, MPa; forces and stresses go with it exactly, as the supports impose
     * displacements.
     */
    static final double E = 180_000;
    /** Poisson's ratio of steel, 0.28 to 0.30; from memory. */
    static final double NU = 0.3;

    // written out: what Java makes of a record at the first call takes a start longer than all the geometry that is
    // looked up by it
    private double[] parts() {
        return new double[] {d, tubeLength, central, lateral, standOffRight, standOffLeft};
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof BeamCase b
                && Arrays.equals(parts(), b.parts())
                && curve.equals(b.curve)
                && right.equals(b.right)
                && left.equals(b.left)
                && above.equals(b.above);
    }

    @Override
    public int hashCode() {
        return 31
                        * (31 * (31 * (31 * Arrays.hashCode(parts()) + curve.hashCode()) + right.hashCode())
                                + left.hashCode())
                + above.hashCode();
    }

    /** A fold with both legs alike. */
    static FoldSpec fold(double r, double leg, double tipDeg) {
        return new FoldSpec(r, leg, leg, 0, tipDeg);
    }

    /** The same with the heights of tubes and brackets as measured. */
    BeamCase withTubesAbove(double height) {
        return new BeamCase(
                d,
                curve,
                tubeLength,
                central,
                lateral,
                right,
                left,
                standOffRight,
                standOffLeft,
                OptionalDouble.of(height));
    }

    /** The wire tied in; empty when a fold cannot be opened far enough for its stand-off. */
    Optional<Setup> tiedIn() {
        OptionalDouble alphaR = FoldKinematics.openingForForward(right, standOffRight);
        OptionalDouble alphaL = FoldKinematics.openingForForward(left, standOffLeft);
        if (alphaR.isEmpty() || alphaL.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble level = above.isEmpty()
                ? above
                : OptionalDouble.of((seat(right, alphaR.getAsDouble()) + seat(left, alphaL.getAsDouble())) / 2
                        - above.getAsDouble());
        return Optional.of(new Setup(
                wire(),
                arch(level),
                right,
                left,
                alphaR.getAsDouble(),
                alphaL.getAsDouble(),
                TailSupport.TWO_POINT,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LARGE_ROTATIONS,
                Mesh.STANDARD));
    }

    WireSpec wire() {
        return new WireSpec(d, E, NU);
    }

    ArchGeometry arch(OptionalDouble level) {
        return new ArchGeometry(new ArchPath(curve), tubeLength, central, lateral, level);
    }

    /**
     * Height of the seated tube over the place of a closed fold's tube, mm: a levelled wire leaves the gingival travel
     * at the tube.
     */
    private static double seat(FoldSpec fold, double alpha) {
        return FoldKinematics.gingival(fold, alpha) * Math.cos(Math.toRadians(fold.tipDeg()));
    }
}
