package dev.fairlead.web.measure;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.measure.picture.PointGuide;
import dev.fairlead.measure.picture.PointHelp;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.picture.demo.PointFigures;
import dev.fairlead.picture.demo.Sketch;
import java.util.Locale;

/** The points that are asked for, and a small figure of where each lies, as the page gets them. */
public final class Guides {
    private Guides() {}

    /** Guide of one kind of picture. */
    public static ObjectNode of(PictureKind kind) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        ArrayNode points = out.putArray("points");
        for (PointHelp p : PointGuide.of(kind)) {
            points.addObject()
                    .put("name", p.name())
                    .put("title", p.title())
                    .put("where", p.where())
                    .put("source", p.source())
                    .put("needed", p.needed());
        }
        PointGuide.twice(kind).forEach(out.putArray("twice")::add);
        boolean above = kind == PictureKind.ARCH_PICTURE || kind == PictureKind.SURFACE_SCAN;
        Sketch sketch = PointFigures.of(kind);
        double[] b = sketch.bounds();
        double margin = b[2] / 12;
        // seen from above, the patient's left lies on the left
        double sx = above ? -1 : 1;
        double x = above ? -(b[0] + b[2]) : b[0];
        out.put(
                "box",
                String.format(
                        Locale.ROOT,
                        "%.1f %.1f %.1f %.1f",
                        x - margin,
                        -(b[1] + b[3]) - margin,
                        b[2] + 2 * margin,
                        b[3] + 2 * margin));
        ArrayNode outlines = out.putArray("outlines");
        for (Sketch.Outline o : sketch.outlines()) {
            StringBuilder d = new StringBuilder();
            for (double[] p : o.at()) {
                d.append(String.format(Locale.ROOT, "%s%.1f %.1f", d.length() == 0 ? "M" : "L", sx * p[0], -p[1]));
            }
            outlines.addObject().put("tone", o.tone()).put("d", d + (o.closed() ? "Z" : ""));
        }
        ObjectNode places = out.putObject("places");
        sketch.points()
                .forEach((name, p) -> places.putArray(name).add(sx * p[0]).add(-p[1]));
        return out;
    }
}
