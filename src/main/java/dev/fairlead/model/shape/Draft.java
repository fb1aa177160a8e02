package dev.fairlead.model.shape;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** A case record in the making: every fact is unknown until it is given. */
public final class Draft<R extends Record> {
    private record Where(Class<?> type, String pointer) {}

    /** Pointers of the components, and what stands there until it is given. */
    private record Form(RecordShape shape, String[] pointers, Object[] blanks) {}

    private static final int MOST_FORMS = 5000;
    private static final Map<Where, Form> FORMS = new ConcurrentHashMap<>();

    private final Class<R> type;
    private final Form form;
    private final Object[] values;

    private Draft(Class<R> type, Form form, Object[] values) {
        this.type = type;
        this.form = form;
        this.values = values;
    }

    /** Starts a record of which nothing is known; {@code pointer} says where in the case it stands. */
    public static <R extends Record> Draft<R> of(Class<R> type, String pointer) {
        Form form = form(type, pointer);
        return new Draft<>(type, form, form.blanks().clone());
    }

    /** Starts from a record that stands at {@code pointer}. */
    public static <R extends Record> Draft<R> of(R record, String pointer) {
        @SuppressWarnings("unchecked")
        Class<R> type = (Class<R>) record.getClass();
        Form form = form(type, pointer);
        Object[] values = new Object[form.blanks().length];
        for (FieldShape f : form.shape().fields()) {
            values[f.index()] = f.get(record);
        }
        return new Draft<>(type, form, values);
    }

    /** Gives a component its value, plain (a number, a word, a date) or as the record holds it. */
    public Draft<R> set(String key, @Nullable Object value) {
        FieldShape field = field(key);
        values[field.index()] = Values.of(field, form.pointers()[field.index()], value);
        return this;
    }

    /** Makes a component unknown again; of a section, every fact in it. */
    public Draft<R> forget(String key) {
        FieldShape field = field(key);
        Object blank = form.blanks()[field.index()];
        if (!field.kind().fact() && (field.about().required() || blank == null)) {
            throw new IllegalArgumentException(form.pointers()[field.index()] + " cannot be left out");
        }
        values[field.index()] = blank;
        return this;
    }

    /** The record as it stands now; the draft can be used further. */
    public R make() {
        return type.cast(form.shape().make(values.clone()));
    }

    private FieldShape field(String key) {
        FieldShape field = form.shape().field(key);
        if (field == null) {
            throw new IllegalArgumentException(type.getSimpleName() + " has no component " + key);
        }
        return field;
    }

    private static Form form(Class<? extends Record> type, String pointer) {
        Where where = new Where(type, pointer);
        Form known = FORMS.get(where);
        if (known == null) {
            RecordShape shape = RecordShape.of(type);
            int n = shape.fields().size();
            known = new Form(shape, new String[n], new Object[n]);
            for (FieldShape f : shape.fields()) {
                known.pointers()[f.index()] = pointer + "/" + RecordShape.escape(f.key());
                known.blanks()[f.index()] = RecordShape.blankOf(f, known.pointers()[f.index()]);
            }
            if (FORMS.size() < MOST_FORMS) {
                FORMS.put(where, known);
            }
        }
        return known;
    }
}
