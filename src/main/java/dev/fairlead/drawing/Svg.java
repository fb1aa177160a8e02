package dev.fairlead.drawing;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/**
 * Writes one svg element shape by shape; texts are escaped by the XML writer, and coordinates are in the units of the
 * view box.
 */
public final class Svg {
    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newFactory();

    /** A point of the view box. */
    public record At(double x, double y) {}

    /** Where a text hangs on its point. */
    public enum Anchor {
        start,
        middle,
        end
    }

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter out;

    /** A drawing that scales with the page; {@code id} names its title and description. */
    public Svg(String id, String title, String description, double width, double height) {
        this(id, title, description, width, height, "");
    }

    /**
     * A drawing of so many units in width and height; {@code unit} such as "mm" makes it true to size, "" lets it
     * scale.
     */
    public Svg(String id, String title, String description, double width, double height, String unit) {
        try {
            out = FACTORY.createXMLStreamWriter(text);
            out.writeStartElement("svg");
            out.writeAttribute("xmlns", "http://www.w3.org/2000/svg");
            attributes(
                    "viewBox",
                    "0 0 " + num(width) + " " + num(height),
                    "role",
                    "img",
                    "aria-labelledby",
                    id + "-title " + id + "-desc",
                    "class",
                    "picture picture-" + id,
                    "font-family",
                    "DejaVu Sans, sans-serif");
            if (!unit.isEmpty()) {
                attributes("width", num(width) + unit, "height", num(height) + unit);
            }
            out.writeStartElement("title");
            attributes("id", id + "-title");
            out.writeCharacters(title);
            out.writeEndElement();
            out.writeStartElement("desc");
            attributes("id", id + "-desc");
            out.writeCharacters(description);
            out.writeEndElement();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A number with no more digits than a drawing needs, the same in every locale. */
    public static String num(double v) {
        String s = String.format(Locale.ROOT, "%.3f", v);
        s = s.contains(".") ? s.replaceAll("0+$", "").replaceAll("\\.$", "") : s;
        return s.equals("-0") ? "0" : s;
    }

    /** A line through the points; {@code dash} in units, 0 for a full line. */
    public Svg line(Ink ink, double width, double dash, List<At> points) {
        return shape(
                "polyline",
                "points",
                points(points),
                "fill",
                "none",
                "class",
                ink.strokeClass(),
                "stroke",
                ink.colour(),
                "stroke-width",
                num(width),
                "stroke-linejoin",
                "round",
                "stroke-linecap",
                dash > 0 ? "butt" : "round",
                "stroke-dasharray",
                dash > 0 ? num(dash) : null);
    }

    public Svg line(Ink ink, double width, double x1, double y1, double x2, double y2) {
        return line(ink, width, 0, List.of(new At(x1, y1), new At(x2, y2)));
    }

    /** A filled shape without an edge. */
    public Svg area(Ink ink, double opacity, List<At> points) {
        return shape(
                "polygon",
                "points",
                points(points),
                "class",
                ink.fillClass(),
                "fill",
                ink.colour(),
                "fill-opacity",
                opacity < 1 ? num(opacity) : null);
    }

    public Svg rectangle(Ink fill, Ink edge, double edgeWidth, double x, double y, double width, double height) {
        return shape(
                "rect",
                "x",
                num(x),
                "y",
                num(y),
                "width",
                num(width),
                "height",
                num(height),
                "class",
                fill.fillClass() + " " + edge.strokeClass(),
                "fill",
                fill.colour(),
                "stroke",
                edge.colour(),
                "stroke-width",
                num(edgeWidth));
    }

    /** A filled dot with an edge. */
    public Svg dot(Ink fill, Ink edge, double x, double y, double radius) {
        return shape(
                "circle",
                "cx",
                num(x),
                "cy",
                num(y),
                "r",
                num(radius),
                "class",
                fill.fillClass() + " " + edge.strokeClass(),
                "fill",
                fill.colour(),
                "stroke",
                edge.colour(),
                "stroke-width",
                num(radius / 3));
    }

    public Svg text(Ink ink, double size, Anchor anchor, double x, double y, String words) {
        return written(ink, size, anchor, x, y, words, null, null);
    }

    public Svg bold(Ink ink, double size, Anchor anchor, double x, double y, String words) {
        return written(ink, size, anchor, x, y, words, "bold", null);
    }

    /** A text turned clockwise about its point, degrees. */
    public Svg turned(Ink ink, double size, Anchor anchor, double x, double y, double degrees, String words) {
        return written(
                ink, size, anchor, x, y, words, null, "rotate(" + num(degrees) + " " + num(x) + " " + num(y) + ")");
    }

    private Svg written(
            Ink ink,
            double size,
            Anchor anchor,
            double x,
            double y,
            String words,
            @Nullable String weight,
            @Nullable String transform) {
        try {
            out.writeStartElement("text");
            attributes(
                    "x",
                    num(x),
                    "y",
                    num(y),
                    "font-size",
                    num(size),
                    "text-anchor",
                    anchor.name(),
                    "class",
                    ink.fillClass(),
                    "fill",
                    ink.colour(),
                    "font-weight",
                    weight,
                    "transform",
                    transform);
            out.writeCharacters(words);
            out.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private Svg shape(String name, @Nullable String... attributes) {
        try {
            out.writeEmptyElement(name);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void attributes(@Nullable String... pairs) throws XMLStreamException {
        for (int i = 0; i < pairs.length; i += 2) {
            if (pairs[i + 1] != null) {
                out.writeAttribute(pairs[i], pairs[i + 1]);
            }
        }
    }

    private static String points(List<At> points) {
        StringBuilder all = new StringBuilder();
        for (At p : points) {
            if (all.length() > 0) {
                all.append(' ');
            }
            all.append(num(p.x())).append(',').append(num(p.y()));
        }
        return all.toString();
    }

    /** Closes the drawing and returns it. */
    public String done() {
        try {
            out.writeEndElement();
            out.close();
            return text.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }
}
