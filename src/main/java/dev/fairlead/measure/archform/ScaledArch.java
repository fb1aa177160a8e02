package dev.fairlead.measure.archform;

/** Another curve widened and deepened in proportion, for curves whose own kind has no such member. */
public record ScaledArch(ArchCurve base, double across, double forward) implements ArchCurve {

    public ScaledArch {
        Lengths.positive(across, forward);
    }

    static ScaledArch to(ArchCurve base, double width, double depth) {
        Lengths.positive(width, depth);
        return new ScaledArch(base, width / base.width(), depth / base.depth());
    }

    @Override
    public String name() {
        return base.name() + ", stretched";
    }

    @Override
    public Point at(double u) {
        return scaled(base.at(u));
    }

    @Override
    public Point derivative(double u) {
        return scaled(base.derivative(u));
    }

    @Override
    public Point tangent(double u) {
        return scaled(base.tangent(u)).unit();
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
        return new ScaledArch(base.mirrored(), across, forward);
    }

    @Override
    public ArchCurve reshaped(double newWidth, double newDepth) {
        return to(base, newWidth, newDepth);
    }

    private Point scaled(Point p) {
        return new Point(across * p.x(), forward * p.y());
    }
}
