package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;

/**
 * One arch, tied in: everything a single solution needs.
 *
 * @param right fold at the patient's right tube, as bent and closed
 * @param left fold at the patient's left tube
 * @param alphaR opening of each bend of the right fold, radians
 * @param alphaL opening of each bend of the left fold, radians
 */
public record Setup(
        WireSpec wire,
        ArchGeometry arch,
        FoldSpec right,
        FoldSpec left,
        double alphaR,
        double alphaL,
        TailSupport tube,
        Ties ties,
        Seat seat,
        Theory theory,
        Mesh mesh) {

    public Setup {
        checkOpening(alphaR);
        checkOpening(alphaL);
    }

    private static void checkOpening(double alpha) {
        if (!(alpha >= 0 && alpha <= FoldKinematics.LARGEST_OPENING)) {
            throw new IllegalArgumentException("fold opening must lie between 0 and pi/2 radians: " + alpha);
        }
    }

    /** Stand-off in front of the brackets that the right fold's opening gives, mm. */
    public double standOffRight() {
        return FoldKinematics.forward(right, alphaR);
    }

    /** Stand-off in front of the brackets that the left fold's opening gives, mm. */
    public double standOffLeft() {
        return FoldKinematics.forward(left, alphaL);
    }

    /** Height of the brackets against the tubes, mm: as given, else the mean level of both closed folds' third legs. */
    public double bracketLevel() {
        return arch.bracketLevel().orElse(-(drop(right) + drop(left)) / 2);
    }

    private static double drop(FoldSpec fold) {
        return fold.height() * Math.cos(fold.tip());
    }

    public Setup withTube(TailSupport other) {
        return new Setup(wire, arch, right, left, alphaR, alphaL, other, ties, seat, theory, mesh);
    }

    public Setup withTies(Ties other) {
        return new Setup(wire, arch, right, left, alphaR, alphaL, tube, other, seat, theory, mesh);
    }

    public Setup withWire(WireSpec other) {
        return new Setup(other, arch, right, left, alphaR, alphaL, tube, ties, seat, theory, mesh);
    }

    public Setup withTheory(Theory other) {
        return new Setup(wire, arch, right, left, alphaR, alphaL, tube, ties, seat, other, mesh);
    }

    public Setup withSeat(Seat other) {
        return new Setup(wire, arch, right, left, alphaR, alphaL, tube, ties, other, theory, mesh);
    }

    public Setup withMesh(Mesh other) {
        return new Setup(wire, arch, right, left, alphaR, alphaL, tube, ties, seat, theory, other);
    }

    public Setup withOpenings(double newRight, double newLeft) {
        return new Setup(wire, arch, right, left, newRight, newLeft, tube, ties, seat, theory, mesh);
    }

    /** Other folds, with openings to match. */
    public Setup withFolds(FoldSpec newRight, FoldSpec newLeft, double newAlphaR, double newAlphaL) {
        return new Setup(wire, arch, newRight, newLeft, newAlphaR, newAlphaL, tube, ties, seat, theory, mesh);
    }

    /**
     * What a molar tube does to the wire's tail; sliding distally is blocked in all, because the fold's first bend
     * stops at the tube.
     */
    public enum TailSupport {
        /**
         * Held in all six ways at the mesial end. A round wire spins in its tube, so this is too stiff; kept for
         * comparison.
         */
        FIXED,
        /** Direction of the tail held at the mesial end, free to spin about its own axis. */
        SPIN,
        /** Guided sideways and vertically at both ends of the tube, without play, free to spin: the tail held. */
        TWO_POINT,
        /**
         * Held in place at the mesial end, rotation about z held, about x and y free: the tail hinges. With large
         * rotations the blocked spin is the one about the fixed z axis, step by step; a universal joint that keeps the
         * tail in the vertical plane instead gives about 3 % more force.
         */
        HINGE_SPIN
    }

    /** What the ligatures do to the wire at the four incisor brackets. */
    public enum Ties {
        /** Held labiolingually and vertically in all four brackets; slides and turns freely. */
        FOUR,
        /** As FOUR, and the wire cannot slide along the arch. */
        FOUR_NO_SLIDING,
        /** The two lateral incisors alone, as FOUR. */
        LATERALS,
        /** All four brackets clamp the wire in all six ways. */
        FOUR_CLAMPED
    }

    /** Which part of the opened fold's travel is taken up when the tail is seated in the tube. */
    public enum Seat {
        /** Forward only: the clinician has bent the gingival travel out again. */
        LEVEL,
        /** Forward, gingival and buccal. */
        FULL
    }

    /** How displacements are treated. */
    public enum Theory {
        /** Small displacements; good below about 1 mm of stand-off, too high above. */
        LINEAR,
        /** Large rotations of a linear elastic wire. */
        LARGE_ROTATIONS
    }
}
