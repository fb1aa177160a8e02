package dev.fairlead.measure.position;

/**
 * What unequal opening of the two folds does to the front, as a rigid turn of the wire about the tubes, to first order
 * in the opening: openings of left and right fold, mm.
 */
public record SidedPlan(Sides open) {

    /**
     * Movement of the front: forward at the midline and at each lateral incisor, sideways (positive to the patient's
     * left), mm, and the turn of the front, degrees, positive when it turns to the left because the right side was
     * opened more.
     */
    public record Front(double midline, Sides laterals, double sideways, double yaw) {}

    /** Movement of a front at this depth between tubes this far apart, laterals this far from the midline, mm. */
    public Front front(double width, double depth, double lateral) {
        check(width, depth, lateral);
        double share = lateral / width;
        double turn = (open.right() - open.left()) / width;
        Sides laterals = new Sides(
                open.mean() + share * (open.left() - open.right()), open.mean() + share * (open.right() - open.left()));
        return new Front(open.mean(), laterals, turn * depth, Math.toDegrees(Math.atan(turn)));
    }

    /** The openings that advance the two laterals by these amounts, mm: the inverse of {@link #front}. */
    public static SidedPlan forLaterals(Sides advance, double width, double lateral) {
        check(width, 1, lateral);
        double half = (advance.left() - advance.right()) * width / (4 * lateral);
        return new SidedPlan(new Sides(advance.mean() + half, advance.mean() - half));
    }

    /** True when neither side would have to be closed: a fold can only be opened. */
    public boolean possible() {
        return open.left() >= 0 && open.right() >= 0;
    }

    private static void check(double width, double depth, double lateral) {
        if (!(width > 0 && depth > 0 && lateral > 0 && lateral < width / 2)) {
            throw new IllegalArgumentException(
                    "laterals at " + lateral + " mm do not lie between tubes " + width + " mm apart");
        }
    }
}
