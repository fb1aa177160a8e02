package dev.fairlead.report.sheet;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.drawing.Svg.At;
import dev.fairlead.report.pdf.PdfWriter;
import java.util.List;

/** A frame to be cut out and laid round a lower arch that is photographed: its four inner corners give the scale. */
public final class ScaleCard {
    /** Inner edge of the frame, mm. */
    public static final double INNER = 80;

    private static final double BAND = 9;
    private static final double TOP = 62;
    private static final double MARGIN = 18;
    private static final String[] STEPS = {
        "Print at 100 %. Measure the rule: it is 100 mm from edge to edge.",
        "Glue the page on stiff card, cut the window out along the inner edge of the black frame.",
        "Measure the window with a caliper, across and down; those lengths are asked when you measure.",
        "Lay it round the arch, raised until it lies at the level of the cusps: 3 mm too low costs 0.4 mm of 48 mm.",
        "Photograph from straight above, 45 cm off or farther, all four inner corners in sight; zoom rather than go near."
    };

    private ScaleCard() {}

    /** The page as PDF on paper of that size. */
    public static byte[] pdf(Paper paper) {
        return PdfWriter.pdf("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>Scale frame</title>"
                + "<meta name=\"description\" content=\"A frame of 80 mm for photographs of an arch\"/><style>@page { size: "
                + Svg.num(paper.width()) + "mm " + Svg.num(paper.height())
                + "mm; margin: 0; } body { margin: 0; font-family: \"" + PdfWriter.FAMILY + "\"; }</style></head><body>"
                + svg(paper) + "</body></html>");
    }

    /** The page as a drawing true to size. */
    public static String svg(Paper paper) {
        double height = paper.height() - 1;
        Svg svg = new Svg(
                "scale-card",
                "Scale frame",
                "A square frame with a window of 80 mm, a rule of 100 mm, and how to use them.",
                paper.width(),
                height,
                "mm");
        svg.bold(Ink.INK, 5, Anchor.start, MARGIN, 16, "Scale frame for photographs of the lower arch");
        double y = 24;
        for (int i = 0; i < STEPS.length; i++) {
            svg.text(Ink.INK, 2.7, Anchor.start, MARGIN, y, (i + 1) + ". " + STEPS[i]);
            y += 4.6;
        }
        double left = (paper.width() - INNER) / 2;
        double right = left + INNER;
        double top = TOP;
        double bottom = top + INNER;
        bar(svg, left - BAND, top - BAND, INNER + 2 * BAND, BAND);
        bar(svg, left - BAND, bottom, INNER + 2 * BAND, BAND);
        bar(svg, left - BAND, top, BAND, INNER);
        bar(svg, right, top, BAND, INNER);
        svg.text(Ink.SOFT, 3, Anchor.middle, (left + right) / 2, (top + bottom) / 2, "window, 80.0 × 80.0 mm");
        RuleDrawing.draw(svg, (paper.width() - RuleDrawing.LENGTH) / 2 - RuleDrawing.MARGIN, bottom + BAND + 12);
        svg.text(
                Ink.SOFT,
                2.4,
                Anchor.start,
                MARGIN,
                height - 12,
                "Numbers from photographs support the judgement of a licensed clinician and do not replace it.");
        return svg.done();
    }

    private static void bar(Svg svg, double x, double y, double width, double height) {
        svg.area(
                Ink.INK,
                1,
                List.of(new At(x, y), new At(x + width, y), new At(x + width, y + height), new At(x, y + height)));
    }
}
