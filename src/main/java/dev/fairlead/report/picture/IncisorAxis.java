package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.model.Limit;
import java.util.ArrayList;
import java.util.List;

/**
 * A lower incisor from the side over the mandibular plane, front to the right: norm, limits, and the tooth before and
 * after.
 */
final class IncisorAxis {
    /** Crown and root in the mean, mm; only drawn. */
    private static final double LENGTH = 20.5;
    /**
     * From apex to edge: share of the length, then how far the labial and the lingual face lie from the axis, mm; only
     * drawn.
     */
    private static final double[][] FACES = {
        {0, 0.25, 0.25},
        {0.03, 0.8, 0.8},
        {0.2, 1.7, 1.7},
        {0.4, 2.5, 2.4},
        {0.56, 3.0, 2.8},
        {0.64, 3.1, 3.0},
        {0.72, 3.0, 2.9},
        {0.82, 2.4, 1.6},
        {0.92, 1.5, 0.5},
        {0.985, 0.7, 0.05},
        {1, 0.3, 0.1}
    };

    private static final int STEPS = 4;
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
        svg.line(ink, 1.6, dash, List.of(at(limit.value(), 0.45 * REACH), at(limit.value(), REACH)));
        Svg.At tip = at(limit.value(), REACH + 4);
        svg.text(ink, 12, anchor, tip.x(), tip.y(), IncisorChange.degrees(limit.value()));
    }

    void tooth(double degrees, boolean after) {
        double lean = Math.toRadians(degrees);
        double ux = -Math.cos(lean);
        double uy = -Math.sin(lean);
        List<Svg.At> outline = new ArrayList<>();
        for (int i = 0; i <= STEPS * (FACES.length - 1); i++) {
            double along = SCALE * LENGTH * smooth(i, 0);
            double off = SCALE * smooth(i, 1);
            outline.add(new Svg.At(x + ux * along - uy * off, y + uy * along + ux * off));
        }
        for (int i = STEPS * (FACES.length - 1); i >= 0; i--) {
            double along = SCALE * LENGTH * smooth(i, 0);
            double off = -SCALE * smooth(i, 2);
            outline.add(new Svg.At(x + ux * along - uy * off, y + uy * along + ux * off));
        }
        outline.add(outline.get(0));
        if (after) {
            svg.area(Ink.PAPER, 0.55, outline);
        }
        svg.line(after ? Ink.ACCENT : Ink.SOFT, after ? 2.2 : 1.4, after ? 0 : 4, outline);
    }

    /** A cubic through the points of a column of the faces (Catmull and Rom). */
    private static double smooth(int step, int column) {
        int at = Math.min(step / STEPS, FACES.length - 2);
        double t = (step - at * STEPS) / (double) STEPS;
        double a = FACES[Math.max(0, at - 1)][column];
        double b = FACES[at][column];
        double c = FACES[at + 1][column];
        double d = FACES[Math.min(FACES.length - 1, at + 2)][column];
        return b + t / 2 * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }
}
