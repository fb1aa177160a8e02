package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Landmark;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import dev.fairlead.model.Visit;
import java.util.List;

/** Left and right that were probably exchanged: two pairs of values that fit far better crosswise. */
public final class SideSwaps {
    /** In all, in mm, by which the crosswise reading has to fit better: ten times the error of one segment reading. */
    private static final double BETTER = 3;

    private static final String SLIP = "left and right swapped";
    private static final String MEND = "left and right are the patient's own; look which side is which";

    private SideSwaps() {}

    public static void check(Case c, CrossChecks to) {
        space(c, to);
        secondMolars(c, to);
        Measured left = c.space().left();
        Measured right = c.space().right();
        for (int i = 0; i < c.visits().size(); i++) {
            Visit v = c.visits().get(i);
            if (crosswise(v.left().space(), v.right().space(), left, right)) {
                to.doubt(
                        "/visits/" + i + "/left/space",
                        "spaces that follow from those before",
                        spaces(v.left().space(), v.right().space()),
                        SLIP,
                        MEND);
            }
            activated(v, "/visits/" + i, to);
            if (v.left().space().known() && v.right().space().known()) {
                left = v.left().space();
                right = v.right().space();
            }
        }
        if (crosswise(c.holding().spaceLeft(), c.holding().spaceRight(), left, right)) {
            to.doubt(
                    "/holding/spaceLeft",
                    "spaces that follow from those before",
                    spaces(c.holding().spaceLeft(), c.holding().spaceRight()),
                    SLIP,
                    MEND);
        }
        if (mirrored(c.landmarks())) {
            to.doubt(
                    "/landmarks",
                    "x that grows to the patient's left",
                    "x of the left teeth below that of the right teeth",
                    "a mirrored model or photograph",
                    MEND);
        }
        Sides more = c.plan().moreOn().value().orElse(Sides.BOTH);
        Measured a = c.plan().advanceLeft();
        Measured b = c.plan().advanceRight();
        if (a.known()
                && b.known()
                && (more == Sides.LEFT && a.value() < b.value() || more == Sides.RIGHT && b.value() < a.value())) {
            to.doubt("/plan/moreOn", "the side on which more advancement is planned", more.word(), SLIP, MEND);
        }
    }

    /** True when the left teeth lie to the right of the right teeth. */
    public static boolean mirrored(List<Landmark> landmarks) {
        double[] sum = new double[2];
        int[] n = new int[2];
        for (Landmark l : landmarks) {
            if (l.tooth().known() && l.x().known()) {
                int side = l.tooth().get().side().ordinal();
                sum[side] += l.x().value();
                n[side]++;
            }
        }
        return n[0] > 0
                && n[1] > 0
                && sum[Side.LEFT.ordinal()] / n[Side.LEFT.ordinal()]
                        < sum[Side.RIGHT.ordinal()] / n[Side.RIGHT.ordinal()] - BETTER;
    }

    private static boolean crosswise(Measured left, Measured right, Measured thenLeft, Measured thenRight) {
        if (!left.known() || !right.known() || !thenLeft.known() || !thenRight.known()) {
            return false;
        }
        double straight = Math.abs(left.value() - thenLeft.value()) + Math.abs(right.value() - thenRight.value());
        double crossed = Math.abs(left.value() - thenRight.value()) + Math.abs(right.value() - thenLeft.value());
        return straight - crossed >= BETTER;
    }

    private static String spaces(Measured left, Measured right) {
        return "left " + Slips.number(left.value()) + " mm, right " + Slips.number(right.value()) + " mm";
    }

    private static void space(Case c, CrossChecks to) {
        Measured left = c.space().left();
        Measured right = c.space().right();
        if (!left.known() || !right.known()) {
            return;
        }
        int standLeft = standing(c, Side.LEFT);
        int standRight = standing(c, Side.RIGHT);
        double more = left.value() - right.value();
        boolean states = standLeft >= 0
                && standRight >= 0
                && (standLeft < standRight && more > BETTER || standLeft > standRight && -more > BETTER);
        if (states || crosswise(left, right, widths(c, Side.LEFT), widths(c, Side.RIGHT))) {
            to.doubt("/space/left", "more space on the side with more or wider teeth", spaces(left, right), SLIP, MEND);
        }
    }

    /** How many of canine and premolar places hold a tooth, or -1 when one is not known. */
    private static int standing(Case c, Side side) {
        int n = 0;
        for (int position = 3; position <= 5; position++) {
            var state = c.tooth(permanent(side, position)).state();
            if (!state.known()) {
                return -1;
            }
            n += state.is(ToothState.ERUPTED) || state.is(ToothState.PRIMARY_PRESENT) ? 1 : 0;
        }
        return n;
    }

    /** Widths of the teeth that stand in one buccal segment, unknown unless all three stand and were measured. */
    private static Measured widths(Case c, Side side) {
        Measured sum = Measured.exact(0, dev.fairlead.model.Unit.MM);
        for (int position = 3; position <= 5; position++) {
            Tooth tooth = permanent(side, position);
            ToothRecord r = c.tooth(tooth);
            Measured width = r.state().is(ToothState.ERUPTED)
                    ? r.width()
                    : r.state().is(ToothState.PRIMARY_PRESENT)
                            ? c.tooth(Tooth.of(tooth.number() + 40)).width()
                            : Measured.unknown("/teeth/" + tooth);
            sum = sum.plus(width);
        }
        return sum;
    }

    private static Tooth permanent(Side side, int position) {
        return Tooth.of((side == Side.LEFT ? 30 : 40) + position);
    }

    private static void secondMolars(Case c, CrossChecks to) {
        boolean lost37 = c.tooth(Tooth.of(37)).state().is(ToothState.MISSING);
        boolean lost47 = c.tooth(Tooth.of(47)).state().is(ToothState.MISSING);
        Measured left = c.films().secondMolarAngleLeft();
        Measured right = c.films().secondMolarAngleRight();
        if (lost37 && !lost47 && left.known() && !right.known()) {
            to.doubt(
                    "/films/secondMolarAngleLeft",
                    "the angle of a second molar that is there",
                    "an angle for 37, which is missing, and none for 47",
                    SLIP,
                    MEND);
        }
        if (lost47 && !lost37 && right.known() && !left.known()) {
            to.doubt(
                    "/films/secondMolarAngleRight",
                    "the angle of a second molar that is there",
                    "an angle for 47, which is missing, and none for 37",
                    SLIP,
                    MEND);
        }
    }

    private static void activated(Visit v, String pointer, CrossChecks to) {
        Measured left = v.left().gapOpened();
        Measured right = v.right().gapOpened();
        boolean leftOpened = left.known() && left.value() > 0;
        boolean rightOpened = right.known() && right.value() > 0;
        if (v.activated().is(Sides.LEFT) && rightOpened && !leftOpened
                || v.activated().is(Sides.RIGHT) && leftOpened && !rightOpened) {
            to.doubt(
                    pointer + "/activated",
                    "the side whose fold was opened",
                    v.activated().get().word(),
                    SLIP,
                    MEND);
        }
    }
}
