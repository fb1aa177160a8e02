package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.List;

/**
 * What bending a wire needs to follow an arch, compared at equal arc lengths from the midline mark, mm: change of the
 * width at the canines (positive: widen), of the width at the posterior end (positive: widen), and of the depth of the
 * front from the canines forward (positive: deepen).
 */
public record Reshaping(double atCanines, double atMolars, double ofFront) {
    private static final int CANINE = 3;
    /** Below this much a bend cannot be told from none: common practice, no source, mm. */
    public static final double NO_BEND = 0.25;

    /** The whole change from the wire's shape to the arch's. */
    public static Reshaping full(ArchCurve arch, ArchCurve wire, ArchPlaces places) {
        double canine = places.position(CANINE)
                .orElseGet(() -> ArchPlaces.average(arch).position(CANINE).orElseThrow());
        ArcRuler a = arch.ruler();
        ArcRuler w = wire.ruler();
        double reach = Math.min(Math.min(a.end(), -a.start()), Math.min(w.end(), -w.start()));
        double front = Math.min(canine, reach);
        return new Reshaping(
                width(arch, a, front) - width(wire, w, front),
                width(arch, a, reach) - width(wire, w, reach),
                depth(arch, a, front) - depth(wire, w, front));
    }

    private static double width(ArchCurve curve, ArcRuler ruler, double arc) {
        return curve.at(ruler.parameterAt(arc)).distance(curve.at(ruler.parameterAt(-arc)));
    }

    private static double depth(ArchCurve curve, ArcRuler ruler, double arc) {
        double behind = (curve.at(ruler.parameterAt(arc)).y()
                        + curve.at(ruler.parameterAt(-arc)).y())
                / 2;
        return curve.at(curve.midline()).y() - behind;
    }

    /**
     * For example "widen at the canines by 1.2 mm, narrow at the molars by 3.0 mm"; "leave as it is" when nothing is
     * worth a bend.
     */
    public String words() {
        List<String> parts = new ArrayList<>();
        add(parts, atCanines, "widen", "narrow", " at the canines");
        add(parts, atMolars, "widen", "narrow", " at the molars");
        add(parts, ofFront, "deepen", "flatten", " the front");
        return parts.isEmpty() ? "leave as it is" : String.join(", ", parts);
    }

    private static void add(List<String> parts, double change, String more, String less, String what) {
        if (Math.abs(change) >= NO_BEND) {
            parts.add((change > 0 ? more : less) + what + " by " + Lengths.mm(Math.abs(change)));
        }
    }
}
