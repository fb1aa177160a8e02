package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Room and need of the lower arch before treatment.
 *
 * @param incisors sum of the four lower permanent incisors (LI), mm
 * @param incisorShortage LI less the incisor segment, mm
 * @param required LI and both sides' need, mm
 * @param available the three segments, or the stated perimeter where a segment is missing, mm
 * @param totalShortage required less available, mm; negative when there is room to spare
 * @param irregularity sum of the contact displacements, mm
 * @param anterior ratio of the six lower to the six upper front teeth
 */
public record SpaceResult(
        Measured incisors,
        SideSpace left,
        SideSpace right,
        Measured incisorShortage,
        Measured required,
        Measured available,
        Measured totalShortage,
        Measured irregularity,
        ToothSizeRatio anterior) {
    public SideSpace side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** The larger of the two sides' shortages, mm. */
    public Measured largestShortage() {
        return left.shortage().max(right.shortage());
    }
}
