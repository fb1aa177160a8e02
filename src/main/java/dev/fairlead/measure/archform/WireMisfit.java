package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a wire lies from the patient's arch when its midline mark is on the midline and it is slid forward or back
 * until it fits best. Distances at right angles to the wire, mm, positive where the wire lies outside (labially,
 * buccally) of the arch; forward is the slide, mm; shortBy is what the wire lacks at the shorter end, mm, 0 when it
 * reaches both posterior ends.
 */
public record WireMisfit(double rms, Worst worst, double forward, double shortBy) {
    private static final int SAMPLES = 81;
    private static final int SLIDES = 30;

    /** The largest distance, where along the arch it is, mm from the midline, and the tooth next to it. */
    public record Worst(double outside, double fromMidline, int tooth) {}

    /** Lays the wire over the arch. */
    public static WireMisfit of(ArchCurve arch, ArchCurve wire, ArchPlaces places) {
        ArcRuler ruler = arch.ruler();
        ArcRuler wireRuler = wire.ruler();
        List<Point> points = arch.points(SAMPLES);
        Projector projector = new Projector(wire);
        double forward = arch.at(arch.midline()).y() - wire.at(wire.midline()).y();
        List<Projector.Foot> feet = feet(projector, points, forward);
        for (int i = 0; i < SLIDES; i++) {
            double step = step(projector, feet);
            forward += step;
            feet = feet(projector, points, forward);
            if (Math.abs(step) < 1e-7) {
                break;
            }
        }
        double squares = 0;
        int worst = 0;
        for (int i = 0; i < SAMPLES; i++) {
            squares += feet.get(i).outside() * feet.get(i).outside();
            worst = Math.abs(feet.get(i).outside()) > Math.abs(feet.get(worst).outside()) ? i : worst;
        }
        double where = ruler.start() + ruler.perimeter() * worst / (SAMPLES - 1);
        double shortBy = Math.max(0, Math.max(ruler.end() - wireRuler.end(), wireRuler.start() - ruler.start()));
        return new WireMisfit(
                Math.sqrt(squares / SAMPLES),
                new Worst(
                        -feet.get(worst).outside(), where, places.nearest(where).tooth()),
                forward,
                shortBy);
    }

    private static List<Projector.Foot> feet(Projector projector, List<Point> points, double forward) {
        List<Projector.Foot> feet = new ArrayList<>(points.size());
        for (Point p : points) {
            feet.add(projector.nearest(new Point(p.x(), p.y() - forward)));
        }
        return feet;
    }

    // least-squares slide: moving the wire forward by s takes s n_y off each distance
    private static double step(Projector projector, List<Projector.Foot> feet) {
        double over = 0;
        double under = 0;
        for (Projector.Foot foot : feet) {
            double ny = projector.curve().normal(foot.u()).y();
            over += foot.outside() * ny;
            under += ny * ny;
        }
        return over / under;
    }

    /** True when both the RMS and the worst distance are at or below their limits, mm, and the wire is long enough. */
    public boolean within(double rmsLimit, double worstLimit) {
        return rms <= rmsLimit && Math.abs(worst.outside()) <= worstLimit && shortBy == 0;
    }

    /** For example "0.8 mm outside the arch near the lower left canine (33)". */
    public String words() {
        return Lengths.mm(Math.abs(worst.outside())) + (worst.outside() < 0 ? " inside" : " outside")
                + " the arch near the " + Teeth.words(worst.tooth());
    }
}
