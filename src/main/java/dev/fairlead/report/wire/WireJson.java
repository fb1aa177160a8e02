package dev.fairlead.report.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.report.json.ReportJson;
import java.util.Locale;

/** The wire of one case as a JSON tree with fixed keys in a fixed order. */
public final class WireJson {
    /** Version of this form. */
    private static final int FORMAT = 1;

    private WireJson() {}

    public static ObjectNode of(WireReport r) {
        ObjectNode out = JsonNodeFactory.instance
                .objectNode()
                .put("format", FORMAT)
                .put("case", r.id())
                .put("basis", r.basis());
        ObjectNode tables = out.putObject("tables");
        r.sections().forEach(s -> tables.set(s.id(), section(s)));
        ArrayNode cannot = out.putArray("modelCannotKnow");
        r.cannot().forEach(cannot::add);
        ArrayNode sources = out.putArray("sources");
        r.sources()
                .forEach((key, s) -> sources.addObject()
                        .put("key", key)
                        .put("citation", s.citation())
                        .put("kind", s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')));
        return out.put("caution", r.caution());
    }

    private static ObjectNode section(Section s) {
        ObjectNode out = JsonNodeFactory.instance.objectNode().put("title", s.title());
        ArrayNode head = out.putArray("columns");
        s.head().forEach(head::add);
        ObjectNode lines = out.putObject("lines");
        for (Line l : s.lines()) {
            ObjectNode line = lines.putObject(l.id()).put("label", l.label().strip());
            ArrayNode cells = line.putArray("values");
            l.cells().forEach(c -> cells.add(cell(c)));
            ArrayNode missing = line.putArray("missing");
            l.missing().forEach(missing::add);
            ArrayNode sources = line.putArray("sources");
            l.sources().forEach(sources::add);
        }
        ArrayNode notes = out.putArray("notes");
        s.notes().forEach(notes::add);
        return out;
    }

    private static ObjectNode cell(Cell c) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        if (c.value().known()) {
            out.set("value", ReportJson.number(c.value().value()));
            c.to().ifPresent(to -> out.set("to", ReportJson.number(to.value())));
            out.set("error", ReportJson.number(c.value().sd()));
            c.to().ifPresent(to -> out.set("toError", ReportJson.number(to.sd())));
            out.put("unit", c.value().unit().symbol());
        }
        return out.put("text", c.text());
    }
}
