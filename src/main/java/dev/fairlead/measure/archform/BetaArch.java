package dev.fairlead.measure.archform;

/**
 * Beta-function arch y = 3.0314 D (1/2 + x/W)^0.8 (1/2 - x/W)^0.8 (Braun, Hnat, Fender & Legan, Angle Orthod
 * 1998;68:29-36), with the constant taken as 2^1.6 so that y(0) is exactly D. W and D were published for the second
 * molars.
 */
public record BetaArch(double width, double depth) implements ArchCurve {
    private static final double EXPONENT = 1.6;

    public BetaArch {
        Lengths.positive(width, depth);
    }

    @Override
    public String name() {
        return "beta function";
    }

    // With x = W/2 sin t the curve is y = D cos(t)^1.6. The angle left to the end is (pi/2)(1-|u|)^2.5: with that power
    // x, y and the speed are smooth functions of 1-|u| up to the end, where the slope dy/dx is infinite.
    @Override
    public Point at(double u) {
        double left = angleLeft(u);
        return new Point(Math.signum(u) * width / 2 * Math.cos(left), depth * Math.pow(Math.sin(left), EXPONENT));
    }

    @Override
    public Point derivative(double u) {
        double left = angleLeft(u);
        double q = 1 - Math.abs(u);
        double rate = Math.PI / 2 * 2.5 * q * Math.sqrt(q);
        double sin = Math.sin(left);
        return new Point(
                width / 2 * sin * rate,
                -Math.signum(u) * EXPONENT * depth * Math.pow(sin, EXPONENT - 1) * Math.cos(left) * rate);
    }

    @Override
    public Point tangent(double u) {
        double left = angleLeft(u);
        return new Point(
                        width / 2 * Math.pow(Math.sin(left), 2 - EXPONENT),
                        -Math.signum(u) * EXPONENT * depth * Math.cos(left))
                .unit();
    }

    @Override
    public BetaArch reshaped(double newWidth, double newDepth) {
        return new BetaArch(newWidth, newDepth);
    }

    private static double angleLeft(double u) {
        double q = 1 - Math.abs(u);
        if (!(q >= 0)) {
            throw new IllegalArgumentException("a parameter lies between -1 and 1, not at " + u);
        }
        return Math.PI / 2 * q * q * Math.sqrt(q);
    }
}
