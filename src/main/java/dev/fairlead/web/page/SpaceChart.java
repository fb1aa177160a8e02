package dev.fairlead.web.page;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A chart of space on one side over time against the space that is needed, in the units of its view box.
 *
 * @param line what was measured, as points of a polyline
 * @param ahead what is to be expected, likewise; empty when it is not known
 * @param band where that lies in about nine cases of ten, as points of a polygon
 * @param targetY height of the target line; negative when there is none
 */
public record SpaceChart(
        SpaceCourse space,
        List<Tick> down,
        List<Tick> across,
        List<Dot> dots,
        String line,
        String ahead,
        String band,
        double targetY) {
    static final double WIDTH = 460;
    static final double HEIGHT = 230;
    private static final double LEFT = 38;
    private static final double RIGHT = 14;
    private static final double TOP = 14;
    private static final double BOTTOM = 30;
    /** Fewer days than this would stretch one visit over the whole width. */
    private static final long LEAST_DAYS = 56;

    /** A mark of an axis. */
    public record Tick(double at, String text) {}

    /** One measurement. */
    public record Dot(double x, double y, String text) {}

    private record Scale(LocalDate first, double days, double low, double high) {
        double x(LocalDate d) {
            return LEFT + (WIDTH - LEFT - RIGHT) * ChronoUnit.DAYS.between(first, d) / days;
        }

        double y(double mm) {
            return TOP + (HEIGHT - TOP - BOTTOM) * (high - mm) / (high - low);
        }
    }

    /** The charts of both sides to one scale. */
    static List<SpaceChart> of(List<SpaceCourse> sides) {
        List<Double> values = new ArrayList<>();
        for (SpaceCourse s : sides) {
            s.points().stream().filter(p -> p.day() != null).forEach(p -> values.add(p.mm()));
            s.ahead().forEach(a -> values.addAll(List.of(a.low(), a.high())));
            if (s.target().known()) {
                values.add(s.target().value());
            }
        }
        double low = Math.floor(values.stream().mapToDouble(v -> v).min().orElse(0) - 0.3);
        double high = Math.ceil(values.stream().mapToDouble(v -> v).max().orElse(1) + 0.3);
        return sides.stream().map(s -> of(s, low, high)).toList();
    }

    /** The chart of a side; only measurements with a day can be drawn. */
    private static SpaceChart of(SpaceCourse s, double low, double high) {
        List<LocalDate> days = Stream.concat(
                        s.points().stream().map(SpaceCourse.Point::day).filter(Objects::nonNull),
                        s.ahead().stream().map(SpaceCourse.Ahead::day))
                .sorted()
                .toList();
        if (days.isEmpty()) {
            return new SpaceChart(s, List.of(), List.of(), List.of(), "", "", "", -1);
        }
        LocalDate first = days.get(0);
        double span = Math.max(LEAST_DAYS, ChronoUnit.DAYS.between(first, days.get(days.size() - 1)));
        Scale scale = new Scale(first, span, low, high);
        List<Tick> down = new ArrayList<>();
        for (double v = low; v <= high; v += high - low > 6 ? 2 : 1) {
            down.add(new Tick(scale.y(v), String.valueOf(Math.round(v))));
        }
        List<Dot> dots = new ArrayList<>();
        for (SpaceCourse.Point p : s.points()) {
            if (p.day() != null) {
                dots.add(new Dot(scale.x(p.day()), scale.y(p.mm()), p.day() + ": " + SpaceCourse.mm(p.mm()) + " mm"));
            }
        }
        String band = Stream.concat(
                        s.ahead().stream().map(a -> point(scale.x(a.day()), scale.y(a.high()))),
                        reversed(s.ahead()).stream().map(a -> point(scale.x(a.day()), scale.y(a.low()))))
                .collect(Collectors.joining(" "));
        return new SpaceChart(
                s,
                down,
                across(scale),
                dots,
                dots.stream().map(d -> point(d.x(), d.y())).collect(Collectors.joining(" ")),
                s.ahead().stream()
                        .map(a -> point(scale.x(a.day()), scale.y(a.mm())))
                        .collect(Collectors.joining(" ")),
                band,
                s.target().known() ? scale.y(s.target().value()) : -1);
    }

    private static List<Tick> across(Scale scale) {
        List<Tick> ticks = new ArrayList<>();
        long months = Math.max(1, Math.round(scale.days() / 30.4 / 5));
        for (LocalDate d = scale.first().withDayOfMonth(1).plusMonths(1);
                scale.x(d) < WIDTH - RIGHT - 10;
                d = d.plusMonths(months)) {
            ticks.add(new Tick(
                    scale.x(d),
                    d.getMonth().getDisplayName(java.time.format.TextStyle.SHORT, Locale.ENGLISH)
                            + (d.getMonthValue() == 1 ? " " + d.getYear() : "")));
        }
        return ticks;
    }

    private static List<SpaceCourse.Ahead> reversed(List<SpaceCourse.Ahead> ahead) {
        List<SpaceCourse.Ahead> all = new ArrayList<>(ahead);
        java.util.Collections.reverse(all);
        return all;
    }

    private static String point(double x, double y) {
        return num(x) + "," + num(y);
    }

    /** A coordinate with one decimal. */
    public static String num(double v) {
        return String.format(Locale.ROOT, "%.1f", v);
    }

    public boolean empty() {
        return dots.isEmpty();
    }

    public String title() {
        return "Space on the " + space.side().word() + " over time";
    }

    /** The chart in words. */
    public String words() {
        String target = space.target().known()
                ? "The target is " + SpaceCourse.mm(space.target().value()) + " mm. "
                : "The target is not known. ";
        return target + "Measured: " + dots.stream().map(Dot::text).collect(Collectors.joining("; ")) + ".";
    }
}
