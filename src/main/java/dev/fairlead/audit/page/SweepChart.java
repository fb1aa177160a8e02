package dev.fairlead.audit.page;

import dev.fairlead.audit.compare.Sweep;
import dev.fairlead.audit.write.CompareText;
import dev.fairlead.audit.write.Percent;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The curve of the rate of warnings over the values of a threshold, with its interval. */
final class SweepChart {
    private SweepChart() {}

    static Picture of(Sweep.Curve c, Threshold t) {
        List<Sweep.Point> points =
                c.points().stream().filter(p -> !p.warnRate().none()).toList();
        List<List<String>> rows = c.points().stream()
                .map(p -> List.of(
                        CompareText.number(p.value()),
                        p.warnRate().count() + " of " + p.warnRate().of(),
                        Percent.of(p.warnRate().share()),
                        Percent.interval(p.warnRate())))
                .toList();
        double low = c.points().get(0).value();
        double high = c.points().get(c.points().size() - 1).value();
        String id = "sweep-" + c.criterion();
        String title = c.criterion() + ": rate of warnings over " + t.name();
        String says = "The rate goes from "
                + (points.isEmpty()
                        ? "nothing judged"
                        : Percent.of(points.get(0).warnRate().share()) + " at " + CompareText.number(low) + " to "
                                + Percent.of(
                                        points.get(points.size() - 1).warnRate().share()) + " at "
                                + CompareText.number(high))
                + " " + t.unit().symbol() + "; in force is " + CompareText.number(t.value()) + ".";
        double most =
                points.stream().mapToDouble(p -> p.warnRate().high()).max().orElse(1);
        Plot plot = new Plot(new Svg(id, title, says, Plot.WIDTH, Plot.HEIGHT), high - low, most);
        plot.frame(
                t.says() + (t.unit().symbol().isEmpty() ? "" : ", " + t.unit().symbol()),
                "share of warnings",
                v -> Svg.num(100 * v) + " %");
        List<Svg.At> line = new ArrayList<>();
        List<Svg.At> upper = new ArrayList<>();
        List<Svg.At> lower = new ArrayList<>();
        for (Sweep.Point p : points) {
            line.add(plot.at(p.value() - low, p.warnRate().share()));
            upper.add(plot.at(p.value() - low, p.warnRate().high()));
            lower.add(plot.at(p.value() - low, p.warnRate().low()));
        }
        Collections.reverse(lower);
        List<Svg.At> area = new ArrayList<>(upper);
        area.addAll(lower);
        plot.svg.area(Ink.WASH, 1, area);
        if (t.value() >= low && t.value() <= high) {
            plot.svg.line(Ink.SOFT, 1.2, 4, List.of(plot.at(t.value() - low, 0), plot.at(t.value() - low, most)));
        }
        plot.svg.line(Ink.ACCENT, 2, 0, line);
        int every = Math.max(1, (c.points().size() + 5) / 6);
        for (int i = 0; i < c.points().size(); i += every) {
            plot.below(
                    c.points().get(i).value() - low,
                    CompareText.number(c.points().get(i).value()));
        }
        return new Picture(
                id,
                title,
                says,
                plot.svg.done(),
                List.of("value, " + t.unit().symbol(), "warnings", "rate", "95 % interval"),
                rows);
    }
}
