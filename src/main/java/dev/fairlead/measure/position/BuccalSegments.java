package dev.fairlead.measure.position;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.Point;
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

    /** Straight distance from lateral to molar, mm. */
    public Sides chord() {
        return new Sides(
                lateralPoint(true).distance(molarPoint(true)),
                lateralPoint(false).distance(molarPoint(false)));
    }

    /** Distance from lateral to molar along the arch, mm. */
    public Sides along() {
        return molar.minus(lateral);
    }

    /**
     * Forward movement of the lateral's distal point, mm, after which the straight distance to the molar is the needed
     * room, mm; negative where there is room to spare. The incisors move as a block, straight forward.
     */
    public Sides advancementByChord(Sides needed) {
        return new Sides(byChord(true, needed.left()), byChord(false, needed.right()));
    }

    /**
     * Forward movement of the front, mm, after which the distance along the deepened arch from lateral to molar is the
     * needed room, mm; negative where there is room to spare. The molars stay, the incisors keep their share of arc.
     */
    public Sides advancementAlongArch(Sides needed) {
        return new Sides(alongArch(true, needed.left()), alongArch(false, needed.right()));
    }

    /** The rule of thumb: each mm of advancement gives each side 1 mm (2 mm in all), whatever the arch. */
    public Sides advancementByRule(Sides needed) {
        return needed.minus(along());
    }

    /** Room gained on each side by this advance of the block, straight distance, mm. */
    public Sides gainByChord(double advance) {
        Point forward = new Point(0, advance);
        return new Sides(
                        lateralPoint(true).plus(forward).distance(molarPoint(true)),
                        lateralPoint(false).plus(forward).distance(molarPoint(false)))
                .minus(chord());
    }

    /** Room gained on each side by this advance of the front, along the arch, mm. */
    public Sides gainAlongArch(double advance) {
        return new Sides(alongAfter(true, advance), alongAfter(false, advance)).minus(along());
    }

    private double byChord(boolean left, double needed) {
        Point across = molarPoint(left).minus(lateralPoint(left));
        double side = Math.abs(across.x());
        if (!(needed >= side)) {
            throw new IllegalArgumentException("a room of " + needed + " mm is less than the " + side
                    + " mm by which the molar stands further out than the lateral incisor");
        }
        return Math.sqrt((needed - side) * (needed + side)) + across.y();
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

    private Point lateralPoint(boolean left) {
        return arch.atArcLength(left ? lateral.left() : -lateral.right());
    }

    private Point molarPoint(boolean left) {
        return arch.atArcLength(left ? molar.left() : -molar.right());
    }
}
