package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;

/**
 * The straight blank with its marks, in units of mm, to lay the wire on: the patient's right on the left. The left side
 * has none of its bends marked, for it is marked on the model with the right one seated.
 */
public final class StripDrawing {
    private static final double ABOVE = 29;
    private static final double BELOW = 8;
    private static final double MARGIN = 6;
    private static final double LETTER = 2.5;
    /** Two labels closer than this would run into each other, mm. */
    private static final double APART = 2.9;

    private final WireGeometry g;
    private final double diameter;

    /** For a wire whose marks are known on both sides. */
    public StripDrawing(WireGeometry g, Measured size) {
        this.g = g;
        this.diameter = size.known() ? size.value() : 0.5;
    }

    /** True when every mark of both sides is known. */
    public static boolean possible(WireGeometry g) {
        return g.right().end().known() && g.left().end().known();
    }

    public double width() {
        return g.right().end().value() + g.left().end().value() + 2 * MARGIN;
    }

    public double height() {
        return ABOVE + BELOW;
    }

    public void draw(Svg svg, double left, double top) {
        double x0 = left + MARGIN + g.right().end().value();
        double y = top + ABOVE;
        svg.line(
                Ink.INK,
                diameter,
                x0 - g.right().end().value(),
                y,
                x0 + g.left().end().value(),
                y);
        mark(svg, x0, x0, y, "midline  0", Ink.INK);
        side(svg, g.right(), -1, x0, y);
        side(svg, g.left(), 1, x0, y);
        svg.bold(Ink.INK, 3, Anchor.start, x0 - g.right().tube().value(), y + 6, "RIGHT");
        svg.bold(Ink.INK, 3, Anchor.end, x0 + g.left().tube().value(), y + 6, "LEFT");
    }

    private static void side(Svg svg, SideMarks m, int sign, double x0, double y) {
        boolean bends = m.side() == Side.RIGHT;
        List<Measured> at =
                bends ? List.of(m.tube(), m.firstBend(), m.secondBend(), m.cut(), m.end()) : List.of(m.tube(), m.end());
        List<String> words = bends
                ? List.of("tube, mesial", "first bend", "second bend", "cut", "end")
                : List.of("tube, mesial", "end");
        List<Ink> inks =
                bends ? List.of(Ink.SOFT, Ink.ACCENT, Ink.ACCENT, Ink.STOP, Ink.SOFT) : List.of(Ink.SOFT, Ink.SOFT);
        double label = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < at.size(); i++) {
            label = Math.max(at.get(i).value(), label + APART);
            mark(
                    svg,
                    x0 + sign * at.get(i).value(),
                    x0 + sign * label,
                    y,
                    words.get(i) + "  " + Numbers.plain(at.get(i).value(), 1),
                    inks.get(i));
        }
    }

    private static void mark(Svg svg, double x, double labelX, double y, String words, Ink ink) {
        svg.line(ink, 0.25, x, y - 2, x, y + 2);
        svg.line(ink, 0.12, 0, List.of(new Svg.At(x, y - 2.2), new Svg.At(labelX, y - 4.2), new Svg.At(labelX, y - 5)));
        svg.turned(ink, LETTER, Anchor.start, labelX + LETTER * 0.36, y - 5.6, -90, words);
    }
}
