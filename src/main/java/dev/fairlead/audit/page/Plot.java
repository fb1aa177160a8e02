package dev.fairlead.audit.page;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Axes from zero, and where values lie between them. */
final class Plot {
    static final double WIDTH = 520;
    static final double HEIGHT = 290;
    private static final double LEFT = 58;
    private static final double RIGHT = 14;
    private static final double TOP = 14;
    private static final double BOTTOM = 50;
    private static final double SIZE = 12.5;

    final Svg svg;
    private final double xMost;
    private final double yMost;

    /** {@code xMost} and {@code yMost} are the greatest values that are drawn. */
    Plot(Svg svg, double xMost, double yMost) {
        this.svg = svg;
        this.xMost = xMost > 0 ? xMost : 1;
        this.yMost = yMost > 0 ? yMost : 1;
    }

    double x(double value) {
        return LEFT + (WIDTH - LEFT - RIGHT) * value / xMost;
    }

    double y(double value) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * Math.min(value, yMost * 1.02) / yMost;
    }

    At at(double x, double y) {
        return new At(x(x), y(y));
    }

    /** Lines and numbers of the upright axis, and what both axes mean. */
    void frame(String xMeans, String yMeans, DoubleFunction<String> yText) {
        for (double v : ticks(yMost, 5)) {
            svg.line(Ink.RULE, 1, LEFT, y(v), WIDTH - RIGHT, y(v));
            svg.text(Ink.SOFT, SIZE, Anchor.end, LEFT - 6, y(v) + 4, yText.apply(v));
        }
        svg.text(Ink.SOFT, SIZE, Anchor.middle, (LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8, xMeans);
        svg.turned(Ink.SOFT, SIZE, Anchor.middle, 13, (TOP + HEIGHT - BOTTOM) / 2, -90, yMeans);
    }

    /** A word under the lower axis. */
    void below(double x, String word) {
        svg.text(Ink.SOFT, SIZE, Anchor.middle, x(x), HEIGHT - BOTTOM + 18, word);
    }

    /** A dot; hollow when there is too little behind it, square-edged in warning colour when it stands out. */
    void dot(double x, double y, boolean few, boolean standsOut) {
        svg.dot(
                standsOut ? Ink.CAUTION : few ? Ink.PAPER : Ink.ACCENT,
                standsOut ? Ink.CAUTION : few ? Ink.SOFT : Ink.ACCENT,
                x(x),
                y(y),
                standsOut ? 5.5 : 4);
    }

    /** Round numbers from 0 on, about so many. */
    static List<Double> ticks(double most, int about) {
        double raw = most / about;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step =
                raw / power <= 1 ? power : raw / power <= 2 ? 2 * power : raw / power <= 5 ? 5 * power : 10 * power;
        List<Double> all = new ArrayList<>();
        for (int i = 0; i * step <= most * 1.0001; i++) {
            all.add(Math.rint(i * step * 1e9) / 1e9);
        }
        return all;
    }
}
