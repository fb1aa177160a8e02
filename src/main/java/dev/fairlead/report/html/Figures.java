package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.report.picture.Drawing;
import dev.fairlead.report.picture.Picture;
import dev.fairlead.report.picture.Pictures;
import java.util.List;
import java.util.stream.Stream;

/** The pictures of one case: a few to open with, and all with their tables. */
public final class Figures {
    /** What a presentation opens with, column by column. */
    private static final List<List<String>> FIRST = List.of(List.of("arch", "space"), List.of("position"), List.of("forecast"));

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
        return FIRST.stream().map(column -> column.stream().flatMap(id -> drawn().filter(p -> p.id().equals(id))).toList()).filter(c -> !c.isEmpty()).toList();
    }

    private Stream<Picture> drawn() {
        return drawings.stream().flatMap(d -> d.picture().stream());
    }

    public boolean isFirst(Picture p) {
        return FIRST.stream().anyMatch(column -> column.contains(p.id()));
    }

    public List<Drawing> all() {
        return drawings;
    }

    public String anchor(Picture p) {
        return prefix + "picture-" + p.id();
    }

    /** The drawing with names that no other case on the page uses. */
    public String svg(Picture p) {
        String svg = p.svg().replace("\"" + p.id() + "-title", "\"" + prefix + p.id() + "-title").replace(p.id() + "-desc\"", prefix + p.id() + "-desc\"");
        return paper ? svg.replaceFirst("<svg ", "<svg alt=\"" + attribute(p.title() + ". " + p.description()).replace("$", "\\$") + "\" ") : svg;
    }

    private static String attribute(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
