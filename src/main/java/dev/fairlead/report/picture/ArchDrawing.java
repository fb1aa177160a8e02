package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.geometry.ArchPath;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.ArrayList;
import java.util.List;

/**
 * The unbent wire laid along the child's arch, seen from above facing the child: the patient's right on the left, the
 * front below. Drawn in units of mm; midline, brackets, tubes and marks stand where they fall.
 */
public final class ArchDrawing {
    /** Room for labels beside the widest part of the arch, mm. */
    private static final double BESIDE = 36;

    private static final double ABOVE = 9;
    private static final double BELOW = 12;
    private static final double TUBE_WIDTH = 1.6;
    private static final double STEP = 0.5;
    private static final double LETTER = 2.5;
    /** Wire drawn distal to the tubes where no mark says how far it goes, mm. */
    private static final double TAIL = 6;

    private final Case c;
    private final WireGeometry g;
    private final ArchPath path;
    private final double half;
    private final double front;
    private final double distal;

    /** For a case whose arch is known. */
    public ArchDrawing(Case c, WireGeometry g) {
        this.c = c;
        this.g = g;
        this.path = new ArchPath(g.line().curve());
        this.half = Math.max(Math.abs(path.x(-path.rightLength())), Math.abs(path.x(path.leftLength())));
        double lowest = 0;
        for (double s = -path.rightLength(); s <= path.leftLength(); s += STEP) {
            lowest = Math.max(lowest, path.y(s));
        }
        this.front = lowest;
        this.distal = Math.max(beyond(Side.RIGHT), beyond(Side.LEFT));
    }

    private double beyond(Side side) {
        SideMarks m = g.marks(side);
        return m.end().known() && m.tube().known() ? m.end().value() - m.tube().value() : TAIL;
    }

    public double width() {
        return 2 * (half + BESIDE);
    }

    public double height() {
        return ABOVE + distal + front + BELOW;
    }

    /** Draws with the upper left corner at the given point. */
    public void draw(Svg svg, double left, double top) {
        double x0 = left + width() / 2;
        double y0 = top + ABOVE + distal;
        svg.line(
                Ink.SOFT,
                0.2,
                1.2,
                List.of(new At(x0 + path.x(0), y0 - distal), new At(x0 + path.x(0), y0 + front + 4)));
        svg.text(Ink.SOFT, LETTER, Anchor.middle, x0 + path.x(0), y0 + front + 7.4, "midline");
        for (Side side : Side.values()) {
            tube(svg, side, x0, y0);
        }
        wire(svg, x0, y0);
        brackets(svg, x0, y0);
        for (Side side : Side.values()) {
            marks(svg, side, x0, y0);
            int s = sign(side);
            svg.bold(
                    Ink.INK,
                    3.2,
                    Anchor.middle,
                    x0 + s * half * 0.5,
                    y0 - distal * 0.35,
                    side == Side.RIGHT ? "RIGHT" : "LEFT");
            svg.text(
                    Ink.SOFT,
                    LETTER,
                    Anchor.middle,
                    x0 + s * half * 0.5,
                    y0 - distal * 0.35 + 3.4,
                    side == Side.RIGHT ? "46" : "36");
        }
    }

    private static int sign(Side side) {
        return side == Side.RIGHT ? -1 : 1;
    }

    private double end(Side side) {
        return side == Side.RIGHT ? -path.rightLength() : path.leftLength();
    }

    private void tube(Svg svg, Side side, double x0, double y0) {
        Measured length = c.hardware().tube(side).length();
        double x = x0 + path.x(end(side));
        double y = y0 + path.y(end(side));
        if (length.known()) {
            svg.rectangle(Ink.WASH, Ink.SOFT, 0.15, x - TUBE_WIDTH / 2, y - length.value(), TUBE_WIDTH, length.value());
        } else {
            svg.line(Ink.SOFT, 0.3, x - TUBE_WIDTH, y, x + TUBE_WIDTH, y);
        }
    }

    private void wire(Svg svg, double x0, double y0) {
        List<At> points = new ArrayList<>();
        points.add(new At(x0 + path.x(end(Side.RIGHT)), y0 + path.y(end(Side.RIGHT)) - beyond(Side.RIGHT)));
        int n = (int) Math.ceil((path.rightLength() + path.leftLength()) / STEP);
        for (int i = 0; i <= n; i++) {
            double s = -path.rightLength() + (path.rightLength() + path.leftLength()) * i / n;
            points.add(new At(x0 + path.x(s), y0 + path.y(s)));
        }
        points.add(new At(x0 + path.x(end(Side.LEFT)), y0 + path.y(end(Side.LEFT)) - beyond(Side.LEFT)));
        svg.line(Ink.INK, c.wire().size().known() ? c.wire().size().value() : 0.5, 0, points);
    }

    private void brackets(Svg svg, double x0, double y0) {
        for (Tooth t : Tooth.LOWER_INCISORS) {
            Measured at = c.hardware().bracket(t).fromMidline();
            if (at.known()) {
                double s = t.side() == Side.RIGHT ? -at.value() : at.value();
                double x = x0 + path.x(s);
                double y = y0 + path.y(s);
                svg.rectangle(Ink.PAPER, Ink.ACCENT, 0.25, x - 1.3, y - 1.3, 2.6, 2.6);
                svg.line(
                        Ink.INK,
                        c.wire().size().known() ? c.wire().size().value() : 0.5,
                        x - 1.3,
                        y + slope(s) * -1.3,
                        x + 1.3,
                        y + slope(s) * 1.3);
                svg.text(Ink.ACCENT, LETTER, Anchor.middle, x, y - 2.4, t.toString());
            }
        }
    }

    /** dy/dx of the drawn curve. */
    private double slope(double s) {
        return (path.y(s + 0.1) - path.y(s - 0.1)) / (path.x(s + 0.1) - path.x(s - 0.1));
    }

    private void marks(Svg svg, Side side, double x0, double y0) {
        SideMarks m = g.marks(side);
        double x = x0 + path.x(end(side));
        double y = y0 + path.y(end(side));
        tick(svg, side, x, y, "tube, mesial end", m.tube(), Ink.SOFT);
        if (!m.firstBend().known() || !m.tube().known()) {
            return;
        }
        // the left side is marked on the model, with the right one seated in its tube
        if (side == Side.RIGHT) {
            tick(svg, side, x, y - m.firstBend().value() + m.tube().value(), "first bend", m.firstBend(), Ink.ACCENT);
            tick(
                    svg,
                    side,
                    x,
                    y - m.secondBend().value() + m.tube().value(),
                    "second bend",
                    m.secondBend(),
                    Ink.ACCENT);
            tick(
                    svg,
                    side,
                    x,
                    y - m.cut().value() + m.tube().value() + 0.5,
                    m.cut().value() - m.tube().value(),
                    y,
                    "cut",
                    m.cut(),
                    Ink.STOP);
        }
        tick(
                svg,
                side,
                x,
                y - m.end().value() + m.tube().value() - 0.5,
                m.end().value() - m.tube().value(),
                y,
                "end of the blank",
                m.end(),
                Ink.SOFT);
    }

    private static void tick(Svg svg, Side side, double x, double y, String words, Measured value, Ink ink) {
        tick(svg, side, x, y, Double.NaN, y, words, value, ink);
    }

    /**
     * A tick across the wire with a line to its label; where the label has to give way to a neighbour the tick stays in
     * its place.
     */
    private static void tick(
            Svg svg,
            Side side,
            double x,
            double labelY,
            double distal,
            double tubeY,
            String words,
            Measured value,
            Ink ink) {
        int s = sign(side);
        double y = Double.isNaN(distal) ? labelY : tubeY - distal;
        svg.line(ink, 0.25, x - 1.6, y, x + 1.6, y);
        svg.line(
                ink,
                0.12,
                0,
                List.of(new At(x + s * 1.8, y), new At(x + s * 3.4, labelY), new At(x + s * 4.6, labelY)));
        String number = value.known() ? Numbers.plain(value.value(), 1) : "?";
        svg.text(
                ink,
                LETTER,
                s < 0 ? Anchor.end : Anchor.start,
                x + s * 5.2,
                labelY + LETTER * 0.36,
                s < 0 ? words + "  " + number : number + "  " + words);
    }
}
