package dev.fairlead.measure.archform;

import java.util.Arrays;
import java.util.List;

/** A curve of one family laid through landmarks, and how well it fits them. */
public record ArchFit(ArchFamily family, ArchCurve curve, Goodness goodness) {

    /** The best curve of the family: least squares of the distances at right angles to the curve. */
    public static ArchFit of(ArchFamily family, Landmarks landmarks) {
        ArchCurve curve = family == ArchFamily.SPLINE
                ? new SplineArch(landmarks.points())
                : new LeastSquaresFit(family, landmarks).curve();
        return new ArchFit(family, curve, Goodness.of(curve, landmarks));
    }

    /**
     * The beta function or the sixth-degree polynomial, whichever leaves the smaller residual SD for the numbers that
     * it fits.
     */
    public static ArchFit best(Landmarks landmarks) {
        ArchFit beta = of(ArchFamily.BETA, landmarks);
        ArchFit sixth = of(ArchFamily.SIXTH_DEGREE, landmarks);
        return sixth.residual(landmarks) < beta.residual(landmarks) ? sixth : beta;
    }

    /** Residual SD, mm: the sum of squares over points less fitted numbers. */
    public double residual(Landmarks landmarks) {
        double n = landmarks.teeth().size();
        return goodness.rms() * Math.sqrt(n / (n - family.parameters()));
    }

    /** One fit of every family that the number of landmarks can bear, in the order of the families. */
    public static List<ArchFit> all(Landmarks landmarks) {
        return Arrays.stream(ArchFamily.values())
                .filter(f -> landmarks.teeth().size() > f.parameters())
                .map(f -> of(f, landmarks))
                .toList();
    }
}
