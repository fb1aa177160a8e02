package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.mechanics.answer.LoadDeflection;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.model.Case;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the force falls as the incisors move: both conditions of the tube, and the band from least to most around them.
 */
public final class LoadPicture {
    static final double WIDTH = 360;
    static final double HEIGHT = 220;
    private static final double LEFT = 44;
    private static final double RIGHT = 348;
    private static final double TOP = 18;
    private static final double BOTTOM = 180;
    private static final int LINES = 4;

    private final ForceBand band;
    private final double standOff;
    private final double top;
    private final double step;

    private LoadPicture(ForceBand band) {
        this.band = band;
        this.standOff = band.heldCurve().standOff();
        double most = gf(Math.max(band.high(), band.held().forward()));
        this.step = nice(most / LINES);
        this.top = Math.ceil(most / step) * step;
    }

    /**
     * For the planned stand-off; empty when facts are missing or the model finds no balance, which {@link WireForces}
     * tells apart.
     */
    public static Optional<Picture> of(Case c) {
        return of(WireForces.planned(c));
    }

    /** For forces that were worked out. */
    public static Optional<Picture> of(WireForces forces) {
        return forces.band().map(b -> new LoadPicture(b).picture());
    }

    private Picture picture() {
        String title = "Force as the incisors move";
        String description = "Total labial force in gf against movement in mm, from " + Numbers.text(standOff, Unit.MM)
                + " of stand-off to the passive wire. "
                + "The shaded band runs from least to most over both conditions of the tube, the ways of tying, the modulus and what is not known of the folds.";
        Svg svg = new Svg("load", title, description, WIDTH, HEIGHT);
        axes(svg);
        svg.area(Ink.WASH, 1, outline());
        curve(svg, band.heldCurve(), 0);
        curve(svg, band.hingedCurve(), 5);
        label(svg, band.heldCurve(), "tail held", -4);
        label(svg, band.hingedCurve(), "tail hinging", 14);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < band.heldCurve().points().size(); i++) {
            LoadDeflection.Point held = band.heldCurve().points().get(i);
            LoadDeflection.Point hinged = band.hingedCurve().points().get(i);
            rows.add(List.of(
                    Numbers.text(held.movement(), Unit.MM),
                    force(hinged.forward()),
                    force(held.forward()),
                    Numbers.text(gf(low(hinged.forward())), Unit.GF) + " to "
                            + Numbers.text(gf(high(held.forward())), Unit.GF)));
        }
        return new Picture(
                "load",
                title,
                description,
                svg.done(),
                List.of("moved", "tail hinging", "tail held", "least to most"),
                rows);
    }

    private static String force(double newton) {
        return Numbers.text(gf(newton), Unit.GF) + " (" + Numbers.text(newton, Unit.NEWTON) + ")";
    }

    private static double gf(double newton) {
        return Unit.NEWTON.to(Unit.GF, newton);
    }

    /**
     * The ends of the band were solved as tied in; after some movement they are taken in the same proportion to the
     * curves.
     */
    private double low(double hinged) {
        return hinged * band.low() / band.hinged().forward();
    }

    private double high(double held) {
        return held * band.high() / band.held().forward();
    }

    private List<At> outline() {
        List<At> points = new ArrayList<>();
        band.heldCurve().points().forEach(p -> points.add(new At(x(p.movement()), y(gf(high(p.forward()))))));
        List<LoadDeflection.Point> back = band.hingedCurve().points();
        for (int i = back.size() - 1; i >= 0; i--) {
            points.add(new At(x(back.get(i).movement()), y(gf(low(back.get(i).forward())))));
        }
        return points;
    }

    private void axes(Svg svg) {
        for (double v = 0; v <= top + step / 2; v += step) {
            svg.line(Ink.RULE, 0.8, LEFT, y(v), RIGHT, y(v));
            svg.text(Ink.SOFT, 12, Anchor.end, LEFT - 5, y(v) + 4, Numbers.plain(v, 0));
        }
        for (double m = 0; m <= standOff + 1e-9; m += 0.5) {
            svg.line(Ink.SOFT, 0.8, x(m), BOTTOM, x(m), BOTTOM + 4);
            svg.text(Ink.SOFT, 12, Anchor.middle, x(m), BOTTOM + 16, Numbers.plain(m, 1));
        }
        svg.line(Ink.SOFT, 1, LEFT, BOTTOM, RIGHT, BOTTOM);
        svg.text(Ink.SOFT, 12, Anchor.start, 4, 10, "gf in all, labially");
        svg.text(Ink.SOFT, 12, Anchor.end, RIGHT, HEIGHT - 6, "mm that the incisors have moved");
    }

    private void curve(Svg svg, LoadDeflection curve, double dash) {
        svg.line(
                Ink.ACCENT,
                2,
                dash,
                curve.points().stream()
                        .map(p -> new At(x(p.movement()), y(gf(p.forward()))))
                        .toList());
        curve.points().forEach(p -> svg.dot(Ink.PAPER, Ink.ACCENT, x(p.movement()), y(gf(p.forward())), 2.4));
    }

    /** The name stands at the right of the curve's first stretch, held above it and hinging below. */
    private void label(Svg svg, LoadDeflection curve, String words, double shift) {
        double at = standOff * 0.28;
        int i = 0;
        while (curve.points().get(i + 1).movement() < at) {
            i++;
        }
        LoadDeflection.Point a = curve.points().get(i);
        LoadDeflection.Point b = curve.points().get(i + 1);
        double share = (at - a.movement()) / (b.movement() - a.movement());
        double y = y(gf(a.forward() + share * (b.forward() - a.forward())));
        svg.text(Ink.INK, 12, shift < 0 ? Anchor.start : Anchor.end, x(at) + (shift < 0 ? 6 : -6), y + shift, words);
    }

    private double x(double movement) {
        return LEFT + (RIGHT - LEFT) * movement / standOff;
    }

    private double y(double gf) {
        return BOTTOM - (BOTTOM - TOP) * gf / top;
    }

    /** A round step of 1, 2 or 5 times a power of ten that is at least so large. */
    private static double nice(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double f : new double[] {1, 2, 5}) {
            if (f * power >= least - 1e-9) {
                return f * power;
            }
        }
        return 10 * power;
    }
}
