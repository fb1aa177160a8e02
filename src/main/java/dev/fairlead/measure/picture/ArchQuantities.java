package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What points on a lower arch give: widths in space, everything else as seen from above the occlusal plane (contact
 * displacement after Little 1975, Am J Orthod 68:554, height ignored).
 */
final class ArchQuantities {
    /** Assumed errors of one placing, mm: to start with, from memory; a second placing replaces them. */
    static final double WIDTH = 0.15;

    static final double CONTACT = 0.35;
    static final double ARCH = 0.3;

    private static final int[] TEETH = {46, 45, 44, 43, 42, 41, 31, 32, 33, 34, 35, 36, 85, 84, 83, 73, 74, 75};
    private static final String NO_NOTE = "";

    private ArchQuantities() {}

    /** All that an arch can give; of the canines, the ones that were placed. */
    static List<Quantity> of(Places p) {
        List<Quantity> all = new ArrayList<>();
        for (int n : TEETH) {
            String m = "M" + n;
            String d = "D" + n;
            boolean front = n >= 41 && n <= 43 || n >= 31 && n <= 33;
            // of a first molar the mesial contact is wanted for the segments alone
            if (front || p.has(d)) {
                all.add(new Quantity(
                        "/teeth/" + n + "/width",
                        "Width of " + n,
                        Unit.MM,
                        List.of(m, d),
                        q -> q.distance(m, d),
                        WIDTH,
                        NO_NOTE));
            }
        }
        contact(all, "43-42", "M43", "D42");
        contact(all, "42-41", "M42", "D41");
        contact(all, "41-31", "M41", "M31");
        contact(all, "31-32", "D31", "M32");
        contact(all, "32-33", "D32", "M33");
        all.add(straight("/space/left", "Segment left, 32 to 36", "D32", "M36"));
        all.add(straight("/space/right", "Segment right, 42 to 46", "D42", "M46"));
        all.add(new Quantity(
                "/space/incisors",
                "Segment of the incisors along the curve",
                Unit.MM,
                List.of("D42", "I", "D32"),
                q -> arc(q.flat("D42"), q.flat("I"), q.flat("D32")),
                ARCH,
                NO_NOTE));
        perimeter(all, canine(p, 4), canine(p, 3));
        all.add(straight("/arch/molarWidth", "Width at the molar tubes", "T46", "T36"));
        all.add(depth("/arch/molarDepth", "Depth from the molar tubes", "T46", "T36"));
        String right = "L" + canine(p, 4);
        String left = "L" + canine(p, 3);
        all.add(straight("/arch/canineWidth", "Width between the canines", right, left));
        all.add(depth("/arch/canineDepth", "Depth from the canines", right, left));
        if (p.has("E43") || p.has("E33")) {
            all.add(new Quantity(
                    "",
                    "Width between the canine cusp tips",
                    Unit.MM,
                    List.of("E43", "E33"),
                    q -> q.distance("E43", "E33"),
                    ARCH,
                    "The case keeps the width between the labial points."));
        }
        bracket(all, 41, List.of("B41", "B31", "I"), q -> fromMidline(q, "B41"));
        bracket(all, 31, List.of("B41", "B31", "I"), q -> fromMidline(q, "B31"));
        bracket(all, 42, List.of("B42", "B41", "B31", "I"), q -> q.across("B42", "B41") + fromMidline(q, "B41"));
        bracket(all, 32, List.of("B32", "B41", "B31", "I"), q -> q.across("B32", "B31") + fromMidline(q, "B31"));
        return all;
    }

    /** 43 or 83, 33 or 73: the permanent canine unless only the primary one was placed. */
    private static int canine(Places p, int quadrant) {
        int permanent = quadrant * 10 + 3;
        int primary = permanent + 40;
        boolean there = p.has("D" + permanent) || p.has("L" + permanent) || p.has("M" + permanent);
        return !there && (p.has("D" + primary) || p.has("L" + primary)) ? primary : permanent;
    }

    private static void contact(List<Quantity> all, String key, String a, String b) {
        all.add(new Quantity(
                "/contacts/" + key,
                "Contact " + key + ", displacement",
                Unit.MM,
                List.of(a, b),
                q -> q.across(a, b),
                CONTACT,
                NO_NOTE));
    }

    private static Quantity straight(String pointer, String title, String a, String b) {
        return new Quantity(pointer, title, Unit.MM, List.of(a, b), q -> q.across(a, b), ARCH, NO_NOTE);
    }

    private static Quantity depth(String pointer, String title, String right, String left) {
        return new Quantity(
                pointer,
                title,
                Unit.MM,
                List.of(right, left, "I"),
                q -> Math.abs(offLine(q.flat("I"), q.flat(right), q.flat(left))),
                ARCH,
                NO_NOTE);
    }

    private static void bracket(List<Quantity> all, int tooth, List<String> needs, ToDoubleFunction<Places> f) {
        all.add(new Quantity(
                "/hardware/brackets/" + tooth + "/fromMidline",
                "Bracket of " + tooth + " from the midline",
                Unit.MM,
                needs,
                f,
                ARCH,
                NO_NOTE));
    }

    /** Along the line between the two middle brackets, from the foot of the midpoint on it. */
    private static double fromMidline(Places q, String bracket) {
        Point b41 = q.flat("B41");
        Point along = q.flat("B31").minus(b41).unit();
        double foot = q.flat("I").minus(b41).dot(along);
        return Math.abs(q.flat(bracket).minus(b41).dot(along) - foot);
    }

    /**
     * From molar to molar by way of the canines' distal contacts, the middle of the contacts beside the laterals and,
     * along a curve, the midpoint at which the incisors are to stand.
     */
    private static void perimeter(List<Quantity> all, int right, int left) {
        String dr = "D" + right;
        String mr = "M" + right;
        String dl = "D" + left;
        String ml = "M" + left;
        all.add(new Quantity(
                "/space/perimeter",
                "Whole arch, 46 to 36",
                Unit.MM,
                List.of("M46", dr, mr, "D42", "I", "D32", ml, dl, "M36"),
                q -> {
                    Point r = middle(q.flat(mr), q.flat("D42"));
                    Point l = middle(q.flat(ml), q.flat("D32"));
                    return q.across("M46", dr)
                            + q.flat(dr).distance(r)
                            + arc(r, q.flat("I"), l)
                            + l.distance(q.flat(dl))
                            + q.across(dl, "M36");
                },
                ARCH * Math.sqrt(2),
                NO_NOTE));
    }

    private static Point middle(Point a, Point b) {
        return a.plus(b).times(0.5);
    }

    /** Signed distance of a point from the line through two others, mm. */
    private static double offLine(Point p, Point a, Point b) {
        Point along = b.minus(a).unit();
        return p.minus(a).dot(along.quarterTurn());
    }

    /** Length of the circular arc from a over b to c, mm: radius abc/4S, each part 2R asin(chord/2R). */
    static double arc(Point a, Point b, Point c) {
        double ab = a.distance(b);
        double bc = b.distance(c);
        double ac = a.distance(c);
        double doubleArea = Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
        if (doubleArea == 0) {
            return ab + bc;
        }
        double diameter = ab * bc * ac / doubleArea;
        return diameter * (Math.asin(Math.min(1, ab / diameter)) + Math.asin(Math.min(1, bc / diameter)));
    }
}
