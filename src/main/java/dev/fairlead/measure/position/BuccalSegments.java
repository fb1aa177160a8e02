package dev.fairlead.measure.position;

import dev.fairlead.measure.archform.ArchCurve;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The room for canine and premolars on each side of an arch, from the distal of the lateral incisor to the mesial of
 * the first molar; both places are given as arc lengths from the midline, mm, positive on either side.
 */
public record BuccalSegments(ArchCurve arch, Sides lateral, Sides molar) {
    // an arch is neither flattened to less than a fifth of its depth nor deepened to more than three times it
    private static final double SHALLOWEST = 0.2;
    private static final double DEEPEST = 3;

    public BuccalSegments {
        if (!(lateral.left() > 0
                && lateral.left() < molar.left()
                && lateral.right() > 0
                && lateral.right() < molar.right())) {
            throw new IllegalArgumentException(
                    "the lateral incisor ends between midline and molar: " + lateral + ", " + molar);
        }
    }

    /** Segments of an arch whose posterior ends are the mesial points of the first molars. */
    public static BuccalSegments ofWhole(ArchCurve arch, Sides lateral) {
        return new BuccalSegments(
                arch, lateral, new Sides(arch.ruler().end(), -arch.ruler().start()));
    }

    /** Distance from lateral to molar along the arch, mm. */
    public Sides along() {
        return molar.minus(lateral);
    }

    /**
     * Forward movement of the front, mm, after which the distance along the deepened arch from lateral to molar is the
     * needed room, mm; negative where there is room to spare. The molars stay, the incisors keep their share of arc.
     */
    public Sides advancementAlongArch(Sides needed) {
        return new Sides(alongArch(true, needed.left()), alongArch(false, needed.right()));
    }

    private double alongArch(boolean left, double needed) {
        double lowest = (SHALLOWEST - 1) * arch.depth();
        double highest = (DEEPEST - 1) * arch.depth();
        if (!(alongAfter(left, lowest) <= needed && needed <= alongAfter(left, highest))) {
            throw new IllegalArgumentException("no advancement of this arch gives a room of " + needed + " mm");
        }
        return new BrentSolver(1e-12, 1e-10).solve(200, a -> alongAfter(left, a) - needed, lowest, highest);
    }

    private double alongAfter(boolean left, double advance) {
        ArchCurve after = arch.reshaped(arch.width(), arch.depth() + advance);
        double molarAt = arch.ruler().parameterAt(left ? molar.left() : -molar.right());
        double toMolar = Math.abs(after.arcLength(after.midline(), molarAt));
        return toMolar - (left ? lateral.left() : lateral.right());
    }
}
