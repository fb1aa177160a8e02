package dev.fairlead.measure.archform;

/**
 * Families of curves that can be laid through an arch, each member fixed by width, depth and at most one number of
 * shape.
 */
public enum ArchFamily {
    BETA(2),
    CATENARY(2),
    PARABOLA(2),
    HALF_ELLIPSE(2),
    CIRCLE(2),
    CONIC(3),
    SIXTH_DEGREE(3),
    SPLINE(2);

    private final int parameters;

    ArchFamily(int parameters) {
        this.parameters = parameters;
    }

    /** How many numbers fix one member (for the spline: how few points it needs, less one). */
    public int parameters() {
        return parameters;
    }

    /** The member fixed by width and depth alone, mm; refused for families that need more. */
    public ArchCurve of(double width, double depth) {
        if (parameters > 2 || this == SPLINE) {
            throw new IllegalArgumentException("width and depth alone do not fix a curve of the family " + this);
        }
        return member(new double[] {width, depth});
    }

    /** The member fixed by posterior and canine widths and depths; families without shape ignore the canines. */
    public ArchCurve of(ArchDimensions m) {
        return switch (this) {
            case CONIC -> ConicArch.through(m);
            case SIXTH_DEGREE -> SixthDegreeArch.through(m);
            default -> of(m.molarWidth(), m.molarDepth());
        };
    }

    /** The member with these fitting numbers: width, depth and, where there is one, an unbounded number of shape. */
    ArchCurve member(double[] p) {
        return switch (this) {
            case BETA -> new BetaArch(p[0], p[1]);
            case CATENARY -> CatenaryArch.of(p[0], p[1]);
            case PARABOLA -> ConicArch.parabola(p[0], p[1]);
            case HALF_ELLIPSE -> ConicArch.halfEllipse(p[0], p[1]);
            case CIRCLE -> ConicArch.circle(p[0], p[1]);
            case CONIC -> new ConicArch(p[0], p[1], Math.expm1(p[2]));
            // shares between -1/2 and 1 are those for which the polynomial falls all the way back from the front
            case SIXTH_DEGREE -> SixthDegreeArch.ofShare(p[0], p[1], 0.25 + 0.75 * Math.tanh(p[2]));
            case SPLINE -> throw new IllegalStateException("a spline is not fixed by a few numbers");
        };
    }

    /** Fitting numbers to start from. */
    double[] start(double width, double depth) {
        return parameters == 2
                ? new double[] {width, depth}
                : new double[] {width, depth, this == CONIC ? Math.log(1.5) : 0};
    }
}
