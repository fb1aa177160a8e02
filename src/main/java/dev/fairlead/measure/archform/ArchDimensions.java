package dev.fairlead.measure.archform;

/**
 * Widths and depths taken with a caliper, mm: between the posterior (tube or molar) points, between the canine points,
 * and from the front of the central incisors straight back to the line joining each pair.
 */
public record ArchDimensions(double molarWidth, double molarDepth, double canineWidth, double canineDepth) {

    public ArchDimensions {
        Lengths.positive(molarWidth, molarDepth, canineWidth, canineDepth);
        if (canineWidth >= molarWidth || canineDepth >= molarDepth) {
            throw new IllegalArgumentException("the canines lie in front of and between the molars: width "
                    + canineWidth + " in " + molarWidth + ", depth " + canineDepth + " in " + molarDepth + " mm");
        }
    }

    /** The measures of a curve whose canine points lie this far along it from the midline, mm. */
    public static ArchDimensions of(ArchCurve curve, double canineArc) {
        Point left = curve.atArcLength(canineArc);
        Point right = curve.atArcLength(-canineArc);
        double canineDepth = curve.at(curve.midline()).y() - (left.y() + right.y()) / 2;
        return new ArchDimensions(curve.width(), curve.depth(), left.distance(right), canineDepth);
    }

    /** (Dc/Dm)/(Wc/Wm): larger is more tapered, smaller squarer (Noroozi-type index, J Int Oral Health 2019). */
    public double formIndex() {
        return canineDepth / molarDepth / (canineWidth / molarWidth);
    }
}
