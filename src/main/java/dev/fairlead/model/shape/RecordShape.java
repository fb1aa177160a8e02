package dev.fairlead.model.shape;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The components of one case record, and how to make the record. */
public final class RecordShape {
    private static final Map<Class<?>, RecordShape> SHAPES = new ConcurrentHashMap<>();

    private final Class<? extends Record> type;
    private final List<FieldShape> fields;
    private final Map<String, FieldShape> byKey = new LinkedHashMap<>();
    private final ReflectedRecord code;
    private final Map<String, Record> blanks = new ConcurrentHashMap<>();

    private RecordShape(Class<? extends Record> type) {
        this.type = type;
        code = new ReflectedRecord(type);
        fields = List.of(code.fields());
        for (FieldShape f : fields) {
            byKey.put(f.key(), f);
        }
    }

    /** The shape of a case record class; made once. */
    public static RecordShape of(Class<? extends Record> type) {
        RecordShape known = SHAPES.get(type);
        if (known == null) {
            known = new RecordShape(type);
            SHAPES.put(type, known);
        }
        return known;
    }

    /** The shape of a whole case. */
    public static RecordShape ofCase() {
        return of(Case.class);
    }

    public Class<? extends Record> type() {
        return type;
    }

    public List<FieldShape> fields() {
        return fields;
    }

    /** The component with that key in a file, or null. */
    public @Nullable FieldShape field(String key) {
        return byKey.get(key);
    }

    /** Makes the record of its component values in order. */
    public Record make(Object[] values) {
        return code.make(values);
    }

    /** Reads one component of a record of this class. */
    Object get(Record record, FieldShape field) {
        return code.get(record, field.index());
    }

    /**
     * A record of which every fact is unknown; {@code pointer} says where it would stand. Required bare values are
     * null.
     */
    public Record blank(String pointer) {
        Record known = blanks.get(pointer);
        if (known == null) {
            Object[] values = new Object[fields.size()];
            for (FieldShape f : fields) {
                values[f.index()] = blankOf(f, pointer + "/" + escape(f.key()));
            }
            known = make(values);
            if (blanks.size() < 2000) {
                blanks.put(pointer, known);
            }
        }
        return known;
    }

    /** What stands for an absent component at {@code pointer}. */
    public static @Nullable Object blankOf(FieldShape field, String pointer) {
        return switch (field.kind()) {
            case QUANTITY -> Measured.unknown(pointer);
            case ANSWER -> Answer.unknown(pointer);
            case CHOICE, DATE, TEXT, TOOTH -> Fact.unknown(pointer);
            case RECORD -> field.nested().blank(pointer);
            case LIST -> List.of();
            case TOOTH_MAP -> Map.of();
            case FORMAT -> 0;
            case ID -> null;
        };
    }

    /** Escapes a key for a JSON Pointer (RFC 6901). */
    public static String escape(String key) {
        return key.indexOf('~') < 0 && key.indexOf('/') < 0
                ? key
                : key.replace("~", "~0").replace("/", "~1");
    }
}
