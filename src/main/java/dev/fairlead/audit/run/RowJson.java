package dev.fairlead.audit.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A row as one line of JSON, and back. */
public final class RowJson {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final List<String> ids;
    private final Map<String, Integer> index = new HashMap<>();

    public RowJson(Catalogue catalogue) {
        this.ids = catalogue.criteria().stream().map(Criterion::id).toList();
        ids.forEach(id -> index.put(id, index.size()));
    }

    /** One line with its line break. */
    public String line(CaseRow row) {
        StringWriter out = new StringWriter(2048);
        try (JsonGenerator g = FACTORY.createGenerator(out)) {
            g.writeStartObject();
            g.writeStringField("source", row.source());
            text(g, "hash", row.hash());
            if (row.judged()) {
                judged(g, row);
            } else {
                g.writeStringField(
                        "not",
                        row.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
                g.writeStringField("reason", row.reason());
            }
            g.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.append('\n').toString();
    }

    private void judged(JsonGenerator g, CaseRow row) throws IOException {
        g.writeStringField("case", row.id());
        g.writeStringField("stage", row.reached().word());
        text(g, "resident", row.resident());
        text(g, "day", row.day());
        texts(g, "lost", row.lost());
        text(g, "recorded", row.recorded());
        g.writeStringField(
                "course", row.course().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        if (row.superseded()) {
            g.writeBooleanField("superseded", true);
        }
        DetailsJson.write(g, row.details());
        for (Ending e : Ending.values()) {
            List<String> so = new ArrayList<>();
            for (int i = 0; i < row.endings().length; i++) {
                if (row.endings()[i] == e.ordinal()) {
                    so.add(ids.get(i));
                }
            }
            texts(g, key(e), so);
        }
        texts(g, "waived", row.waived());
        if (!row.missing().isEmpty()) {
            g.writeObjectFieldStart("missing");
            for (Map.Entry<String, List<String>> m : row.missing().entrySet()) {
                g.writeArrayFieldStart(m.getKey());
                for (String p : m.getValue()) {
                    g.writeString(p);
                }
                g.writeEndArray();
            }
            g.writeEndObject();
        }
        if (!row.notes().isEmpty()) {
            g.writeArrayFieldStart("waiverNotes");
            for (CaseRow.Note n : row.notes()) {
                g.writeStartObject();
                g.writeStringField("criterion", n.criterion());
                g.writeStringField("kind", n.kind());
                g.writeStringField("text", n.text());
                g.writeEndObject();
            }
            g.writeEndArray();
        }
        texts(g, "errors", row.errors());
        if (row.doubts() > 0) {
            g.writeNumberField("doubts", row.doubts());
        }
    }

    /** The row of a line; throws when it is none, for example because it was cut short. */
    CaseRow parse(String line) throws IOException {
        JsonNode n = MAPPER.readTree(line);
        String source = n.path("source").asText();
        if (n.has("not")) {
            return CaseRow.not(
                    CaseRow.Kind.valueOf(n.get("not")
                            .asText()
                            .toUpperCase(java.util.Locale.ROOT)
                            .replace('-', '_')),
                    source,
                    n.path("hash").asText(),
                    n.path("reason").asText());
        }
        if (!n.has("case") || !n.has("stage")) {
            throw new IOException("no row of an audit");
        }
        byte[] endings = new byte[ids.size()];
        Arrays.fill(endings, (byte) -1);
        for (Ending e : Ending.values()) {
            for (String id : list(n.path(key(e)))) {
                endings[Objects.requireNonNull(index.get(id), id)] = (byte) e.ordinal();
            }
        }
        Map<String, List<String>> missing = new LinkedHashMap<>();
        n.path("missing").properties().forEach(m -> missing.put(m.getKey(), list(m.getValue())));
        List<CaseRow.Note> notes = new ArrayList<>();
        n.path("waiverNotes")
                .forEach(w -> notes.add(new CaseRow.Note(
                        w.path("criterion").asText(),
                        w.path("kind").asText(),
                        w.path("text").asText())));
        Stage stage = Arrays.stream(Stage.values())
                .filter(s -> s.word().equals(n.get("stage").asText()))
                .findFirst()
                .orElseThrow(() -> new IOException("no stage"));
        return new CaseRow(
                source,
                CaseRow.Kind.JUDGED,
                "",
                n.get("case").asText(),
                n.path("hash").asText(),
                stage,
                n.path("resident").asText(),
                n.path("day").asText(),
                endings,
                list(n.path("waived")),
                missing,
                notes,
                list(n.path("errors")),
                n.path("doubts").asInt(),
                list(n.path("lost")),
                n.path("recorded").asText(),
                CaseRow.Course.valueOf(n.path("course")
                        .asText("before-wire")
                        .toUpperCase(java.util.Locale.ROOT)
                        .replace('-', '_')),
                DetailsJson.read(n),
                n.path("superseded").asBoolean());
    }

    private static String key(Ending e) {
        return switch (e) {
            case STOP -> "stop";
            case CAUTION -> "caution";
            case NOT_ASSESSED -> "notAssessed";
            case PASS -> "pass";
            case DOES_NOT_APPLY -> "doesNotApply";
            case FAILED -> "failed";
        };
    }

    private static List<String> list(JsonNode array) {
        List<String> all = new ArrayList<>();
        array.forEach(x -> all.add(x.asText()));
        return all;
    }

    private static void text(JsonGenerator g, String key, String value) throws IOException {
        if (!value.isEmpty()) {
            g.writeStringField(key, value);
        }
    }

    private static void texts(JsonGenerator g, String key, List<String> values) throws IOException {
        if (!values.isEmpty()) {
            g.writeArrayFieldStart(key);
            for (String v : values) {
                g.writeString(v);
            }
            g.writeEndArray();
        }
    }
}
