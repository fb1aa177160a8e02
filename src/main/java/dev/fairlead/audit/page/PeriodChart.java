package dev.fairlead.audit.page;

import dev.fairlead.audit.statistics.ControlChart;
import dev.fairlead.audit.statistics.ControlChart.Band;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.write.Percent;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Charts by period: what changes with time beyond what chance does. */
final class PeriodChart {
    private record Dot(String name, double y, Band limits, boolean few) {
        boolean out() {
            return !few && !limits.holds(y);
        }
    }

    private PeriodChart() {}

    /** All criteria together: warnings over those to be expected. */
    static Picture overall(Summary s) {
        double[] rates = s.rates();
        double spread = s.trends().spread();
        List<Dot> dots = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Group g : s.periods()) {
            double expected = g.expected(rates);
            if (expected > 0) {
                Dot d = new Dot(
                        g.name(),
                        g.warnings() / expected,
                        ControlChart.ratio(expected, spread),
                        expected < Summary.FEW);
                dots.add(d);
                rows.add(List.of(
                        g.name(),
                        Integer.toString(g.cases()),
                        Integer.toString(g.warnings()),
                        ResidentChart.num(expected),
                        ResidentChart.num(d.y()),
                        ResidentChart.num(d.limits().low()) + " to "
                                + ResidentChart.num(d.limits().high()),
                        note(d, g)));
            }
        }
        return picture(
                "period-all",
                "Warnings of each period against those to be expected",
                dots,
                1,
                ResidentChart::num,
                "warnings / expected",
                List.of("period", "cases", "warnings", "expected", "ratio", "3-sigma limits", ""),
                rows);
    }

    /** One criterion: a p-chart. */
    static Picture of(Summary s, CriterionCount c, int index) {
        double rate = c.warnRate().share();
        List<Dot> dots = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Group g : s.periods()) {
            int n = g.judged()[index];
            if (n > 0) {
                Dot d = new Dot(g.name(), (double) g.warned()[index] / n, ControlChart.share(n, rate), n * rate < 1);
                dots.add(d);
                rows.add(List.of(
                        g.name(),
                        g.warned()[index] + " of " + n,
                        Percent.of(d.y()),
                        Percent.of(d.limits().low()) + " to "
                                + Percent.of(d.limits().high()),
                        note(d, g)));
            }
        }
        return picture(
                "period-" + c.id(),
                "Share of warnings by period: " + c.id(),
                dots,
                rate,
                v -> Svg.num(100 * v) + " %",
                "share of warnings",
                List.of("period", "warnings", "share", "3-sigma limits", ""),
                rows);
    }

    private static Picture picture(
            String id,
            String title,
            List<Dot> dots,
            double centre,
            DoubleFunction<String> text,
            String yMeans,
            List<String> head,
            List<List<String>> rows) {
        String says =
                dots.size() + " periods in order of time around the overall value, each with its limits of chance. "
                        + (dots.stream().noneMatch(Dot::out)
                                ? "None lies outside."
                                : "Outside: "
                                        + String.join(
                                                ", ",
                                                dots.stream()
                                                        .filter(Dot::out)
                                                        .map(Dot::name)
                                                        .toList()) + ".");
        double yMost = dots.stream()
                        .mapToDouble(
                                d -> Math.max(d.y(), d.few() ? 0 : d.limits().high()))
                        .max()
                        .orElse(1)
                * 1.08;
        Plot plot = new Plot(new Svg(id, title, says, Plot.WIDTH, Plot.HEIGHT), dots.size(), yMost);
        plot.frame("period of the day for which each case is judged", yMeans, text);
        List<Svg.At> path = new ArrayList<>();
        int every = Math.max(1, (dots.size() + 6) / 7);
        for (int i = 0; i < dots.size(); i++) {
            Dot d = dots.get(i);
            for (double limit : new double[] {d.limits().low(), d.limits().high()}) {
                if (limit <= yMost) {
                    plot.svg.line(Ink.SOFT, 1.2, 0, List.of(plot.at(i + 0.08, limit), plot.at(i + 0.92, limit)));
                }
            }
            path.add(plot.at(i + 0.5, d.y()));
            if (i % every == 0) {
                plot.below(i + 0.5, d.name());
            }
        }
        plot.svg.line(Ink.INK, 1.4, 0, List.of(plot.at(0, centre), plot.at(Math.max(1, dots.size()), centre)));
        plot.svg.line(Ink.ACCENT, 1.4, 0, path);
        for (int i = 0; i < dots.size(); i++) {
            plot.dot(i + 0.5, dots.get(i).y(), dots.get(i).few(), dots.get(i).out());
        }
        return new Picture(id, title, says, plot.svg.done(), head, rows);
    }

    private static String note(Dot d, Group g) {
        String of = d.few() ? "few" : d.out() ? "outside" : "";
        return of.isEmpty() ? g.note() : g.note().isEmpty() ? of : of + ", " + g.note();
    }
}
