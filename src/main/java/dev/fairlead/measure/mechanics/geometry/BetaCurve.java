package dev.fairlead.measure.mechanics.geometry;

import java.util.Arrays;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;

/**
 * Arch form y = 3.0314 D (x/W + 1/2)^0.8 (1/2 - x/W)^0.8 of Braun, Hnat, Fender and Legan, Angle Orthodontist 68 (1998)
 * 29.
 *
 * <p>The paper takes width and depth at the second molars; here they are taken at the mesial ends of the first molars'
 * tubes, a convention of this model.
 */
public final class BetaCurve implements WireCurve {
    private static final double FACTOR = 3.0314;
    private static final int PIECES = 240;
    private static final GaussIntegrator GAUSS = new GaussIntegrator(new LegendreRuleFactory().getRule(6));

    private final double width;
    private final double height;
    private final double[] parameter = new double[PIECES + 1];
    private final double[] fromTube = new double[PIECES + 1];
    private final double[] speed = new double[PIECES + 1];

    /**
     * @param width between the tubes' mesial ends, mm
     * @param depth from the line through them to the front of the arch, mm
     */
    public BetaCurve(double width, double depth) {
        Require.positive("arch width", width);
        Require.positive("arch depth", depth);
        this.width = width;
        this.height = FACTOR * Math.pow(0.25, 0.8) * depth;
        // y = height sin p keeps both ends regular enough: at the tube y grows with arc length, at the midline x does
        for (int i = 0; i <= PIECES; i++) {
            double t = (double) i / PIECES;
            parameter[i] = Math.PI / 2 * t * t;
            speed[i] = speed(parameter[i]);
            if (i > 0) {
                double mid = (parameter[i] + parameter[i - 1]) / 2;
                double half = (parameter[i] - parameter[i - 1]) / 2;
                fromTube[i] = fromTube[i - 1] + half * GAUSS.integrate(z -> speed(mid + half * z));
            }
        }
    }

    /** 1 - (2x/W)² at a parameter is sin(p)^1.25; this is 2|x|/W, without cancellation at the midline. */
    private static double halfWidths(double p) {
        double c = Math.cos(p);
        return Math.sqrt(-Math.expm1(0.625 * Math.log1p(-c * c)));
    }

    private double speed(double p) {
        double dy = height * Math.cos(p);
        double x = halfWidths(p);
        // dx/dp tends to W/2 sqrt(0.625) at the midline
        double dx = x < 1e-9
                ? width / 2 * Math.sqrt(0.625)
                : width / 2 * 0.625 * Math.pow(Math.sin(p), 0.25) * Math.cos(p) / x;
        return Math.hypot(dx, dy);
    }

    private double parameterAt(double arcLength) {
        double s = Math.min(Math.max(rightLength() - Math.abs(arcLength), 0), rightLength());
        int i = Arrays.binarySearch(fromTube, s);
        if (i >= 0) {
            return parameter[i];
        }
        int j = -i - 2;
        double h = fromTube[j + 1] - fromTube[j];
        double t = (s - fromTube[j]) / h;
        double a = parameter[j];
        double b = parameter[j + 1];
        double da = h / speed[j];
        double db = h / speed[j + 1];
        return a + t * (da + t * (3 * (b - a) - 2 * da - db + t * (da + db - 2 * (b - a))));
    }

    @Override
    public double rightLength() {
        return fromTube[PIECES];
    }

    @Override
    public double leftLength() {
        return fromTube[PIECES];
    }

    @Override
    public double x(double arcLength) {
        return Math.copySign(width / 2 * halfWidths(parameterAt(arcLength)), arcLength);
    }

    @Override
    public double y(double arcLength) {
        return height * Math.sin(parameterAt(arcLength));
    }

    @Override
    public String toString() {
        return "BetaArch[width=" + width + " mm, perimeter=" + perimeter() + " mm]";
    }
}
