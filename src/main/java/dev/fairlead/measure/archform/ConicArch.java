package dev.fairlead.measure.archform;

/**
 * A conic section symmetrical about the midline: weight 1 is a parabola, 0 half an ellipse, above 1 a hyperbola,
 * between -1 and 1 an arc of an ellipse; the weight is that of the middle point of a rational quadratic curve.
 */
public record ConicArch(double width, double depth, double weight) implements ArchCurve {

    public ConicArch {
        Lengths.positive(width, depth);
        if (!(weight > -1) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("the weight of a conic arch is above -1, not " + weight);
        }
    }

    public static ConicArch parabola(double width, double depth) {
        return new ConicArch(width, depth, 1);
    }

    public static ConicArch halfEllipse(double width, double depth) {
        return new ConicArch(width, depth, 0);
    }

    /** The arc of a circle through both ends and the front. */
    public static ConicArch circle(double width, double depth) {
        double t = 2 * depth / width;
        return new ConicArch(width, depth, (1 - t * t) / (1 + t * t));
    }

    /** The conic through the front, both canine points and both posterior points. */
    public static ConicArch through(ArchDimensions m) {
        double c2 = m.canineWidth() * m.canineWidth() / 4;
        double m2 = m.molarWidth() * m.molarWidth() / 4;
        // x^2 = 2 R h - K h^2 with h the distance behind the front
        double k = (c2 / m.canineDepth() - m2 / m.molarDepth()) / (m.molarDepth() - m.canineDepth());
        double ratio = k * m.molarDepth() * m.molarDepth() / m2;
        if (!(ratio > -1)) {
            throw new IllegalArgumentException("no conic runs through front, canines and molars of these measures");
        }
        return new ConicArch(m.molarWidth(), m.molarDepth(), (1 - ratio) / (1 + ratio));
    }

    @Override
    public String name() {
        if (weight == 1) {
            return "parabola";
        }
        if (weight == 0) {
            return "half ellipse";
        }
        return weight > 1 ? "hyperbola" : "arc of an ellipse";
    }

    @Override
    public Point at(double u) {
        double over = (1 + weight) * (1 - u * u);
        double den = under(u);
        return new Point(width * u / den, depth * over / den);
    }

    @Override
    public Point derivative(double u) {
        double den = under(u);
        double slope = 2 * u * (1 - weight);
        double over = (1 + weight) * (1 - u * u);
        return new Point(
                width * (den - u * slope) / (den * den),
                depth * (-2 * u * (1 + weight) * den - over * slope) / (den * den));
    }

    @Override
    public ConicArch reshaped(double newWidth, double newDepth) {
        return new ConicArch(newWidth, newDepth, weight);
    }

    private double under(double u) {
        return 1 + weight + u * u * (1 - weight);
    }
}
