package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.report.picture.Drawing;
import dev.fairlead.report.picture.Pictures;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The pictures of one case: a few to open with, and all with their tables. */
public final class Figures {
    /** What a presentation opens with, column by column. */
    private static final List<List<String>> FIRST =
            List.of(List.of("arch", "space"), List.of("position"), List.of("forecast"));

    /** On paper two, for labels have to be read at a glance: 7 pt or more. */
    private static final List<List<String>> FIRST_ON_PAPER = List.of(List.of("arch"), List.of("space"));

    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");
    private static final Pattern LETTERS = Pattern.compile("font-size=\"([0-9.]+)\"");
    /**
     * Widths on paper: two in a row, and one alone, which grows up to the page until its labels are read at a glance.
     */
    private static final double FIRST_MM = 88;

    private static final double PLATE_MM = 92;
    private static final double PAGE_MM = 180;
    private static final double LABEL_MM = 7.02 / 72 * 25.4;

    private final List<Drawing> drawings;
    private final String prefix;
    private final boolean paper;

    Figures(Checked checked, String prefix, boolean paper) {
        this.drawings = Pictures.of(checked).stream().filter(d -> !d.idle()).toList();
        this.prefix = prefix;
        this.paper = paper;
    }

    /** Those that stand on the first page, column by column. */
    public List<List<Picture>> first() {
        return opening().stream()
                .map(column -> column.stream()
                        .flatMap(id -> drawn().filter(p -> p.id().equals(id)))
                        .toList())
                .filter(c -> !c.isEmpty())
                .toList();
    }

    private List<List<String>> opening() {
        return paper ? FIRST_ON_PAPER : FIRST;
    }

    private Stream<Picture> drawn() {
        return drawings.stream().flatMap(d -> d.picture().stream());
    }

    public boolean isFirst(Picture p) {
        return opening().stream().anyMatch(column -> column.contains(p.id()));
    }

    public List<Drawing> all() {
        return drawings;
    }

    public String anchor(Picture p) {
        return prefix + "picture-" + p.id();
    }

    /** The drawing with names that no other case on the page uses. */
    public String svg(Picture p) {
        String svg = p.svg()
                .replace("\"" + p.id() + "-title", "\"" + prefix + p.id() + "-title")
                .replace(p.id() + "-desc\"", prefix + p.id() + "-desc\"");
        return paper
                ? "<svg alt=\"" + attribute(p.title() + ". " + p.description()) + "\" " + size(p)
                        + svg.substring("<svg ".length())
                : svg;
    }

    /** The layout for paper asks for both width and height. */
    private String size(Picture p) {
        Matcher box = BOX.matcher(p.svg());
        if (p.svg().startsWith("<svg width=") || !box.find()) {
            return "";
        }
        double across = Double.parseDouble(box.group(1));
        double letters = LETTERS.matcher(p.svg())
                .results()
                .mapToDouble(r -> Double.parseDouble(r.group(1)))
                .min()
                .orElse(across);
        double width = isFirst(p) ? FIRST_MM : Math.min(PAGE_MM, Math.max(PLATE_MM, LABEL_MM * across / letters));
        return "width=\"" + Svg.num(width) + "mm\" height=\""
                + Svg.num(width * Double.parseDouble(box.group(2)) / across) + "mm\" ";
    }

    private static String attribute(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
