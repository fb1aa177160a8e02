package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.StandOffCurve;
import dev.fairlead.model.Case;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Total labial force against stand-off: the band of the case's own wire, the middle of those of other sizes, and the
 * customary range shaded.
 */
public final class StandOffPicture {
    private static final double WIDTH = 420;
    private static final double HEIGHT = 260;
    private static final double LEFT = 48;
    private static final double RIGHT = 360;
    private static final double TOP = 22;
    private static final double BOTTOM = 214;
    private static final double LARGEST = 3;
    private static final double STEP = 0.25;
    /** More than this, gf, is drawn off the picture: beyond it no wire is looked for. */
    private static final double HIGHEST = 600;

    private final Map<Double, StandOffCurve> curves;
    private final double own;
    private final CustomaryForce customary;

    private StandOffPicture(Map<Double, StandOffCurve> curves, double own, CustomaryForce customary) {
        this.curves = curves;
        this.own = own;
        this.customary = customary;
    }

    /** For the case's own wire and {@code sizes}, mm; empty while facts are missing. */
    public static Optional<Picture> of(Case c, CustomaryForce customary, List<Double> sizes) {
        Optional<StandOffCurve> own = StandOffCurve.of(c);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        Map<Double, StandOffCurve> all = new LinkedHashMap<>();
        for (double d : sizes) {
            StandOffCurve.of(Edit.set(c, "/wire/size", d)).ifPresent(k -> all.put(d, k));
        }
        double d = c.wire().size().value();
        all.put(d, own.get());
        return Optional.of(new StandOffPicture(all, d, customary).picture());
    }

    private Picture picture() {
        String title = "Force against stand-off";
        StandOffCurve mine = Objects.requireNonNull(curves.get(own));
        String words =
                "Total labial force in gf as tied in, against the stand-off in mm of the side opened more. The blue band is"
                        + " that of this wire from least to most, without errors of measurement; a broken line is the middle of another"
                        + " size. The green range, " + customary.words()
                        + ", is customary. The dot is the planned stand-off.";
        Svg svg = new Svg("stand-off", title, words, WIDTH, HEIGHT);
        axes(svg);
        List<At> high = line(mine, StandOffCurve.Point::high);
        List<At> outline = new ArrayList<>(line(mine, StandOffCurve.Point::low));
        svg.area(Ink.WASH, 0.9, ring(edge(mine, StandOffCurve.Point::low), edge(mine, StandOffCurve.Point::high)));
        svg.area(
                Ink.PASS,
                0.18,
                List.of(
                        new At(LEFT, y(customary.least())),
                        new At(RIGHT, y(customary.least())),
                        new At(RIGHT, y(customary.most())),
                        new At(LEFT, y(customary.most()))));
        // below the range on the right no wire in use passes
        svg.text(Ink.PASS, 12, Anchor.end, RIGHT - 4, y(customary.least()) + 14, "customary " + customary.words());
        svg.line(Ink.ACCENT, 1.2, 0, outline).line(Ink.ACCENT, 1.2, 0, high);
        double before = HEIGHT;
        for (Map.Entry<Double, StandOffCurve> one : curves.entrySet()) {
            List<At> middle = line(one.getValue(), StandOffPicture::middle);
            At end = middle.get(middle.size() - 1);
            boolean mineToo = one.getKey() == own;
            svg.line(mineToo ? Ink.ACCENT : Ink.SOFT, mineToo ? 2 : 1.4, mineToo ? 0 : 5, middle);
            before = Math.min(end.y() + 4, before - 14);
            svg.text(mineToo ? Ink.ACCENT : Ink.SOFT, 12, Anchor.start, RIGHT + 4, before, inch(one.getKey()));
        }
        StandOffCurve.Point at = mine.asked();
        if (middle(at) <= HIGHEST) {
            svg.dot(Ink.INK, Ink.PAPER, x(at.standOff()), y(middle(at)), 4.5);
        }
        List<List<String>> rows = new ArrayList<>();
        curves.forEach((d, k) -> {
            for (double s = 0.5; s <= k.searchedTo() + 1e-9; s += 0.5) {
                rows.add(row(d, k.at(s)));
            }
        });
        return new Picture(
                "stand-off", title, words, svg.done(), List.of("wire", "stand-off", "least to most", "stress"), rows);
    }

    private static List<String> row(double d, StandOffCurve.Point p) {
        return List.of(
                inch(d),
                Numbers.text(p.standOff(), Unit.MM),
                Numbers.plain(p.low(), 0) + " to " + Numbers.text(p.high(), Unit.GF),
                Numbers.text(p.stress(), Unit.MPA));
    }

    private static double middle(StandOffCurve.Point p) {
        return (p.low() + p.high()) / 2;
    }

    private static String inch(double mm) {
        return Numbers.plain(Unit.MM.to(Unit.INCH, mm), 3) + " in";
    }

    private static List<At> ring(List<At> there, List<At> back) {
        List<At> reversed = new ArrayList<>(back);
        Collections.reverse(reversed);
        List<At> all = new ArrayList<>(there);
        all.addAll(reversed);
        return all;
    }

    /** An edge of the band, which goes on along the top of the picture where it leaves it. */
    private static List<At> edge(StandOffCurve k, java.util.function.ToDoubleFunction<StandOffCurve.Point> what) {
        List<At> points = new ArrayList<>();
        for (double s = 0; s <= Math.min(LARGEST, k.searchedTo()) + 1e-9; s += STEP / 5) {
            points.add(new At(x(s), y(Math.min(HIGHEST, what.applyAsDouble(k.at(s))))));
        }
        return points;
    }

    /** As far as the picture reaches; where a line leaves it at the top, to its edge. */
    private List<At> line(StandOffCurve k, java.util.function.ToDoubleFunction<StandOffCurve.Point> what) {
        List<At> points = new ArrayList<>();
        for (double s = 0; s <= Math.min(LARGEST, k.searchedTo()) + 1e-9; s += STEP / 5) {
            double gf = what.applyAsDouble(k.at(s));
            if (gf > HIGHEST) {
                break;
            }
            points.add(new At(x(s), y(gf)));
        }
        return points;
    }

    private void axes(Svg svg) {
        for (double gf = 0; gf <= HIGHEST; gf += 100) {
            svg.line(Ink.RULE, 0.8, LEFT, y(gf), RIGHT, y(gf));
            svg.text(Ink.SOFT, 12, Anchor.end, LEFT - 5, y(gf) + 4, Numbers.plain(gf, 0));
        }
        for (double s = 0; s <= LARGEST; s += 0.5) {
            svg.line(Ink.SOFT, 1, x(s), BOTTOM, x(s), BOTTOM + 4);
            svg.text(Ink.SOFT, 12, Anchor.middle, x(s), BOTTOM + 18, Numbers.plain(s, 1));
        }
        svg.line(Ink.SOFT, 1, LEFT, BOTTOM, RIGHT, BOTTOM);
        svg.text(Ink.SOFT, 12, Anchor.start, 4, 12, "gf in all, labially");
        svg.text(Ink.SOFT, 12, Anchor.end, RIGHT, HEIGHT - 8, "stand-off, mm");
    }

    private static double x(double standOff) {
        return LEFT + (RIGHT - LEFT) * standOff / LARGEST;
    }

    private static double y(double gf) {
        return BOTTOM - (BOTTOM - TOP) * gf / HIGHEST;
    }
}
