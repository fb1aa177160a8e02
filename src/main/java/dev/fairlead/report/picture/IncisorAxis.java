package dev.fairlead.report.picture;

import dev.fairlead.model.Limit;
import java.util.ArrayList;
import java.util.List;

/** A lower incisor from the side over the mandibular plane, front to the right: norm, limits, and the tooth before and after. */
final class IncisorAxis {
    /** Crown and root in the mean, mm; only drawn. */
    private static final double LENGTH = 20.5;
    /** Half widths from apex to edge at shares of the length, mm: a root that swells to the neck, a crown that thins to its edge. */
    private static final double[][] OUTLINE = {{0, 0.5}, {0.06, 1.1}, {0.3, 2.2}, {0.55, 2.9}, {0.62, 3.0}, {0.72, 2.8}, {0.85, 1.7}, {0.97, 0.7}, {1, 0.5}};
    private static final double SCALE = 6.6;
    private static final double REACH = LENGTH * SCALE + 26;

    private final Svg svg;
    private final double x;
    private final double y;

    /** The apex stands at x, y; the plane lies below. */
    IncisorAxis(Svg svg, double x, double y) {
        this.svg = svg;
        this.x = x;
        this.y = y;
    }

    /** Where a ray at that angle to the plane ends. */
    private Svg.At at(double degrees, double reach) {
        return new Svg.At(x - reach * Math.cos(Math.toRadians(degrees)), y - reach * Math.sin(Math.toRadians(degrees)));
    }

    void plane(double left, double right) {
        double below = y + 16;
        svg.line(Ink.INK, 2, left, below, right, below);
        svg.text(Ink.SOFT, 12, Svg.Anchor.start, left, below + 15, "mandibular plane");
        svg.text(Ink.SOFT, 12, Svg.Anchor.end, right, below + 15, "front");
    }

    void norm(double low, double high) {
        List<Svg.At> wedge = new ArrayList<>(List.of(new Svg.At(x, y)));
        for (double a = low; a <= high + 1e-9; a += (high - low) / 10) {
            wedge.add(at(a, REACH - 6));
        }
        svg.area(Ink.WASH, 1, wedge);
    }

    /** A limit as a ray with its number at the end. */
    void limit(Ink ink, double dash, Svg.Anchor anchor, Limit limit) {
        svg.line(ink, 1.6, dash, List.of(at(limit.value(), 18), at(limit.value(), REACH)));
        Svg.At tip = at(limit.value(), REACH + 4);
        svg.text(ink, 12, anchor, tip.x(), tip.y(), Position.degrees(limit.value()));
    }

    void tooth(double degrees, boolean after) {
        double lean = Math.toRadians(degrees);
        double ux = -Math.cos(lean);
        double uy = -Math.sin(lean);
        List<Svg.At> outline = new ArrayList<>();
        for (double[] o : OUTLINE) {
            outline.add(new Svg.At(x + SCALE * (ux * o[0] * LENGTH + uy * o[1]), y + SCALE * (uy * o[0] * LENGTH - ux * o[1])));
        }
        for (int i = OUTLINE.length - 1; i >= 0; i--) {
            double[] o = OUTLINE[i];
            outline.add(new Svg.At(x + SCALE * (ux * o[0] * LENGTH - uy * o[1]), y + SCALE * (uy * o[0] * LENGTH + ux * o[1])));
        }
        outline.add(outline.get(0));
        if (after) {
            svg.area(Ink.PAPER, 0.55, outline);
        }
        svg.line(after ? Ink.ACCENT : Ink.SOFT, after ? 2.2 : 1.4, after ? 0 : 4, outline);
    }
}
