package dev.fairlead.audit.page;

import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.write.Percent;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Residents one below the other, in order of their codes, each as a dot on its interval; nobody is ranked. */
final class ResidentChart {
    private static final int MOST = 60;
    private static final double WIDTH = 520;
    private static final double LEFT = 130;
    private static final double RIGHT = 18;
    private static final double ROW = 20;
    private static final double SIZE = 12.5;

    private record Row(String name, double value, double low, double high, boolean few) {}

    /** Where values lie across the drawing, from 0 to 1. */
    private interface Scale {
        double at(double value);
    }

    private ResidentChart() {}

    /** Warnings, or missing facts, against the others: observed over expected. */
    static Picture ratios(Summary s, Signal.Family family, String id, String title) {
        List<Row> rows = new ArrayList<>();
        List<List<String>> table = new ArrayList<>();
        for (Comparisons.Line l : s.comparisons().lines()) {
            Ratio r = family == Signal.Family.MISSING ? l.missing() : l.burden();
            if (!r.none()) {
                rows.add(new Row(l.group().name(), r.value(), r.low(), r.high(), l.few()));
                table.add(List.of(
                        l.group().name(),
                        Integer.toString(l.group().cases()),
                        num(r.value()),
                        num(r.low()) + " to " + num(r.high()),
                        l.few() ? "few cases" : ""));
            }
        }
        double most = Math.max(
                2,
                Math.min(
                        8,
                        rows.stream()
                                .filter(r -> !r.few())
                                .mapToDouble(Row::high)
                                .max()
                                .orElse(2)));
        double span = Math.log(most);
        return draw(
                id,
                title,
                rows,
                out(s, family, ""),
                v -> Math.max(0, Math.min(1, (Math.log(Math.max(v, 1e-9)) + span) / (2 * span))),
                most > 4 ? new double[] {0.25, 0.5, 1, 2, 4} : new double[] {0.5, 1, 2},
                v -> "×" + Svg.num(v),
                1,
                "times the others, 95 % interval",
                List.of("resident", "cases", "ratio", "95 % interval", ""),
                table);
    }

    /** One criterion: share of warnings with Wilson's interval. */
    static Picture shares(Summary s, CriterionCount c, int index) {
        List<Row> rows = new ArrayList<>();
        List<List<String>> table = new ArrayList<>();
        for (Group g : s.named()) {
            int n = g.judged()[index];
            if (n > 0) {
                Rate r = new Rate(g.warned()[index], n);
                rows.add(new Row(g.name(), r.share(), r.low(), r.high(), n < Comparisons.FEWEST_CASES));
                table.add(List.of(
                        g.name(),
                        r.count() + " of " + n,
                        Percent.of(r.share()),
                        Percent.interval(r),
                        n < Comparisons.FEWEST_CASES ? "few cases" : ""));
            }
        }
        return draw(
                "residents-" + c.id(),
                "Share of warnings of each resident: " + c.id(),
                rows,
                out(s, null, c.id()),
                v -> Math.max(0, Math.min(1, v)),
                new double[] {0, 0.25, 0.5, 0.75, 1},
                v -> Math.round(100 * v) + " %",
                c.warnRate().share(),
                "share of warnings, 95 % interval",
                List.of("resident", "warnings", "share", "95 % interval", ""),
                table);
    }

    private static Set<String> out(Summary s, Signal.@Nullable Family family, String item) {
        return s.comparisons().out().stream()
                .filter(x ->
                        family == null ? x.item().equals(item) && !x.family().together() : x.family() == family)
                .map(Signal::resident)
                .collect(Collectors.toSet());
    }

    private static Picture draw(
            String id,
            String title,
            List<Row> all,
            Set<String> out,
            Scale scale,
            double[] ticks,
            DoubleFunction<String> text,
            double centre,
            String means,
            List<String> head,
            List<List<String>> table) {
        List<Row> rows = all.size() <= MOST ? all : all.subList(0, MOST);
        String says = rows.size() + " residents in order of their codes"
                + (all.size() > MOST ? ", of " + all.size() : "") + ". "
                + (out.isEmpty()
                        ? "None stands out."
                        : "Stands out: " + String.join(", ", new java.util.TreeSet<>(out)) + ".")
                + (rows.stream().anyMatch(Row::few) ? " Hollow: fewer than five cases, not compared." : "");
        double bottom = 12 + ROW * rows.size();
        Svg svg = new Svg(id, title, says, WIDTH, bottom + 44);
        for (double t : ticks) {
            svg.line(Ink.RULE, 1, x(scale, t), 8, x(scale, t), bottom);
            svg.text(Ink.SOFT, SIZE, Anchor.middle, x(scale, t), bottom + 17, text.apply(t));
        }
        svg.line(Ink.INK, 1.4, x(scale, centre), 8, x(scale, centre), bottom);
        svg.text(Ink.SOFT, SIZE, Anchor.middle, (LEFT + WIDTH - RIGHT) / 2, bottom + 37, means);
        for (int i = 0; i < rows.size(); i++) {
            Row r = rows.get(i);
            double y = 12 + ROW * (i + 0.5);
            boolean named = out.contains(r.name());
            Ink ink = named ? Ink.CAUTION : r.few() ? Ink.SOFT : Ink.ACCENT;
            svg.line(ink, named ? 3 : 2, x(scale, r.low()), y, x(scale, r.high()), y);
            svg.dot(r.few() ? Ink.PAPER : ink, ink, x(scale, r.value()), y, named ? 5.5 : 4);
            if (named) {
                svg.bold(ink, SIZE, Anchor.end, LEFT - 10, y + 4, r.name());
            } else {
                svg.text(Ink.INK, SIZE, Anchor.end, LEFT - 10, y + 4, r.name());
            }
        }
        return new Picture(id, title, says, svg.done(), head, table);
    }

    private static double x(Scale scale, double value) {
        return LEFT + (WIDTH - LEFT - RIGHT) * scale.at(value);
    }

    static String num(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }
}
