package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.measure.schedule.SideForecast;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Space on one side over time against what is needed there, mm.
 *
 * @param target what canine and premolars need; unknown when it cannot be worked out
 * @param points what was measured, in order of time
 * @param ahead what is to be expected from now on; empty while it cannot be worked out
 */
public record SpaceCourse(Side side, Measured target, List<Point> points, List<Ahead> ahead) {
    /** Space to be expected on a day, with the band that holds it in about nine cases of ten, mm. */
    public record Ahead(LocalDate day, double mm, double low, double high) {}

    /**
     * Space on a day, mm, as read; before treatment what is left of it once the incisors stand in line. The day is null
     * for the records before treatment when their day is unknown.
     */
    public record Point(@Nullable LocalDate day, Measured space) {
        public double mm() {
            return space.value();
        }
    }

    /** Right then left, as they are seen. */
    static List<SpaceCourse> of(Checked checked) {
        return List.of(of(checked, Side.RIGHT), of(checked, Side.LEFT));
    }

    private static SpaceCourse of(Checked checked, Side side) {
        Case c = checked.subject();
        SideSpace space = checked.worked().space().side(side);
        Measured target = space.required();
        List<Point> points = new ArrayList<>();
        Measured before = target.minus(space.shortage());
        if (before.known()) {
            points.add(new Point(c.films().models().value().orElse(null), before));
        }
        for (Visit v : c.visits()) {
            if (v.side(side).space().known() && v.date().known()) {
                points.add(new Point(v.date().get(), v.side(side).space()));
            }
        }
        if (c.holding().space(side).known()) {
            points.add(new Point(
                    c.holding()
                            .debonded()
                            .value()
                            .orElse(c.holding().impression().value().orElse(null)),
                    c.holding().space(side)));
        }
        // once the brackets are off nothing lies ahead but what is held
        boolean over = c.holding().debonded().known() || c.holding().cemented().known();
        List<Ahead> ahead = over
                ? List.of()
                : checked.worked().forecast().map(f -> ahead(f.side(side))).orElse(List.of());
        return new SpaceCourse(side, target, points, ahead);
    }

    /** What the forecast draws from the present on; one point alone is no course. */
    private static List<Ahead> ahead(SideForecast f) {
        List<Ahead> all = f.points().stream()
                .filter(p -> p.visit() >= 0 && p.date().isPresent())
                .map(p -> new Ahead(p.date().get(), p.space(), p.low(), p.high()))
                .toList();
        return all.size() < 2 ? List.of() : all;
    }

    public boolean known() {
        return target.known() && !points.isEmpty();
    }

    /** The last measurement, mm. */
    public double now() {
        return points.get(points.size() - 1).mm();
    }

    /** What was gained since the first measurement, mm. */
    public double gained() {
        return now() - points.get(0).mm();
    }

    /**
     * What is still lacking with its error, mm; negative when there is more than is needed. As in a report: need less
     * the space that canine and premolars find once the incisors stand in line.
     */
    public Measured lacking() {
        return target.minus(points.get(points.size() - 1).space());
    }

    /** How far from the first measurement to the target, in whole per cent from 0 to 100. */
    public int percent() {
        double first = points.get(0).mm();
        double whole = target.value() - first;
        double share = whole <= 0 ? 1 : (now() - first) / whole;
        return (int) Math.round(100 * Math.max(0, Math.min(1, share)));
    }

    /** Number with one decimal. */
    public static String mm(double v) {
        return String.format(java.util.Locale.ROOT, "%.1f", v).replaceAll("^-0\\.0$", "0.0");
    }
}
