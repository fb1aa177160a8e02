package dev.fairlead.audit.page;

import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.summary.StageCount;
import dev.fairlead.drawing.Svg;

/**
 * Small drawings within a line of text; the numbers beside them say the same, so they are left out for readers who do
 * not see.
 */
public final class Bars {
    private static final double WIDE = 160;
    private static final double HIGH = 14;

    private Bars() {}

    /** A rate as a dot on its interval, on a scale that ends at {@code most}. */
    public static String interval(Rate r, double most) {
        if (r.none()) {
            return "";
        }
        double scale = (WIDE - 8) / most;
        String line =
                "<line class=\"s-rule\" x1=\"4\" x2=\"" + num(WIDE - 4) + "\" y1=\"7\" y2=\"7\" stroke=\"#d9d5cb\"/>"
                        + "<line class=\"s-accent\" x1=\"" + num(4 + scale * r.low()) + "\" x2=\""
                        + num(4 + scale * Math.min(most, r.high()))
                        + "\" y1=\"7\" y2=\"7\" stroke=\"#0b5568\" stroke-width=\"3\" stroke-linecap=\"round\" stroke-opacity=\"0.45\"/>"
                        + "<circle class=\"f-accent\" cx=\"" + num(4 + scale * r.share())
                        + "\" cy=\"7\" r=\"4\" fill=\"#0b5568\"/>";
        return open(WIDE, HIGH) + line + "</svg>";
    }

    /** The cases of a stage by how they stand, as parts of one bar. */
    public static String stage(StageCount c, long most) {
        long[] parts = {c.stop(), c.caution(), c.waiting(), c.clear()};
        String[] tones = {"tone-stop", "tone-caution", "tone-open", "tone-clear"};
        double wide = 300;
        StringBuilder out = new StringBuilder(open(wide, 18));
        double x = 0;
        for (int i = 0; i < parts.length; i++) {
            double w = wide * parts[i] / Math.max(1, most);
            if (w > 0) {
                out.append("<rect class=\"")
                        .append(tones[i])
                        .append("\" x=\"")
                        .append(num(x))
                        .append("\" y=\"2\" width=\"")
                        .append(num(Math.max(1, w - 1.5)))
                        .append("\" height=\"14\" rx=\"2\"/>");
            }
            x += w;
        }
        return out.append("</svg>").toString();
    }

    private static String open(double width, double height) {
        return "<svg class=\"bar\" aria-hidden=\"true\" focusable=\"false\" viewBox=\"0 0 " + num(width) + " "
                + num(height) + "\" width=\"" + num(width) + "\" height=\"" + num(height) + "\">";
    }

    private static String num(double v) {
        return Svg.num(v);
    }
}
