package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Unit;
import java.util.List;

/** What points on a panoramic film give: how far the second molar leans against the first; mesially is positive. */
final class MolarQuantities {
    private static final String NOTE =
            "Angles on a panoramic film are distorted by the way the head stood; 5° is an estimate.";

    private MolarQuantities() {}

    static List<Quantity> all() {
        return List.of(angle("Left", 36, 37), angle("Right", 46, 47));
    }

    private static Quantity angle(String side, int first, int second) {
        String c1 = "C" + first;
        String f1 = "F" + first;
        String c2 = "C" + second;
        String f2 = "F" + second;
        return new Quantity(
                "/films/secondMolarAngle" + side,
                "Axis of " + second + " to " + first,
                Unit.DEGREE,
                List.of(c1, f1, c2, f2),
                q -> {
                    double mesial = Math.signum(q.flat(c1).x() - q.flat(c2).x());
                    return lean(q, c2, f2, mesial) - lean(q, c1, f1, mesial);
                },
                5,
                NOTE);
    }

    private static double lean(Places q, String crown, String furcation, double mesial) {
        Point up = q.flat(crown).minus(q.flat(furcation));
        return Math.toDegrees(Math.atan2(mesial * up.x(), up.y()));
    }
}
