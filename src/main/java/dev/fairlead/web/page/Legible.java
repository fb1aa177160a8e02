package dev.fairlead.web.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A drawing with the width in pixels at which its smallest words are twelve pixels high: on a narrow screen it scrolls
 * rather than shrinks.
 *
 * @param wide true where that is more than half of a page
 */
public record Legible(String svg, boolean wide) {
    private static final double SMALLEST = 12;
    private static final double HALF_A_PAGE = 520;
    private static final Pattern SIZE = Pattern.compile("font-size=\"([0-9.]+)\"");
    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) [0-9.]+\"");

    /** Of a drawing as its svg element. */
    public static Legible of(String svg) {
        Matcher box = BOX.matcher(svg);
        double least = SIZE.matcher(svg)
                .results()
                .mapToDouble(m -> Double.parseDouble(m.group(1)))
                .min()
                .orElse(SMALLEST);
        if (!box.find() || svg.substring(0, svg.indexOf('>')).contains(" width=")) {
            return new Legible(svg, false);
        }
        double width = Math.ceil(Double.parseDouble(box.group(1)) * SMALLEST / least);
        return new Legible(
                svg.substring(0, box.start()) + "width=\"" + Math.round(width) + "\" " + svg.substring(box.start()),
                width > HALF_A_PAGE);
    }
}
