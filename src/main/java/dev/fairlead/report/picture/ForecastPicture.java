package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.schedule.SideForecast;
import dev.fairlead.measure.schedule.SideForecast.Point;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Space of each side visit by visit against what canine and premolars need: as measured, and as it is to be expected.
 */
public final class ForecastPicture {
    private static final String TITLE = "Space visit by visit against the need";
    private static final double WIDTH = 420;
    private static final double LEFT = 40;
    private static final double RIGHT = WIDTH - 14;
    private static final double PANEL = 182;
    private static final double HEAD = 24;
    private static final double PLOT = 118;

    private final Forecast forecast;
    private final int first;
    private final int last;
    private final double low;
    private final double high;

    private ForecastPicture(Forecast forecast) {
        this.forecast = forecast;
        first = forecast.sides().stream()
                .flatMap(s -> s.points().stream())
                .mapToInt(Point::visit)
                .min()
                .orElse(0);
        last = Math.max(
                first + 1,
                forecast.sides().stream()
                        .flatMap(s -> s.points().stream())
                        .mapToInt(Point::visit)
                        .max()
                        .orElse(1));
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (SideForecast s : forecast.sides()) {
            for (Point p : s.points()) {
                least = Math.min(least, p.low());
                most = Math.max(most, p.high());
            }
            if (s.target().known()) {
                least = Math.min(least, s.target().value());
                most = Math.max(most, s.target().value());
            }
        }
        low = Math.floor(least - 0.2);
        high = Math.ceil(most + 0.2);
    }

    /** The picture; empty while nothing was measured and nothing can be expected. */
    public static Drawing of(Checked checked) {
        Optional<Forecast> forecast = checked.worked().forecast();
        CaseValue[] wanted = forecast.map(
                        f -> f.missing().isEmpty() ? new CaseValue[0] : new CaseValue[] {Measured.unknown(f.missing())})
                .orElse(new CaseValue[0]);
        boolean points = forecast.map(
                        f -> f.sides().stream().anyMatch(s -> !s.points().isEmpty()))
                .orElse(false);
        return points
                ? Drawing.of(new ForecastPicture(forecast.get()).picture(), wanted)
                : Drawing.without(TITLE, wanted);
    }

    private Picture picture() {
        String words =
                "Full dots on a solid line are readings, each with its error; rings on a broken line are what is expected, and the shaded band holds it in about nine cases of ten. The dotted line is the need. "
                        + words(Side.RIGHT) + " " + words(Side.LEFT);
        Svg svg = new Svg("forecast", TITLE, words, WIDTH, 2 * PANEL + 4);
        panel(svg, forecast.side(Side.RIGHT), 0);
        panel(svg, forecast.side(Side.LEFT), PANEL);
        List<List<String>> rows = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            forecast.side(side).points().forEach(p -> rows.add(row(forecast.side(side), p)));
        }
        return new Picture(
                "forecast", TITLE, words, svg.done(), List.of("Side", "Visit", "Space", "Nine in ten", "Need"), rows);
    }

    private void panel(Svg svg, SideForecast s, double top) {
        svg.bold(
                Ink.INK,
                13,
                Svg.Anchor.start,
                6,
                top + 15,
                "patient's " + s.side().word());
        if (s.space().known() && s.target().known()) {
            svg.text(
                    Ink.SOFT,
                    12,
                    Svg.Anchor.end,
                    RIGHT,
                    top + 15,
                    "now " + Numbers.text(s.space()) + ", need " + Numbers.text(s.target()));
        }
        double step = high - low > 6 ? 2 : 1;
        for (double v = low; v <= high + 1e-9; v += step) {
            svg.line(Ink.RULE, 0.8, LEFT, y(v, top), RIGHT, y(v, top));
            svg.text(Ink.SOFT, 12, Svg.Anchor.end, LEFT - 6, y(v, top) + 4, Numbers.plain(v, 0));
        }
        List<Point> ahead = s.points().stream().filter(p -> p.visit() >= 0).toList();
        if (ahead.size() > 1) {
            List<Svg.At> band = new ArrayList<>();
            ahead.forEach(p -> band.add(new Svg.At(x(p.visit()), y(p.high(), top))));
            for (int i = ahead.size() - 1; i >= 0; i--) {
                band.add(new Svg.At(x(ahead.get(i).visit()), y(ahead.get(i).low(), top)));
            }
            svg.area(Ink.WASH, 1, band);
        }
        if (s.target().known()) {
            svg.line(
                    Ink.PASS,
                    2,
                    2,
                    List.of(
                            new Svg.At(LEFT, y(s.target().value(), top)),
                            new Svg.At(RIGHT, y(s.target().value(), top))));
        }
        line(svg, s.points().stream().filter(Point::measured).toList(), Ink.INK, 0, top);
        line(svg, ahead, Ink.ACCENT, 6, top);
        for (Point p : s.points()) {
            if (p.measured()) {
                svg.line(Ink.INK, 1.2, x(p.visit()), y(p.low(), top), x(p.visit()), y(p.high(), top));
                svg.dot(Ink.INK, Ink.PAPER, x(p.visit()), y(p.space(), top), 4.6);
            } else {
                svg.dot(Ink.PAPER, Ink.ACCENT, x(p.visit()), y(p.space(), top), 3.4);
            }
        }
        across(svg, s, top);
    }

    private void line(Svg svg, List<Point> points, Ink ink, double dash, double top) {
        if (points.size() > 1) {
            svg.line(
                    ink,
                    2,
                    dash,
                    points.stream()
                            .map(p -> new Svg.At(x(p.visit()), y(p.space(), top)))
                            .toList());
        }
    }

    private void across(Svg svg, SideForecast s, double top) {
        int every = Math.max(1, (last - first + 7) / 8);
        for (int v = first; v <= last; v++) {
            if ((v - first) % every == 0 || v == 0) {
                svg.text(Ink.SOFT, 12, Svg.Anchor.middle, x(v), top + HEAD + PLOT + 16, visit(v));
            }
        }
        List<Point> dated =
                s.points().stream().filter(p -> p.date().isPresent()).toList();
        if (!dated.isEmpty()) {
            svg.text(
                    Ink.SOFT,
                    12,
                    Svg.Anchor.start,
                    LEFT,
                    top + HEAD + PLOT + 31,
                    dated.get(0).date().get().toString());
            if (dated.size() > 1) {
                svg.text(
                        Ink.SOFT,
                        12,
                        Svg.Anchor.end,
                        RIGHT,
                        top + HEAD + PLOT + 31,
                        dated.get(dated.size() - 1).date().get().toString());
            }
        }
    }

    private double x(int visit) {
        return LEFT + 12 + (RIGHT - LEFT - 24) * (visit - first) / (last - first);
    }

    private double y(double mm, double top) {
        return top + HEAD + PLOT * (high - mm) / (high - low);
    }

    private static String visit(int v) {
        return v == 0 ? "now" : v > 0 ? "+" + v : "−" + -v;
    }

    private String words(Side side) {
        SideForecast s = forecast.side(side);
        return "On the " + side.word() + " the space is " + Numbers.text(s.space()) + " and the need "
                + Numbers.text(s.target())
                + s.reached()
                        .map(r -> "; the planned advance is done after "
                                + (r.expected() == 1 ? "1 visit" : r.expected() + " visits")
                                + (r.early().equals(r.late()) ? "" : " (" + r.early() + " to " + r.late() + ")"))
                        .orElse("")
                + ".";
    }

    private List<String> row(SideForecast s, Point p) {
        return List.of(
                s.side().word(),
                (p.visit() == 0 ? "now" : p.visit() > 0 ? "in " + p.visit() : -p.visit() + " ago")
                        + p.date().map(d -> ", " + d).orElse(""),
                Numbers.text(p.space(), Unit.MM) + (p.measured() ? " measured" : " expected"),
                Numbers.plain(p.low(), 1) + " to " + Numbers.text(p.high(), Unit.MM),
                Numbers.text(s.target()));
    }
}
