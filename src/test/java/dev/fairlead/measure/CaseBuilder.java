package dev.fairlead.measure;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.model.shape.Values;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Builds a case from JSON Pointers and values; whatever is not set stays unknown. */
public final class CaseBuilder {
    /** Says that a fact does not apply. */
    public static final Object NOT_APPLICABLE = new Object();

    private static final Object REMOVED = new Object();

    private final TreeMap<String, Object> values = new TreeMap<>();

    /** Sets a number, several readings (double[]), a word, a date, a boolean, or {@link #NOT_APPLICABLE}. */
    public CaseBuilder set(String pointer, Object value) {
        values.put(pointer, value);
        return this;
    }

    /** Makes a fact unknown; the record that it stood in stays. */
    public CaseBuilder without(String pointer) {
        values.replace(pointer, REMOVED);
        return this;
    }

    /** Drops a list entry or a whole section. */
    public CaseBuilder drop(String prefix) {
        values.keySet().removeIf(p -> p.startsWith(prefix));
        return this;
    }

    /** A builder of the same values, to be changed apart from this one. */
    public CaseBuilder copy() {
        CaseBuilder other = new CaseBuilder();
        other.values.putAll(values);
        return other;
    }

    /** What is set, by pointer. */
    public Map<String, Object> values() {
        Map<String, Object> set = new LinkedHashMap<>(values);
        set.values().removeIf(v -> v == REMOVED);
        return set;
    }

    public Case build() {
        return (Case) record(RecordShape.ofCase(), "");
    }

    private Record record(RecordShape shape, String at) {
        return shape.make(shape.fields().stream()
                .map(f -> value(f, at + "/" + RecordShape.escape(f.key())))
                .toArray());
    }

    private Object value(FieldShape f, String at) {
        Object v = values.get(at) == REMOVED ? null : values.get(at);
        switch (f.kind()) {
            case RECORD:
                return record(f.nested(), at);
            case LIST:
                return IntStream.range(0, 100)
                        .filter(i -> any(at + "/" + i + "/"))
                        .mapToObj(i -> record(f.nested(), at + "/" + i))
                        .toList();
            case TOOTH_MAP:
                Map<Tooth, Record> teeth = new LinkedHashMap<>();
                IntStream.range(11, 86)
                        .filter(n -> Tooth.exists(n) && any(at + "/" + n + "/"))
                        .forEach(n -> teeth.put(Tooth.of(n), record(f.nested(), at + "/" + n)));
                return teeth;
            case FORMAT:
                return 1;
            case ID:
                return v == null ? "test" : v;
            default:
                if (at.equals("/stage") && v == null) {
                    return Fact.of(Stage.HOLDING);
                }
                return v == null ? RecordShape.blankOf(f, at) : fact(f, at, v);
        }
    }

    private boolean any(String prefix) {
        String next = values.ceilingKey(prefix);
        return next != null && next.startsWith(prefix);
    }

    private static Object fact(FieldShape f, String at, Object v) {
        boolean never = v == NOT_APPLICABLE;
        return switch (f.kind()) {
            case QUANTITY -> never ? Measured.notApplicable() : quantity(f, at, v);
            case ANSWER -> never ? Answer.NOT_APPLICABLE : Answer.of((Boolean) v);
            case DATE ->
                never ? Fact.notApplicable() : Fact.of(v instanceof LocalDate d ? d : LocalDate.parse((String) v));
            case TOOTH -> Fact.of(Tooth.of((Integer) v));
            case TEXT -> never ? Fact.notApplicable() : Fact.of(v);
            case CHOICE ->
                never
                        ? Fact.notApplicable()
                        : Fact.of(f.choices().stream()
                                .map(Choice.class::cast)
                                .filter(c -> c.word().equals(v))
                                .findFirst()
                                .orElseThrow(() -> new IllegalArgumentException(v + " at " + at)));
            default -> throw new IllegalStateException(at);
        };
    }

    private static Measured quantity(FieldShape f, String at, Object v) {
        double[] readings = v instanceof double[] d ? d : new double[] {((Number) v).doubleValue()};
        double mean = java.util.Arrays.stream(readings).average().orElseThrow();
        double sd = Values.assumedError(f.about(), mean, readings.length);
        return Measured.of(mean, f.about().unit(), at, sd, readings.length > 1 ? readings : new double[0]);
    }

    /** Incisors of the given widths from 42 to 32, mm. */
    public CaseBuilder incisors(double... widths) {
        List<Tooth> teeth = Tooth.LOWER_INCISORS;
        for (int i = 0; i < widths.length; i++) {
            set("/teeth/" + teeth.get(i) + "/width", widths[i]);
        }
        return this;
    }
}
