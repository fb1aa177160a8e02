package dev.fairlead.measure.archform;

/**
 * The line beside another curve, outwards of it: by one distance at the front and by others at the posterior ends, mm.
 * It passes from one to the other with the square of the way across, so that the incisors, in the middle third of the
 * width, keep six sevenths of the distance of the front.
 */
public record OffsetArch(ArchCurve base, double front, double left, double right) implements ArchCurve {
    /** Parameter over which a change is read: errors of both kinds stay below 1e-7 mm. */
    private static final double STEP = 1e-5;

    public OffsetArch {
        if (!Double.isFinite(front) || !Double.isFinite(left) || !Double.isFinite(right)) {
            throw new IllegalArgumentException("distances from a curve are finite numbers of mm");
        }
    }

    @Override
    public String name() {
        return "line in front of the " + base.name();
    }

    @Override
    public Point at(double u) {
        Point p = base.at(u);
        boolean onLeft = u >= base.midline();
        double across = p.x() / base.at(onLeft ? 1 : -1).x();
        double end = onLeft ? left : right;
        double distance = front + (end - front) * share(across);
        return p.plus(base.normal(u).times(distance));
    }

    /** How far the distance has passed to that of the end, so far across from the middle (0) to the end (1). */
    public static double share(double across) {
        double within = Math.max(0, Math.min(1, across));
        return within * within;
    }

    @Override
    public Point derivative(double u) {
        double from = Math.max(-1, u - STEP);
        double to = Math.min(1, u + STEP);
        return at(to).minus(at(from)).times(1 / (to - from));
    }

    @Override
    public Point tangent(double u) {
        // some curves stand still at their ends, where a difference of two places has no direction
        double inside = Math.max(-1 + STEP, Math.min(1 - STEP, u));
        return inside == u ? derivative(u).unit() : base.tangent(u);
    }

    @Override
    public double midline() {
        return base.midline();
    }

    @Override
    public double[] breaks() {
        return base.breaks();
    }

    @Override
    public ArchCurve mirrored() {
        return new OffsetArch(base.mirrored(), front, /* left= */ right, /* right= */ left);
    }

    @Override
    public ArchCurve reshaped(double newWidth, double newDepth) {
        return ScaledArch.to(this, newWidth, newDepth);
    }
}
