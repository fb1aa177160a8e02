package dev.fairlead.measure.archform;

/**
 * A wire of sixth degree laid over an arch with its midline mark on the midline and slid forward or back until it fits
 * best; carried on beyond its ends. Fast enough to be worked out for every case of a large audit, and able to tell what
 * a slightly different arch or wire would do.
 */
public final class Laying {
    private static final int SAMPLES = 65;
    private static final int SWEEPS = 60;
    private static final double SETTLED = 1e-8;

    /** Misfit in short: root mean square and largest distance at right angles to the wire, mm. */
    public record Misfit(double rms, double worst) {}

    private final double[] weight = new double[SAMPLES];
    private final double[] foot = new double[SAMPLES];
    private final double[] nx = new double[SAMPLES];
    private final double[] ny = new double[SAMPLES];
    private final double[] outside = new double[SAMPLES];
    private final double wireHalf;
    private double forward;
    private boolean settled;

    private Laying(double wireHalf) {
        this.wireHalf = wireHalf;
    }

    /** Lays the wire over the arch. */
    public static Laying of(ArchCurve arch, SixthDegreeArch wire) {
        Laying laying = new Laying(wire.width() / 2);
        laying.lay(arch, wire);
        return laying;
    }

    private static double parameter(int i) {
        return 2.0 * i / (SAMPLES - 1) - 1;
    }

    private void lay(ArchCurve arch, SixthDegreeArch wire) {
        double[] px = new double[SAMPLES];
        double[] py = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            double u = parameter(i);
            Point p = arch.at(u);
            px[i] = p.x();
            py[i] = p.y();
            foot[i] = p.x();
            // trapezoid rule over the length of the arch
            weight[i] = arch.speed(u) * (i == 0 || i == SAMPLES - 1 ? 0.5 : 1);
        }
        double depth = wire.depth();
        forward = arch.at(arch.midline()).y() - depth;
        for (int sweep = 0; sweep < SWEEPS && !settled; sweep++) {
            settled = sweep(wire, depth, px, py);
        }
    }

    /** One Newton step of every foot and one least-squares step of the slide; true when neither moved. */
    private boolean sweep(SixthDegreeArch wire, double depth, double[] px, double[] py) {
        double moved = 0;
        double over = 0;
        double under = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double x = foot[i];
            double slope = wire.slope(x);
            double dx = px[i] - x;
            double dy = py[i] - forward - depth + wire.fall(x);
            double square = 1 + slope * slope;
            double curved = square - dy * wire.bend(x);
            double step = (dx + dy * slope) / (curved > 0.2 * square ? curved : square);
            foot[i] = x + step;
            moved = Math.max(moved, Math.abs(step));
            double length = Math.sqrt(square);
            nx[i] = -slope / length;
            ny[i] = 1 / length;
            outside[i] = nx[i] * dx + ny[i] * dy;
            over += weight[i] * outside[i] * ny[i];
            under += weight[i] * ny[i] * ny[i];
        }
        double slide = over / under;
        if (moved < SETTLED && Math.abs(slide) < SETTLED) {
            return true;
        }
        forward += slide;
        return false;
    }

    /** False when no best place was found, so that nothing is to be read from it. */
    public boolean settled() {
        return settled;
    }

    public Misfit misfit() {
        double squares = 0;
        double all = 0;
        for (int i = 0; i < SAMPLES; i++) {
            squares += weight[i] * outside[i] * outside[i];
            all += weight[i];
        }
        return new Misfit(Math.sqrt(squares / all), Math.abs(outside[worst()]));
    }

    /** Parameter on the arch where the largest distance is. */
    public double worstAt() {
        return parameter(worst());
    }

    /** The largest distance, mm, positive where the wire lies outside (labially, buccally) of the arch. */
    public double worstOutside() {
        return -outside[worst()];
    }

    private int worst() {
        int worst = 0;
        for (int i = 1; i < SAMPLES; i++) {
            worst = Math.abs(outside[i]) > Math.abs(outside[worst]) ? i : worst;
        }
        return worst;
    }

    /**
     * To first order, the misfit of another arch and wire that differ little from these: the feet stay, the slide is
     * found anew.
     */
    public Misfit near(ArchCurve arch, SixthDegreeArch wire) {
        double[] d = new double[SAMPLES];
        double over = 0;
        double under = 0;
        double stretch = wire.width() / 2 / wireHalf;
        for (int i = 0; i < SAMPLES; i++) {
            Point p = arch.at(parameter(i));
            double x = foot[i] * stretch;
            // from the height of the wire's front: where that lies is the slide's
            d[i] = nx[i] * (p.x() - x) + ny[i] * (p.y() + wire.fall(x));
            over += weight[i] * d[i] * ny[i];
            under += weight[i] * ny[i] * ny[i];
        }
        double slide = over / under;
        double squares = 0;
        double all = 0;
        double worst = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double left = d[i] - slide * ny[i];
            squares += weight[i] * left * left;
            all += weight[i];
            worst = Math.max(worst, Math.abs(left));
        }
        return new Misfit(Math.sqrt(squares / all), worst);
    }

    /** The same in words and places of teeth, with what the wire lacks in length. */
    public WireMisfit onTeeth(ArchCurve arch, SixthDegreeArch wire, ArchPlaces places) {
        ArcRuler ruler = arch.ruler();
        ArcRuler wireRuler = wire.ruler();
        double where = ruler.fromMidline(worstAt());
        double shortBy = Math.max(0, Math.max(ruler.end() - wireRuler.end(), wireRuler.start() - ruler.start()));
        return new WireMisfit(
                misfit().rms(),
                new WireMisfit.Worst(
                        worstOutside(), where, places.nearest(where).tooth()),
                forward,
                shortBy);
    }
}
