package dev.fairlead.intake.write;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.model.shape.Values;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes a case as canonical JSON: keys in the order of the records, what is unknown left out; reading it gives an
 * equal case.
 */
public final class CaseWriter {
    private static final JsonFactory JSON = new JsonFactory();

    private CaseWriter() {}

    /** The case as JSON text that ends with a line break; the same case always gives the same text. */
    public static String json(Case c) {
        StringWriter out = new StringWriter();
        try (JsonGenerator g = JSON.createGenerator(out)) {
            g.setPrettyPrinter(printer());
            record(g, c);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.append('\n').toString();
    }

    /** The same on one line, which ends with a line break: a line of a file of many cases. */
    public static String line(Case c) {
        StringWriter out = new StringWriter(8192);
        try (JsonGenerator g = JSON.createGenerator(out)) {
            record(g, c);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.append('\n').toString();
    }

    /** Line breaks are those of Unix on every machine, and lists of readings stay on one line. */
    public static DefaultPrettyPrinter printer() {
        return new DefaultPrettyPrinter(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(new DefaultIndenter("  ", "\n"));
    }

    private static void record(JsonGenerator g, Record record) throws IOException {
        g.writeStartObject();
        for (FieldShape f : RecordShape.of(record.getClass()).fields()) {
            Object value = f.get(record);
            if (!absent(value)) {
                g.writeFieldName(f.key());
                value(g, f, value);
            }
        }
        g.writeEndObject();
    }

    /** True for what reads the same when it is left out. */
    private static boolean absent(Object value) {
        if (value instanceof CaseValue k) {
            return !k.known() && k.applies();
        }
        if (value instanceof List<?> l) {
            return l.isEmpty();
        }
        if (value instanceof Map<?, ?> m) {
            return m.isEmpty();
        }
        return value instanceof Record r
                && RecordShape.of(r.getClass()).fields().stream().allMatch(f -> absent(f.get(r)));
    }

    private static void value(JsonGenerator g, FieldShape f, Object value) throws IOException {
        if (value instanceof CaseValue k && !k.applies()) {
            g.writeString(CaseWords.DOES_NOT_APPLY);
        } else if (value instanceof Measured m) {
            quantity(g, f, m);
        } else if (value instanceof Answer a) {
            g.writeBoolean(a.yes());
        } else if (value instanceof Fact<?> fact) {
            plain(g, fact.get());
        } else if (value instanceof List<?> list) {
            g.writeStartArray();
            for (Object element : list) {
                record(g, (Record) element);
            }
            g.writeEndArray();
        } else if (value instanceof Map<?, ?> map) {
            g.writeStartObject();
            for (Map.Entry<Object, Object> e : new TreeMap<Object, Object>(map).entrySet()) {
                g.writeFieldName(e.getKey().toString());
                record(g, (Record) e.getValue());
            }
            g.writeEndObject();
        } else if (value instanceof Record r) {
            record(g, r);
        } else {
            plain(g, value);
        }
    }

    private static void plain(JsonGenerator g, Object value) throws IOException {
        if (value instanceof Integer i) {
            g.writeNumber(i);
        } else if (value instanceof Tooth t) {
            g.writeNumber(t.number());
        } else {
            g.writeString(value instanceof Choice c ? c.word() : value.toString());
        }
    }

    private static void quantity(JsonGenerator g, FieldShape f, Measured m) throws IOException {
        double[] repeats = m.repeats();
        boolean usual = m.recordedWith(Values.assumedError(f.about(), m.value(), repeats.length));
        if (!usual) {
            g.writeStartObject();
            g.writeFieldName(repeats.length > 0 ? "repeats" : "value");
        }
        if (repeats.length > 0) {
            g.writeStartArray();
            for (double r : repeats) {
                number(g, m.unit().to(f.about().unit(), r));
            }
            g.writeEndArray();
        } else {
            number(g, m.unit().to(f.about().unit(), m.value()));
        }
        if (!usual) {
            g.writeFieldName("error");
            number(g, m.unit().to(f.about().unit(), m.recordedError()));
            g.writeEndObject();
        }
    }

    private static void number(JsonGenerator g, double value) throws IOException {
        g.writeNumber(
                new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString());
    }
}
