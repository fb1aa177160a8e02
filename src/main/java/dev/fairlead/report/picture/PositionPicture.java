package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.Front;
import dev.fairlead.measure.arch.PositionResult.Shift;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the incisors stand before, and where the plan is predicted to put them, against norms and the limits in force.
 */
public final class PositionPicture {
    private static final String TITLE = "Incisor position before and after";
    private static final double WIDTH = 420;
    private static final double LEFT = 10;
    private static final double RIGHT = WIDTH - 10;
    private static final double AXIS = 226;
    private static final double ROW = 74;

    private PositionPicture() {}

    /** The picture; empty while nothing is known of the incisors before or after. */
    public static Drawing of(Checked checked) {
        List<Shift> shifts = checked.worked()
                .front()
                .map(Front::position)
                .map(p -> p.angles())
                .orElse(List.of());
        List<IncisorChange> all = IncisorChange.of(checked, shifts);
        List<IncisorChange> shown = all.stream().filter(IncisorChange::drawable).toList();
        CaseValue[] wanted = shifts.stream()
                .flatMap(s -> java.util.stream.Stream.of(s.before(), s.after()))
                .toArray(CaseValue[]::new);
        return shown.isEmpty() ? Drawing.without(TITLE, wanted) : Drawing.of(picture(shown), wanted);
    }

    private static Picture picture(List<IncisorChange> shown) {
        IncisorChange lead = shown.get(0);
        boolean axis = lead.shift().name().startsWith("lower incisor to mandibular")
                && lead.shift().before().known();
        double from = axis ? AXIS : 0;
        String words = words(shown);
        Svg svg = new Svg("position", TITLE, words, WIDTH, from + 26 + ROW * shown.size());
        if (axis) {
            axis(svg, lead);
        }
        legend(svg, from + 14);
        for (int i = 0; i < shown.size(); i++) {
            row(svg, shown.get(i), from + 26 + ROW * i);
        }
        return new Picture(
                "position",
                TITLE,
                words,
                svg.done(),
                List.of("What", "Before", "Predicted after", "Measured at the end", "Norm", "Limit in force"),
                shown.stream().map(IncisorChange::row).toList());
    }

    private static void axis(Svg svg, IncisorChange lead) {
        IncisorAxis axis = new IncisorAxis(svg, WIDTH / 2 + 34, AXIS - 40);
        axis.norm(lead.normLow(), lead.normHigh());
        axis.tooth(lead.shift().before().value(), false);
        if (lead.shift().after().known()) {
            axis.tooth(lead.shift().after().value(), true);
        }
        lead.caution().ifPresent(l -> axis.limit(Ink.CAUTION, 5, Svg.Anchor.end, l));
        lead.stop().ifPresent(l -> axis.limit(Ink.STOP, 0, Svg.Anchor.start, l));
        axis.plane(LEFT, RIGHT);
        svg.text(
                Ink.SOFT,
                12,
                Svg.Anchor.start,
                LEFT,
                16,
                "dashed: before, " + Numbers.text(lead.shift().before()));
        if (lead.shift().after().known()) {
            svg.text(
                    Ink.ACCENT,
                    12,
                    Svg.Anchor.start,
                    LEFT,
                    34,
                    "full: after, " + Numbers.text(lead.shift().after()));
        }
        svg.text(Ink.SOFT, 12, Svg.Anchor.start, LEFT, 52, "shaded: norm " + lead.norm());
    }

    private static void legend(Svg svg, double y) {
        svg.dot(Ink.PAPER, Ink.SOFT, LEFT + 6, y - 4, 4.5).text(Ink.SOFT, 12, Svg.Anchor.start, LEFT + 16, y, "before");
        svg.dot(Ink.ACCENT, Ink.ACCENT, LEFT + 82, y - 4, 4.5)
                .text(Ink.SOFT, 12, Svg.Anchor.start, LEFT + 92, y, "after ± error");
        svg.rectangle(Ink.WASH, Ink.WASH, 0, LEFT + 190, y - 10, 18, 12)
                .text(Ink.SOFT, 12, Svg.Anchor.start, LEFT + 213, y, "norm");
        svg.line(Ink.CAUTION, 2, 4, List.of(new Svg.At(LEFT + 268, y - 12), new Svg.At(LEFT + 268, y + 3)))
                .text(Ink.SOFT, 12, Svg.Anchor.start, LEFT + 275, y, "limit");
        svg.line(Ink.STOP, 2.4, LEFT + 325, y - 12, LEFT + 325, y + 3)
                .text(Ink.SOFT, 12, Svg.Anchor.start, LEFT + 332, y, "stop");
    }

    private static void row(Svg svg, IncisorChange p, double y) {
        double[] ends = p.axis();
        java.util.function.DoubleUnaryOperator at = v -> LEFT + (RIGHT - LEFT) * (v - ends[0]) / (ends[1] - ends[0]);
        svg.text(Ink.INK, 13, Svg.Anchor.start, LEFT, y + 14, p.title());
        double mid = y + 47;
        svg.area(
                Ink.WASH,
                1,
                List.of(
                        new Svg.At(at.applyAsDouble(p.normLow()), mid - 9),
                        new Svg.At(at.applyAsDouble(p.normHigh()), mid - 9),
                        new Svg.At(at.applyAsDouble(p.normHigh()), mid + 9),
                        new Svg.At(at.applyAsDouble(p.normLow()), mid + 9)));
        svg.line(Ink.RULE, 1.2, LEFT, mid, RIGHT, mid);
        p.caution().ifPresent(l -> limit(svg, at.applyAsDouble(l.value()), mid, Ink.CAUTION, 4, l));
        p.stop().ifPresent(l -> limit(svg, at.applyAsDouble(l.value()), mid, Ink.STOP, 0, l));
        Measured before = p.shift().before();
        Measured after = p.shift().after();
        if (before.known() && after.known()) {
            svg.line(Ink.SOFT, 1.4, at.applyAsDouble(before.value()), mid, at.applyAsDouble(after.value()), mid);
        }
        if (before.known()) {
            svg.dot(Ink.PAPER, Ink.SOFT, at.applyAsDouble(before.value()), mid, 4.5);
        }
        if (after.known()) {
            svg.line(
                    Ink.ACCENT,
                    3.2,
                    at.applyAsDouble(after.value() - after.sd()),
                    mid,
                    at.applyAsDouble(after.value() + after.sd()),
                    mid);
            svg.dot(Ink.ACCENT, Ink.ACCENT, at.applyAsDouble(after.value()), mid, 5);
        }
        if (p.end().known()) {
            svg.rectangle(Ink.INK, Ink.PAPER, 1, at.applyAsDouble(p.end().value()) - 5, mid - 5, 10, 10);
        }
        values(svg, p, y + 30);
    }

    private static void values(Svg svg, IncisorChange p, double y) {
        svg.text(
                Ink.SOFT,
                12,
                Svg.Anchor.start,
                LEFT,
                y,
                p.change() + (p.end().known() ? "; square: at the end " + Numbers.text(p.end()) : ""));
    }

    private static void limit(Svg svg, double x, double mid, Ink ink, double dash, Limit limit) {
        svg.line(ink, 2, dash, List.of(new Svg.At(x, mid - 13), new Svg.At(x, mid + 12)));
        svg.text(ink, 12, Svg.Anchor.middle, Math.min(x, RIGHT - 12), mid + 23, plain(limit));
    }

    private static String plain(Limit limit) {
        double v = limit.value();
        return Numbers.plain(v, v == Math.rint(v) ? 0 : Numbers.decimals(limit.unit()));
    }

    private static String words(List<IncisorChange> shown) {
        List<String> parts = new ArrayList<>();
        for (IncisorChange p : shown) {
            parts.add(p.title() + ": " + p.change() + ", norm " + p.norm() + ", limit " + p.limits() + ".");
        }
        return String.join(" ", parts);
    }
}
