package dev.fairlead.audit.page;

import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.outcome.Outturn.Point;
import dev.fairlead.audit.statistics.Deviations;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Achieved against predicted, class by class of the prediction, each with the interval of its mean. */
final class OutcomeChart {
    private OutcomeChart() {}

    /** Empty with fewer than two classes: nothing runs along the line then. */
    static Optional<Picture> of(Outturn.Line l) {
        List<Point> points = l.points();
        if (points.size() < 2) {
            return Optional.empty();
        }
        double low = Math.floor(ends(points).min().orElse(0));
        double high = Math.ceil(ends(points).max().orElse(1));
        String id = "outcome-" + l.kind().name().toLowerCase(Locale.ROOT);
        String unit = l.kind().unit().isEmpty() ? "" : ", " + l.kind().unit();
        String title = "Achieved against predicted: " + l.kind().words();
        String says = points.size() + " classes of about the same prediction; bar: 95 % interval of their mean."
                + " On the line it came out as predicted. Hollow: fewer than " + Outturn.FEWEST + " cases.";
        Plot plot = new Plot(new Svg(id, title, says, Plot.WIDTH, Plot.HEIGHT), high - low, high - low);
        plot.frame("predicted" + unit, "achieved" + unit, v -> number(v + low));
        for (double v : Plot.ticks(high - low, 6)) {
            plot.below(v, number(v + low));
        }
        plot.svg.line(Ink.SOFT, 1.4, 4, List.of(plot.at(0, 0), plot.at(high - low, high - low)));
        for (Point p : points) {
            Deviations d = p.achieved();
            double x = p.predicted() - low;
            boolean few = d.n() < Outturn.FEWEST;
            if (!few) {
                plot.svg.line(
                        Ink.ACCENT,
                        2,
                        0,
                        List.of(plot.at(x, Math.max(0, d.biasLow() - low)), plot.at(x, d.biasHigh() - low)));
            }
            plot.dot(x, d.bias() - low, few, false);
        }
        return Optional.of(new Picture(
                id,
                title,
                says,
                plot.svg.done(),
                List.of("predicted" + unit, "cases", "achieved, mean", "95 % interval"),
                points.stream()
                        .map(p -> List.of(
                                ResidentChart.num(p.predicted()),
                                Integer.toString(p.achieved().n()),
                                ResidentChart.num(p.achieved().bias()),
                                p.achieved().n() < 2
                                        ? "–"
                                        : ResidentChart.num(p.achieved().biasLow()) + " to "
                                                + ResidentChart.num(p.achieved().biasHigh())))
                        .toList()));
    }

    /** What has to find room: predictions, means, and intervals of classes with cases enough. */
    private static DoubleStream ends(List<Point> points) {
        return points.stream()
                .flatMapToDouble(p -> p.achieved().n() < Outturn.FEWEST
                        ? DoubleStream.of(p.predicted(), p.achieved().bias())
                        : DoubleStream.of(
                                p.predicted(),
                                p.achieved().biasLow(),
                                p.achieved().biasHigh()));
    }

    private static String number(double v) {
        return v == Math.rint(v) ? Long.toString((long) v) : Svg.num(v);
    }
}
