package dev.fairlead.audit.run;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fairlead.audit.outcome.Attained;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The details of a row as JSON, and back. */
final class DetailsJson {
    private DetailsJson() {}

    static void write(JsonGenerator g, CaseRow.Details d) throws IOException {
        if (!d.site().isEmpty()) {
            g.writeStringField("site", d.site());
        }
        if (!d.waivers().isEmpty()) {
            g.writeArrayFieldStart("waivers");
            for (CaseRow.Answered w : d.waivers()) {
                g.writeStartObject();
                g.writeStringField("criterion", w.criterion());
                g.writeStringField("by", w.by());
                g.writeStringField("date", w.date());
                g.writeStringField("expires", w.expires());
                g.writeStringField("reason", w.reason());
                g.writeEndObject();
            }
            g.writeEndArray();
        }
        if (!d.attained().isEmpty()) {
            g.writeArrayFieldStart("attained");
            for (Attained a : d.attained()) {
                g.writeStartObject();
                g.writeStringField("of", a.kind().name().toLowerCase(Locale.ROOT));
                g.writeNumberField("predicted", a.predicted());
                g.writeNumberField("sd", a.sd());
                g.writeNumberField("achieved", a.achieved());
                g.writeNumberField("error", a.error());
                g.writeEndObject();
            }
            g.writeEndArray();
        }
        if (!d.values().isEmpty()) {
            g.writeArrayFieldStart("values");
            for (CaseRow.Value v : d.values()) {
                g.writeStartObject();
                g.writeStringField("criterion", v.criterion());
                g.writeStringField("place", v.place());
                g.writeStringField("reasons", v.reasons());
                if (!Double.isNaN(v.value())) {
                    g.writeNumberField("value", v.value());
                    g.writeNumberField("error", v.error());
                    g.writeStringField("unit", v.unit());
                    g.writeNumberField("limit", v.limit());
                    g.writeNumberField("margin", v.margin());
                }
                g.writeEndObject();
            }
            g.writeEndArray();
        }
    }

    static CaseRow.Details read(JsonNode row) {
        List<CaseRow.Answered> waivers = new ArrayList<>();
        row.path("waivers")
                .forEach(w -> waivers.add(new CaseRow.Answered(
                        w.path("criterion").asText(),
                        w.path("by").asText(),
                        w.path("date").asText(),
                        w.path("expires").asText(),
                        w.path("reason").asText())));
        List<Attained> attained = new ArrayList<>();
        row.path("attained")
                .forEach(a -> attained.add(new Attained(
                        Attained.Kind.valueOf(a.path("of").asText().toUpperCase(Locale.ROOT)),
                        a.path("predicted").asDouble(),
                        a.path("sd").asDouble(),
                        a.path("achieved").asDouble(),
                        a.path("error").asDouble())));
        List<CaseRow.Value> values = new ArrayList<>();
        row.path("values")
                .forEach(v -> values.add(new CaseRow.Value(
                        v.path("criterion").asText(),
                        v.path("place").asText(),
                        v.path("reasons").asText(),
                        v.path("value").asDouble(Double.NaN),
                        v.path("error").asDouble(Double.NaN),
                        v.path("unit").asText(),
                        v.path("limit").asDouble(Double.NaN),
                        v.path("margin").asDouble(Double.NaN))));
        String site = row.path("site").asText();
        return site.isEmpty() && waivers.isEmpty() && attained.isEmpty() && values.isEmpty()
                ? CaseRow.Details.NONE
                : new CaseRow.Details(site, waivers, attained, values);
    }
}
