package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.geometry.Vector;
import java.util.List;

/**
 * What the tied-in wire does.
 *
 * @param fraction share of the stand-off still there: 1 as tied in, less after the incisors have moved
 * @param forward total force of the wire on the incisors, N, labial positive
 * @param vertical total vertical force on the incisors, N, occlusal positive, so that minus intrudes. Its sign depends
 *     on the heights of tube and brackets; not to be shown unless both were measured
 * @param brackets labial force at each bracket, N: right lateral, right central, left central, left lateral. Follows
 *     ligature slack too fine to know, so only the total is a result
 * @param right what the right molar and fold get
 * @param left what the left molar and fold get
 * @param peak highest stress
 * @param energy elastic energy in the wire, N mm
 * @param iterations solutions of the stiffness matrix
 * @param elements in the model
 */
public record Solution(
        double fraction,
        double forward,
        double vertical,
        List<Double> brackets,
        Side right,
        Side left,
        Peak peak,
        double energy,
        int iterations,
        int elements)
        implements Result {

    /**
     * One molar and the fold in front of it.
     *
     * @param force of the wire on the molar tube, N
     * @param moment of the wire on the molar tube about its mesial end, N mm
     * @param foldSwing farthest any point of the fold moves towards the cheek from its passive place, mm
     * @param runSwing the same for the buccal run, mm
     */
    public record Side(Vector force, Vector moment, double foldSwing, double runSwing) {}

    /**
     * Highest stress, nominal and on the inner side of the bends.
     *
     * @param bending 32 M / (pi d³), MPa
     * @param bendingAt part of the wire where it is
     * @param bendingOnRight true on the patient's right
     * @param inner highest bending stress with that of the bends taken on their inner side, MPa
     * @param vonMises axial force, bending and torsion together, sqrt((sigma + N/A)² + 3 tau²), MPa
     */
    public record Peak(double bending, Part bendingAt, boolean bendingOnRight, double inner, double vonMises) {}

    /** Stretch of the wire an element belongs to. */
    public enum Part {
        /** Tail inside the molar tube. */
        TUBE,
        /** Straight wire between tube and first bend. */
        GAP,
        /** First bend, at the tube. */
        BEND_1,
        /** Leg that runs back distally below the tube. */
        LEG_2,
        /** Second bend, distal and lowest. */
        BEND_2,
        /** Leg that runs forward to the buccal run. */
        LEG_3,
        /** Buccal run, from the fold to the lateral incisor. */
        RUN,
        /** From lateral to lateral incisor. */
        FRONT
    }
}
