package dev.fairlead.report.sheet;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import java.util.List;

/** A rule of 100 mm that shows whether a sheet was printed true to size; in units of mm. */
final class RuleDrawing {
    static final double LENGTH = 100;
    static final double HEIGHT = 11;
    /** Room at both ends for the numbers. */
    static final double MARGIN = 4;

    private static final double BASE = 9;

    private RuleDrawing() {}

    static void draw(Svg svg, double left, double top) {
        double x = left + MARGIN;
        double y = top + BASE;
        bar(svg, x, y - 0.15, LENGTH, 0.3);
        for (int mm = 0; mm <= LENGTH; mm++) {
            double tall = mm % 10 == 0 ? 4.2 : mm % 5 == 0 ? 3 : 1.8;
            double wide = mm % 10 == 0 ? 0.25 : 0.12;
            // the outermost strokes lie within the 100 mm, so that the rule is as long as it says from edge to edge
            double from = mm == 0 ? 0 : mm == LENGTH ? LENGTH - wide : mm - wide / 2;
            bar(svg, x + from, y - tall, wide, tall);
            if (mm % 10 == 0) {
                svg.text(Ink.INK, 2.6, Anchor.middle, x + mm, y - 5, String.valueOf(mm));
            }
        }
    }

    private static void bar(Svg svg, double x, double y, double width, double height) {
        svg.area(
                Ink.INK,
                1,
                List.of(new At(x, y), new At(x + width, y), new At(x + width, y + height), new At(x, y + height)));
    }
}
