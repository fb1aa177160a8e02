package dev.fairlead.audit.page;

import dev.fairlead.audit.statistics.Band;
import dev.fairlead.audit.statistics.Funnel;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.write.Percent;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** Funnel plots of residents: the more cases, the closer to the overall rate chance alone would keep a resident. */
final class FunnelChart {
    private static final int STEPS = 60;

    private record Dot(String name, double x, double y, boolean few) {}

    private FunnelChart() {}

    /** All criteria together: warnings over those to be expected. */
    static Picture overall(Summary s) {
        double[] rates = s.rates();
        List<Dot> dots = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Group g : s.named()) {
            double expected = g.expected(rates);
            if (expected > 0) {
                dots.add(new Dot(g.name(), expected, g.warnings() / expected, expected < Summary.FEW));
                Band outer = Funnel.ratio(expected, Funnel.OUTER);
                rows.add(List.of(
                        g.name(),
                        Integer.toString(g.cases()),
                        Integer.toString(g.warnings()),
                        num(expected),
                        num(g.warnings() / expected),
                        num(outer.low()) + " to " + num(outer.high()),
                        note(expected < Summary.FEW, outer, g.warnings() / expected)));
            }
        }
        Set<String> out = s.signals().stream()
                .filter(x -> x.criterion().isEmpty())
                .map(Summary.Signal::group)
                .collect(Collectors.toSet());
        double most = dots.stream().mapToDouble(Dot::x).max().orElse(1) * 1.05;
        String svg = draw(
                "funnel-all",
                "Warnings of each resident against those to be expected",
                dots,
                out,
                most,
                1,
                FunnelChart::num,
                "warnings to be expected from the mix of criteria judged",
                "warnings / expected",
                Funnel::ratio,
                "all");
        return new Picture(
                "funnel-all",
                "Warnings of each resident against those to be expected",
                describe(dots, out),
                svg,
                List.of("resident", "cases", "warnings", "expected", "ratio", "99.8 % limits", ""),
                rows);
    }

    /** One criterion: share of warnings. */
    static Picture of(Summary s, CriterionCount c, int index) {
        double rate = c.warnRate().share();
        List<Dot> dots = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Group g : s.named()) {
            int n = g.judged()[index];
            if (n > 0) {
                double share = (double) g.warned()[index] / n;
                boolean few = n * rate < 1;
                dots.add(new Dot(g.name(), n, share, few));
                Band outer = Funnel.share(n, rate, Funnel.OUTER);
                rows.add(List.of(
                        g.name(),
                        g.warned()[index] + " of " + n,
                        Percent.of(share),
                        Percent.of(outer.low()) + " to " + Percent.of(Math.min(1, outer.high())),
                        note(few, outer, share)));
            }
        }
        Set<String> out = s.signals().stream()
                .filter(x -> x.criterion().equals(c.id()))
                .map(Summary.Signal::group)
                .collect(Collectors.toSet());
        double most = dots.stream().mapToDouble(Dot::x).max().orElse(1) * 1.05;
        String id = "funnel-" + c.id();
        String title = "Share of warnings of each resident: " + c.id();
        String svg = draw(
                id,
                title,
                dots,
                out,
                most,
                rate,
                v -> Svg.num(100 * v) + " %",
                "cases judged",
                "share of warnings",
                (n, level) -> Funnel.share(Math.max(1, (int) Math.round(n)), rate, level),
                c.id());
        return new Picture(
                id,
                title,
                describe(dots, out),
                svg,
                List.of("resident", "warnings", "share", "99.8 % limits", ""),
                rows);
    }

    private interface Limits {
        Band at(double x, double level);
    }

    private static String draw(
            String id,
            String title,
            List<Dot> dots,
            Set<String> out,
            double most,
            double centre,
            DoubleFunction<String> text,
            String xMeans,
            String yMeans,
            Limits limits,
            String what) {
        double dotMost = dots.stream().mapToDouble(Dot::y).max().orElse(centre);
        double yMost = Math.max(dotMost, limits.at(most / 8, Funnel.OUTER).high()) * 1.08;
        Plot plot = new Plot(new Svg(id, title, describe(dots, out), Plot.WIDTH, Plot.HEIGHT), most, yMost);
        plot.frame(xMeans, yMeans, text);
        plot.numbersBelow();
        for (double level : new double[] {Funnel.OUTER, Funnel.INNER}) {
            List<Svg.At> low = new ArrayList<>();
            List<Svg.At> high = new ArrayList<>();
            for (int i = 1; i <= STEPS; i++) {
                // closer together where the limits bend
                double x = most * Math.pow(i / (double) STEPS, 1.6);
                Band b = limits.at(x, level);
                if (b.high() <= yMost * 1.02) {
                    high.add(plot.at(x, b.high()));
                }
                low.add(plot.at(x, b.low()));
            }
            double dash = level == Funnel.INNER ? 5 : 0;
            plot.svg.line(Ink.SOFT, 1.2, dash, high);
            plot.svg.line(Ink.SOFT, 1.2, dash, low);
        }
        plot.svg.line(Ink.INK, 1.4, 0, List.of(plot.at(0, centre), plot.at(most, centre)));
        dots.forEach(d -> plot.dot(d.x(), d.y(), d.few(), out.contains(d.name())));
        dots.stream().filter(d -> out.contains(d.name())).forEach(d -> plot.label(d.x(), d.y(), d.name()));
        return plot.svg.done();
    }

    private static String describe(List<Dot> dots, Set<String> out) {
        return dots.size()
                + " residents as dots around the overall value, between limits of chance that narrow with the number of cases. "
                + (out.isEmpty()
                        ? "None stands out beyond chance."
                        : "Beyond chance: " + String.join(", ", new java.util.TreeSet<>(out)) + ".");
    }

    private static String note(boolean few, Band outer, double value) {
        return few ? "few" : outer.holds(value) ? "" : "outside";
    }

    static String num(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }
}
