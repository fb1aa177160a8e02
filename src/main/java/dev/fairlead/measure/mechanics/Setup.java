package dev.fairlead.measure.mechanics;

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
        Tube tube,
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

    public Setup withTube(Tube other) {
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
}
