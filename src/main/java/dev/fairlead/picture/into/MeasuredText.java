package dev.fairlead.picture.into;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PictureValue;
import dev.fairlead.model.Choices.PictureScale;
import dev.fairlead.model.Unit;
import java.util.Locale;

/** What a picture gave, as lines of text and as JSON. */
public final class MeasuredText {
    /** Stands under every list of readings. */
    public static final String CAUTION =
            "These readings rest on where the points were placed; ± is one standard deviation. They support the judgement"
                    + " of a licensed clinician and do not replace it.";

    private MeasuredText() {}

    /** A value with its error, such as 5.87 ± 0.16 mm. */
    public static String number(PictureValue v) {
        String form = v.unit() == Unit.DEGREE
                ? "%.1f ± %.1f°"
                : "%.2f ± %.2f " + v.unit().symbol();
        return String.format(Locale.ROOT, form, v.value(), v.sd());
    }

    /** Lines of text within 80 columns. */
    public static String text(String name, PictureResult r) {
        StringBuilder out = new StringBuilder(name).append('\n');
        for (PictureValue v : r.values()) {
            out.append(String.format(Locale.ROOT, "  %-52s %20s%n", v.title(), number(v)));
        }
        for (PictureResult.Waiting w : r.waiting()) {
            out.append(Wrap.hanging("  ", w.title() + " waits for " + String.join(", ", w.points())));
        }
        for (String d : r.doubts()) {
            out.append(Wrap.hanging("  ! ", d));
        }
        return out.append('\n').toString();
    }

    /** The same for programs. */
    public static ObjectNode json(PictureResult r) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        ArrayNode values = out.putArray("values");
        for (PictureValue v : r.values()) {
            ObjectNode o = values.addObject();
            o.put("field", v.pointer());
            o.put("title", v.title());
            o.put("value", v.value());
            o.put("unit", v.unit().symbol());
            o.put("sd", v.sd());
            o.put("sdPlacing", v.placing());
            o.put("sdScale", v.scale());
            o.put("text", number(v));
            o.put("note", v.note());
        }
        ArrayNode waiting = out.putArray("waiting");
        for (PictureResult.Waiting w : r.waiting()) {
            ObjectNode o = waiting.addObject();
            o.put("title", w.title());
            w.points().forEach(o.putArray("points")::add);
        }
        r.doubts().forEach(out.putArray("doubts")::add);
        out.put("scale", r.scale().map(PictureScale::word).orElse(""));
        out.put("scaleErrorPercent", r.scaleError());
        r.ownError().ifPresent(e -> out.put("ownErrorMm", e));
        return out;
    }
}
