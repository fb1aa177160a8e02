package dev.fairlead.report.picture;

import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The arch as a line to lay teeth along: past its ends it runs straight on. Lengths and places in mm, positive to the
 * patient's left.
 */
final class ArchLine {
    private static final int CORNERS = 20;
    /** Between an ellipse (2) and a box: crowns seen from above. */
    private static final double ROUNDNESS = 3.2;

    private final ArchCurve curve;
    private final ArcRuler ruler;

    ArchLine(ArchCurve curve) {
        this.curve = curve;
        this.ruler = curve.ruler();
    }

    /** The point so far along from the midline and so far outwards. */
    Point at(double along, double outwards) {
        double on = Math.max(ruler.start() * 0.999, Math.min(ruler.end() * 0.999, along));
        double u = ruler.parameterAt(on);
        return curve.at(u)
                .plus(curve.tangent(u).times(along - on))
                .plus(curve.normal(u).times(outwards));
    }

    /** The outline of a crown between two places along the arch; {@code thick} from inside to outside, mm. */
    List<Point> crown(double from, double to, double thick) {
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            double angle = 2 * Math.PI * i / CORNERS;
            outline.add(
                    at((from + to) / 2 + (to - from) / 2 * round(Math.cos(angle)), thick / 2 * round(Math.sin(angle))));
        }
        return outline;
    }

    /** A stripe that follows the arch between two places along it. */
    List<Point> stripe(double from, double to, double inside, double outside) {
        List<Point> outline = new ArrayList<>();
        int steps = Math.max(2, (int) Math.ceil(Math.abs(to - from)));
        for (int i = 0; i <= steps; i++) {
            outline.add(at(from + (to - from) * i / steps, outside));
        }
        for (int i = steps; i >= 0; i--) {
            outline.add(at(from + (to - from) * i / steps, inside));
        }
        return outline;
    }

    private static double round(double x) {
        return Math.copySign(Math.pow(Math.abs(x), 2 / ROUNDNESS), x);
    }
}
