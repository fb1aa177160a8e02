package dev.fairlead.model.shape;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Takes the errors of measurement out of a case, on which no verdict rests: following them is what takes long. */
public final class Exact {
    private Exact() {}

    /** The case as if nothing in it had an error; the single readings stay. */
    public static Case of(Case c) {
        return (Case) record(c);
    }

    private static Record record(Record record) {
        RecordShape shape = RecordShape.of(record.getClass());
        Object[] values = new Object[shape.fields().size()];
        boolean changed = false;
        for (FieldShape f : shape.fields()) {
            Object value = shape.get(record, f);
            values[f.index()] = value(value);
            changed |= values[f.index()] != value;
        }
        return changed ? shape.make(values) : record;
    }

    private static Object value(Object value) {
        if (value instanceof Measured m) {
            return m.sd() == 0 ? m : m.withoutError();
        }
        if (value instanceof Record r) {
            return record(r);
        }
        if (value instanceof List<?> l && !l.isEmpty()) {
            List<Object> all = new ArrayList<>(l);
            all.replaceAll(Exact::value);
            return all;
        }
        if (value instanceof Map<?, ?> m && !m.isEmpty()) {
            Map<Object, Object> all = new HashMap<>(m);
            all.replaceAll((key, r) -> value(r));
            return all;
        }
        return value;
    }
}
