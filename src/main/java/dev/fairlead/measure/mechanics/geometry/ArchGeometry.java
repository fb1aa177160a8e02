package dev.fairlead.measure.mechanics.geometry;

import java.util.OptionalDouble;

/**
 * Where the wire has to go: arch form, tubes and brackets.
 *
 * @param curve arch form between the mesial ends of the two tubes; the tubes lie parallel to the y axis
 * @param tubeLength length of each molar tube, mm
 * @param central arc length from midline to central incisor bracket, mm
 * @param lateral arc length from midline to lateral incisor bracket, mm
 * @param bracketLevel height of the brackets against the tubes, mm, occlusal positive; empty: the level of the closed
 *     folds' third legs
 */
public record ArchGeometry(
        WireCurve curve, double tubeLength, double central, double lateral, OptionalDouble bracketLevel) {

    public ArchGeometry {
        Require.positive("tube length", tubeLength);
        Require.positive("arc length to the central incisor bracket", central);
        if (!(lateral > central) || !(lateral < Math.min(curve.rightLength(), curve.leftLength()))) {
            throw new IllegalArgumentException(
                    "the lateral incisor bracket must lie between the central one and the tube: " + lateral);
        }
    }

    /** Brackets at the level of the closed folds' third legs. */
    public ArchGeometry(WireCurve curve, double tubeLength, double central, double lateral) {
        this(curve, tubeLength, central, lateral, OptionalDouble.empty());
    }
}
