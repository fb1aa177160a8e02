package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.SideMarks;
import java.util.ArrayList;
import java.util.List;

/**
 * One small drawing for each step of bending a fold, in units of mm: side views are of the right fold from the cheek,
 * plan views face the child with the front below. Not to scale but in proportion.
 */
public final class StepDrawing {
    public static final double WIDTH = 44;
    public static final double HEIGHT = 29;
    /** How many steps there are. */
    public static final int STEPS = 12;

    /** Letters of 7 pt are 2.47 mm high. */
    private static final double LETTER = 2.5;

    private static final double THIN = 0.2;
    private static final double RUN = 2.6;
    /** What is left between the words above and below. */
    private static final double TALL = HEIGHT - 8.2;

    private static final double BELOW_WORDS = 4.4;
    /** The same between the words and sizes on the left and on the right. */
    private static final double WIDE = 26;

    private static final double LARGEST = 3.4;
    /** Room of the arrow above the second bend: a share of its radius, and of its head, mm. */
    private static final double ARROW = 0.55;

    private static final double HEAD = 1;

    private final FoldOpening fold;
    private final double offset;
    private final double tube;
    private final double diameter;
    private final double beak;
    private final FoldSpec spec;
    private final double scale;

    /**
     * For a right fold whose radius and leg are known.
     *
     * @param marks of the right side
     * @param tube length of the tube, mm
     * @param diameter of the wire, mm
     * @param beak radius of the round beak, mm
     */
    public StepDrawing(FoldOpening fold, SideMarks marks, double tube, double diameter, double beak) {
        double r = fold.radius().value();
        double leg = fold.leg().value();
        this.fold = fold;
        this.offset = marks.offset().known() ? marks.offset().value() : r * Math.PI / 2;
        this.tube = tube;
        this.diameter = diameter;
        this.beak = beak;
        this.spec = new FoldSpec(r, leg, leg, 0, 0);
        double closed = (TALL - HEAD) / ((4 + ARROW) * r + diameter / 2);
        double opened = TALL / (spec.height() + drop() + diameter);
        double wide = WIDE / (leg + 2 * r + diameter + RUN);
        this.scale = Math.min(Math.min(LARGEST, wide), Math.min(closed, opened));
    }

    /** What a step's drawing shows, for those who do not see it. */
    public static String words(int step) {
        return List.of(
                        "The straight blank with its midline mark, right and left ends.",
                        "The blank on the model from above: midline mark between the central incisors, ends along both tubes.",
                        "The right tube from the cheek with the first mark distal to its distal end.",
                        "The right end from the cheek: beak on the occlusal side, the distal end turned up and forwards.",
                        "The right end from the cheek: the second mark one tube length along the leg.",
                        "The right end from the cheek: beak on the occlusal side, the end turned up and backwards.",
                        "The finished fold from the cheek with its heights outside and inside.",
                        "The tip towards the cheek, in plan from above and from the front.",
                        "The fold from the cheek with its second bend at the mesial end of the tube.",
                        "The wire from above: right fold seated against its tube, left first bend marked distal to the left tube.",
                        "The right tube from the cheek: wire cut at its distal end.",
                        "The fold from the cheek, closed and opened, with the front levelled.")
                .get(step);
    }

    /** Draws a step, counted from 0, with the upper left corner at the given point. */
    public void draw(Svg svg, int step, double left, double top) {
        svg.rectangle(Ink.PAPER, Ink.RULE, 0.15, left + 0.2, top + 0.2, WIDTH - 0.4, HEIGHT - 0.4);
        switch (step) {
            case 0 -> midline(svg, left, top);
            case 1 -> arch(svg, left, top, false);
            case 2 -> marked(svg, left, top, false);
            case 3 -> firstBend(svg, left, top, true);
            case 4 -> firstBend(svg, left, top, false);
            case 5 -> wholeFold(svg, left, top, Shown.BEAK);
            case 6 -> wholeFold(svg, left, top, Shown.SIZES);
            case 7 -> tip(svg, left, top);
            case 8 -> wholeFold(svg, left, top, Shown.STOP);
            case 9 -> arch(svg, left, top, true);
            case 10 -> marked(svg, left, top, true);
            default -> wholeFold(svg, left, top, Shown.OPENED);
        }
    }

    private enum Shown {
        BEAK,
        SIZES,
        STOP,
        OPENED
    }

    private static void around(Svg svg, double left, double top, String up, String down, String west, String east) {
        double middle = left + WIDTH / 2;
        svg.text(Ink.SOFT, LETTER, Anchor.middle, middle, top + 3, up)
                .text(Ink.SOFT, LETTER, Anchor.middle, middle, top + HEIGHT - 1.2, down)
                .turned(Ink.SOFT, LETTER, Anchor.middle, left + 3, top + HEIGHT / 2, -90, west)
                .turned(Ink.SOFT, LETTER, Anchor.middle, left + WIDTH - 1.4, top + HEIGHT / 2, -90, east);
    }

    private static void fromCheek(Svg svg, double left, double top) {
        around(svg, left, top, "occlusal", "gingival", "distal", "mesial");
    }

    private void wire(Svg svg, Ink ink, List<At> points) {
        svg.line(ink, diameter * scale, 0, points);
    }

    private void midline(Svg svg, double left, double top) {
        double y = top + HEIGHT / 2;
        svg.text(Ink.SOFT, LETTER, Anchor.start, left + 2, top + 3.4, "right")
                .text(Ink.SOFT, LETTER, Anchor.end, left + WIDTH - 2, top + 3.4, "left");
        svg.line(Ink.INK, 1, left + 3, y, left + WIDTH - 3, y);
        svg.line(Ink.ACCENT, 0.6, left + WIDTH / 2, y - 3, left + WIDTH / 2, y + 3);
        svg.text(Ink.ACCENT, LETTER, Anchor.middle, left + WIDTH / 2, y + 6.6, "midline mark");
    }

    /** The wire along the arch from above; with one side folded and seated, or still straight. */
    private void arch(Svg svg, double left, double top, boolean seated) {
        around(svg, left, top, "distal", "front", "right", "left");
        double x0 = left + WIDTH / 2;
        double back = top + 8.5;
        double front = top + HEIGHT - 6;
        List<At> line = new ArrayList<>();
        for (int i = -20; i <= 20; i++) {
            double x = i / 20.0 * 12;
            line.add(new At(x0 + x, front - (front - back) * Math.pow(Math.abs(i) / 20.0, 2.4)));
        }
        List<At> whole = new ArrayList<>();
        if (!seated) {
            whole.add(new At(x0 - 12, top + 4.6));
        }
        whole.addAll(line);
        whole.add(new At(x0 + 12, top + 4.6));
        for (int side : new int[] {-1, 1}) {
            svg.rectangle(Ink.WASH, Ink.SOFT, 0.15, x0 + side * 12 - 1, back - 2.6, 2, 2.8);
        }
        svg.line(Ink.INK, 0.6, 0, whole);
        svg.line(Ink.ACCENT, 0.5, x0, front - 1.8, x0, front + 1.8);
        if (!seated) {
            svg.text(Ink.ACCENT, LETTER, Anchor.middle, x0, front - 7, "midline");
            return;
        }
        svg.line(
                Ink.INK,
                0.9,
                0,
                List.of(
                        new At(x0 - 12, back - 2.6),
                        new At(x0 - 12, back + 0.2),
                        new At(x0 - 13.4, back - 1.4),
                        line.get(0)));
        svg.text(Ink.INK, LETTER, Anchor.start, x0 - 9.6, back + 2, "seated");
        svg.line(Ink.ACCENT, 0.5, x0 + 10.4, back - 3.3, x0 + 13.6, back - 3.3);
        svg.text(Ink.ACCENT, LETTER, Anchor.end, x0 + 9.8, back - 1, "mark");
    }

    /** The straight wire in the tube: marked for the first bend, or cut flush. */
    private void marked(Svg svg, double left, double top, boolean cut) {
        fromCheek(svg, left, top);
        double k = Math.min(LARGEST, 30 / (tube + offset + 2 * RUN));
        double x0 = left + 8 + (RUN + offset + tube) * k;
        double y = top + HEIGHT / 2 + 1;
        double end = x0 - tube * k;
        svg.rectangle(Ink.WASH, Ink.SOFT, THIN, end, y - 3, tube * k, 6);
        svg.text(Ink.SOFT, LETTER, Anchor.middle, (x0 + end) / 2, y - 4, "tube");
        double stop = cut ? end : end - (offset + RUN) * k;
        svg.line(Ink.INK, diameter * k, stop, y, x0 + RUN * k, y);
        if (cut) {
            svg.line(Ink.STOP, 0.4, 1, List.of(new At(end, y - 5.4), new At(end, y + 5)));
            svg.line(Ink.SOFT, diameter * k, 0.9, List.of(new At(end - 1, y), new At(end - 2 * RUN * k, y)));
            svg.text(Ink.STOP, LETTER, Anchor.middle, end + 3, y + 7.6, "cut, hold the piece");
            return;
        }
        double mark = end - offset * k;
        svg.line(Ink.ACCENT, 0.5, mark, y - 3.4, mark, y + 3.4);
        svg.line(Ink.ACCENT, THIN, mark, y + 5, end, y + 5);
        svg.bold(Ink.ACCENT, LETTER, Anchor.middle, (mark + end) / 2, y + 8.4, number(offset));
    }

    /** How far the opened fold's lowest run lies below the closed one's, mm of the wire. */
    private double drop() {
        return opens()
                ? FoldKinematics.gingival(spec, Math.toRadians(fold.angle().value()))
                : 0;
    }

    private boolean opens() {
        return fold.angle().known() && fold.angle().value() > 0;
    }

    /** Where the tube's middle lies for a drawing that reaches so far above and below it to stand in the middle. */
    private static double tubeLevel(double top, double above, double below) {
        return top + BELOW_WORDS + (TALL - above - below) / 2 + above;
    }

    private double mesial(double left) {
        double wide = (spec.leg() + 2 * spec.r() + diameter + RUN) * scale;
        return left + (WIDTH - wide) / 2 + (spec.leg() + spec.r() + diameter / 2) * scale;
    }

    /** The hairpin after the first bend: with the beak in it, or with the second mark on its leg. */
    private void firstBend(Svg svg, double left, double top, boolean bending) {
        fromCheek(svg, left, top);
        double r = spec.r() * scale;
        double x0 = mesial(left);
        double low = top + BELOW_WORDS + TALL / 2 + 1.4 * r;
        double back = x0 - spec.leg() * scale;
        List<At> line = new ArrayList<>();
        line.add(new At(x0 + (RUN + spec.r()) * scale, low));
        for (int i = 0; i <= 16; i++) {
            double a = Math.PI / 2 + Math.PI * i / 16;
            line.add(new At(back + r * Math.cos(a), low - r + r * Math.sin(a)));
        }
        line.add(new At(x0 + (RUN + spec.r()) * scale, low - 2 * r));
        wire(svg, Ink.INK, line);
        if (bending) {
            beak(svg, back, low - r);
            arrow(
                    svg,
                    List.of(
                            new At(back - r - 2, low - 1.6 * r),
                            new At(back - r - 1, low - 2.7 * r),
                            new At(back + r, low - 3.1 * r)));
            return;
        }
        double y = low - 2 * r;
        for (double x : new double[] {back, x0}) {
            svg.line(Ink.ACCENT, x == x0 ? 0.5 : THIN, x, y - 3, x, y + 1);
        }
        svg.line(Ink.ACCENT, THIN, back, y - 2.4, x0, y - 2.4);
        svg.bold(Ink.ACCENT, LETTER, Anchor.middle, (back + x0) / 2, y - 3.2, number(spec.leg()));
    }

    private void beak(Svg svg, double x, double y) {
        svg.dot(Ink.WASH, Ink.SOFT, x, y, Math.max(1, beak * scale * 0.9));
        svg.text(Ink.INK, LETTER, Anchor.start, x + beak * scale + 1.2, y + 0.9, "beak");
    }

    private static void arrow(Svg svg, List<At> way) {
        At a = way.get(way.size() - 2);
        At b = way.get(way.size() - 1);
        double d = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double ux = (b.x() - a.x()) / d;
        double uy = (b.y() - a.y()) / d;
        svg.line(Ink.ACCENT, 0.3, 0, way);
        svg.area(
                Ink.ACCENT,
                1,
                List.of(
                        b,
                        new At(b.x() - 1.6 * ux - 0.8 * uy, b.y() - 1.6 * uy + 0.8 * ux),
                        new At(b.x() - 1.6 * ux + 0.8 * uy, b.y() - 1.6 * uy - 0.8 * ux)));
    }

    private void wholeFold(Svg svg, double left, double top, Shown shown) {
        fromCheek(svg, left, top);
        double r = spec.r() * scale;
        double x0 = mesial(left);
        double half = diameter * scale / 2;
        if (shown == Shown.OPENED && opens()) {
            opened(svg, x0, tubeLevel(top, half, 4 * r + drop() * scale + half));
            return;
        }
        double y0 = tubeLevel(top, ARROW * r + HEAD, 4 * r + half);
        double low = y0 + 4 * r;
        if (shown == Shown.STOP) {
            svg.rectangle(Ink.WASH, Ink.SOFT, THIN, x0 - tube * scale, y0 - 1.6, tube * scale, 3.2);
        }
        wire(svg, Ink.INK, placed(FoldLine.of(spec, tube, RUN, 0), x0, y0));
        switch (shown) {
            case BEAK -> {
                svg.dot(Ink.WASH, Ink.SOFT, x0, y0 + r, Math.max(1, beak * scale * 0.9));
                svg.text(Ink.INK, LETTER, Anchor.start, x0 + r + diameter * scale + 0.6, y0 + r + 0.9, "beak");
                arrow(
                        svg,
                        List.of(
                                new At(x0 + r + 2.4, y0 + 0.3 * r),
                                new At(x0 + r + 1.2, y0 - 0.35 * r),
                                new At(x0 - 0.4 * r, y0 - ARROW * r)));
            }
            case SIZES -> sizes(svg, left, x0, y0, low);
            default ->
                svg.text(Ink.ACCENT, LETTER, Anchor.start, x0 + r + diameter * scale + 0.4, y0 + r + 0.6, "stop");
        }
    }

    /** The opened fold, its run bent up again to the level of the closed one, which is the thin line. */
    private void opened(Svg svg, double x0, double y0) {
        svg.line(Ink.SOFT, THIN * 1.5, 1, placed(FoldLine.of(spec, tube, RUN, 0), x0, y0));
        double alpha = Math.toRadians(fold.angle().value());
        List<At> line = new ArrayList<>(FoldLine.of(spec, tube, RUN * 0.3, alpha));
        At end = line.get(line.size() - 1);
        line.add(new At(end.x() + 1, spec.height()));
        line.add(new At(end.x() + 2, spec.height()));
        wire(svg, Ink.INK, placed(line, x0, y0));
    }

    private void sizes(Svg svg, double left, double x0, double y0, double low) {
        double half = diameter * scale / 2;
        double west = left + 8.6;
        svg.line(Ink.ACCENT, THIN, west, y0 - half, west, low + half);
        svg.turned(
                Ink.ACCENT,
                LETTER,
                Anchor.middle,
                west - 0.7,
                (y0 + low) / 2,
                -90,
                "out " + number(fold.height().value() + diameter));
        double east = left + WIDTH - 7.4;
        svg.line(Ink.ACCENT, THIN, east, y0 + half, east, low - half);
        svg.turned(
                Ink.ACCENT,
                LETTER,
                Anchor.middle,
                east + 2.6,
                (y0 + low) / 2,
                -90,
                "in " + number(fold.height().value() - diameter));
        for (double y : new double[] {y0 - half, low + half}) {
            svg.line(Ink.ACCENT, THIN / 2, west - 0.8, y, x0 - spec.leg() * scale, y);
        }
        for (double y : new double[] {y0 + half, low - half}) {
            svg.line(Ink.ACCENT, THIN / 2, x0, y, east + 0.8, y);
        }
    }

    /** From above, and from the front: the cheek of the right side is on the left in both. */
    private void tip(Svg svg, double left, double top) {
        double lean = Math.sin(Math.toRadians(SideMarks.TIP));
        double out = Math.max(2.2, 4 * spec.r() * lean * scale);
        svg.turned(Ink.SOFT, LETTER, Anchor.middle, left + 3, top + HEIGHT / 2, -90, "cheek");
        svg.text(Ink.SOFT, LETTER, Anchor.middle, left + 15.5, top + 3, "distal")
                .text(Ink.SOFT, LETTER, Anchor.middle, left + 13, top + HEIGHT - 1.2, "mesial");
        double x = left + 16;
        double y0 = top + 5;
        double y1 = y0 + Math.min(tube * scale, 9);
        svg.rectangle(Ink.WASH, Ink.SOFT, THIN, x - 1.2, y0, 2.4, y1 - y0);
        svg.line(
                Ink.INK,
                0.9,
                0,
                List.of(
                        new At(x, y0),
                        new At(x, y1 + 1.6),
                        new At(x - out / 2, y1 + 1.6),
                        new At(x - out / 2, y0 + 1),
                        new At(x - out, y0 + 1),
                        new At(x - out, top + HEIGHT - 4.4)));
        svg.bold(Ink.SOFT, LETTER, Anchor.start, left + 1.4, top + 3, "above");
        svg.line(Ink.RULE, 0.2, left + 21, top + 2, left + 21, top + HEIGHT - 2);
        double tall = Math.min(4 * spec.r() * scale, TALL - 3);
        double fx = left + 34;
        double fy = top + 6;
        double bx = fx - tall * Math.tan(Math.toRadians(SideMarks.TIP));
        svg.line(Ink.SOFT, THIN, 1, List.of(new At(fx, fy), new At(fx, fy + tall + 1)));
        svg.line(Ink.INK, 0.9, fx, fy, bx, fy + tall);
        svg.area(
                Ink.WASH,
                1,
                List.of(
                        new At(left + WIDTH - 5, top + 9),
                        new At(left + WIDTH - 8, fy + tall + 2),
                        new At(left + WIDTH - 1, fy + tall + 2),
                        new At(left + WIDTH - 1, top + 9)));
        svg.text(Ink.ACCENT, LETTER, Anchor.end, bx + 1, fy + tall * 0.55, Numbers.plain(SideMarks.TIP, 0) + "°");
        svg.bold(Ink.SOFT, LETTER, Anchor.start, left + 22, top + 3, "front");
        svg.text(Ink.SOFT, LETTER, Anchor.middle, left + 37, top + 3, "occlusal")
                .text(Ink.SOFT, LETTER, Anchor.middle, left + 32, top + HEIGHT - 1.2, "gingival");
        svg.turned(Ink.SOFT, LETTER, Anchor.middle, left + 23.8, top + HEIGHT / 2, -90, "cheek");
    }

    private List<At> placed(List<At> line, double x0, double y0) {
        return line.stream()
                .map(p -> new At(x0 + p.x() * scale, y0 + p.y() * scale))
                .toList();
    }

    private static String number(double mm) {
        return Numbers.plain(mm, 1);
    }
}
