package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.FoldReadings;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;

/** One fold enlarged, seen from the cheek, closed and opened for the wanted stand-off, with its sizes. */
public final class FoldDrawing {
    public static final double WIDTH = 90;
    public static final double HEIGHT = 62;
    /** How many times as large as the fold, at most, and how long a fold may be on paper, mm. */
    private static final double LARGEST = 6;

    private static final double LONGEST = 26;
    private static final double LETTER = 2.6;
    private static final double RUN = 2.4;
    private static final double TOP = 17;
    private static final double BEHIND = 50;

    private final FoldOpening fold;
    private final double tube;
    private final double diameter;
    private final double beak;
    private final double scale;
    private final int forward;

    private FoldDrawing(FoldOpening fold, double tube, double diameter, double beak) {
        this.fold = fold;
        this.tube = tube;
        this.diameter = diameter;
        this.beak = beak;
        this.scale = Math.min(
                LARGEST,
                Math.max(
                        1,
                        Math.floor(LONGEST / (fold.leg().value() + fold.radius().value() + diameter / 2))));
        this.forward = fold.side() == Side.RIGHT ? 1 : -1;
    }

    /** True when radius and length of the planned fold are known. */
    public static boolean possible(FoldOpening fold) {
        return fold.radius().known() && fold.leg().known();
    }

    public static FoldDrawing of(Case c, FoldOpening fold) {
        return new FoldDrawing(
                fold,
                c.hardware().tube(fold.side()).length().value(),
                c.wire().size().value(),
                c.wire().beakRadius().value());
    }

    public void draw(Svg svg, double left, double top) {
        double r = fold.radius().value();
        double leg = fold.leg().value();
        FoldSpec spec = new FoldSpec(r, leg, leg, 0, 0);
        // the tube's mesial end; behind it the fold, its height and the name of the first bend need more room than the
        // words before it
        double x0 = left + (forward > 0 ? BEHIND : WIDTH - BEHIND);
        double y0 = top + TOP;
        svg.bold(Ink.INK, 3.2, Anchor.start, left + 1, top + 4, fold.side() == Side.RIGHT ? "RIGHT fold" : "LEFT fold");
        svg.text(
                Ink.SOFT,
                LETTER,
                Anchor.start,
                left + 1,
                top + 7.6,
                "seen from the cheek, the front to the " + (forward > 0 ? "right, " : "left, ")
                        + Numbers.plain(scale, 0) + " : 1");
        svg.rectangle(Ink.WASH, Ink.SOFT, 0.2, Math.min(x0, x0 - forward * tube * scale), y0 - 3.4, tube * scale, 6.8);
        if (fold.angle().known() && fold.angle().value() > 0) {
            opened(svg, spec, x0, y0);
        }
        svg.line(Ink.INK, diameter * scale, 0, at(FoldLine.of(spec, tube, RUN, 0), x0, y0));
        sizes(svg, r, leg, x0, y0);
    }

    private void opened(Svg svg, FoldSpec spec, double x0, double y0) {
        double alpha = Math.toRadians(fold.angle().value());
        svg.line(Ink.WASH, diameter * scale, 0, at(FoldLine.of(spec, tube, RUN, alpha), x0, y0));
        svg.line(Ink.ACCENT, 0.3, 1.4, at(FoldLine.of(spec, tube, RUN, alpha), x0, y0));
        double shift = FoldKinematics.forward(spec, alpha) * scale;
        double y = y0 + (4 * spec.r() + FoldKinematics.gingival(spec, alpha)) * scale;
        double from = x0 + forward * RUN * scale;
        svg.line(Ink.ACCENT, 0.2, from, y0 + 4 * spec.r() * scale + 2, from, y + 4.5);
        svg.line(Ink.ACCENT, 0.2, from + forward * shift, y + 1, from + forward * shift, y + 4.5);
        arrow(svg, from, from + forward * shift, y + 3.5);
        svg.text(
                Ink.ACCENT,
                LETTER,
                Anchor.middle,
                from + forward * shift / 2,
                y + 7.4,
                "forward " + mm(fold.standOff(), 1));
    }

    private static void arrow(Svg svg, double from, double to, double y) {
        double s = Math.signum(to - from);
        svg.line(Ink.ACCENT, 0.3, from, y, to, y);
        svg.area(Ink.ACCENT, 1, List.of(new At(to, y), new At(to - s * 1.6, y - 0.7), new At(to - s * 1.6, y + 0.7)));
    }

    private void sizes(Svg svg, double r, double leg, double x0, double y0) {
        double middle = x0 - forward * tube * scale / 2;
        svg.text(Ink.SOFT, LETTER, Anchor.middle, middle, y0 - 4.6, "tube " + Numbers.plain(tube, 1));
        // length of the fold, above the tube
        double back = x0 - forward * leg * scale;
        double high = y0 + 2 * r * scale;
        double room = forward > 0 ? -1 : 1;
        svg.line(Ink.SOFT, 0.15, back, high - 2.2, back, high - 4.2)
                .line(Ink.SOFT, 0.15, x0, high - 2.2, x0, high - 4.2)
                .line(Ink.SOFT, 0.2, back, high - 3.4, x0, high - 3.4);
        svg.bold(Ink.INK, LETTER, Anchor.middle, (back + x0) / 2, high - 4.2, Numbers.plain(leg, 1));
        // height, behind the fold
        double beside = back + room * (r + diameter / 2) * scale + room * 16;
        double low = y0 + 4 * r * scale;
        svg.line(Ink.SOFT, 0.2, beside, y0, beside, low)
                .line(Ink.SOFT, 0.15, beside - 1, y0, beside + 1, y0)
                .line(Ink.SOFT, 0.15, beside - 1, low, beside + 1, low);
        svg.bold(
                Ink.INK,
                LETTER,
                forward > 0 ? Anchor.end : Anchor.start,
                beside + room * 1.2,
                (y0 + low) / 2 + 2.6,
                Numbers.plain(4 * r, 1));
        svg.text(
                Ink.SOFT,
                LETTER,
                forward > 0 ? Anchor.end : Anchor.start,
                beside + room * 1.2,
                (y0 + low) / 2 + 5.8,
                "high");
        // beak in the distal bend
        double cx = back;
        double cy = y0 + 3 * r * scale;
        svg.dot(Ink.WASH, Ink.SOFT, cx, cy, beak * scale * 0.96);
        svg.text(Ink.INK, LETTER, Anchor.middle, cx, cy - 0.2, "beak");
        svg.text(Ink.INK, LETTER, Anchor.middle, cx, cy + 2.6, Numbers.plain(beak, 2));
        svg.text(
                Ink.SOFT,
                LETTER,
                forward > 0 ? Anchor.end : Anchor.start,
                back + room * ((r + diameter / 2) * scale + 1.5),
                cy + 1,
                "first bend");
        double before = x0 + forward * ((r + diameter / 2) * scale + 3);
        Anchor anchor = forward > 0 ? Anchor.start : Anchor.end;
        svg.text(Ink.SOFT, LETTER, anchor, before, y0 - 0.6, "second bend,")
                .text(Ink.SOFT, LETTER, anchor, before, y0 + 2.9, "the stop");
        if (fold.gap().known()) {
            double lower = y0 + 2 * r * scale;
            FoldReadings read = FoldReadings.of(fold, Measured.exact(diameter, Unit.MM));
            svg.text(Ink.ACCENT, LETTER, anchor, before, lower, "open: free end")
                    .text(Ink.ACCENT, LETTER, anchor, before, lower + 3.5, mm(read.openInside(), 1) + " inside,")
                    .text(
                            Ink.ACCENT,
                            LETTER,
                            anchor,
                            before,
                            lower + 7,
                            Numbers.plain(fold.angle().value(), 0) + "\u00b0 each bend");
        }
    }

    private static String mm(Measured m, int decimals) {
        return Numbers.plain(m.value(), decimals) + " mm";
    }

    private List<At> at(List<At> line, double x0, double y0) {
        return line.stream()
                .map(p -> new At(x0 + forward * p.x() * scale, y0 + p.y() * scale))
                .toList();
    }
}
