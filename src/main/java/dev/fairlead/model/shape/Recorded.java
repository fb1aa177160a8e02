package dev.fairlead.model.shape;

import dev.fairlead.model.CaseValue;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Tells whether anything is recorded in a part of a case; what is planned, unknown or does not apply is no record. */
public final class Recorded {
    private Recorded() {}

    /** True when a fact of this record, or of one below it, is known and is no variable of the plan. */
    public static boolean any(Record record) {
        RecordShape shape = RecordShape.of(record.getClass());
        for (FieldShape field : shape.fields()) {
            if (!field.about().planned() && holds(shape.get(record, field))) {
                return true;
            }
        }
        return false;
    }

    private static boolean holds(Object value) {
        if (value instanceof CaseValue fact) {
            return fact.known();
        }
        Collection<?> below =
                value instanceof List<?> list ? list : value instanceof Map<?, ?> map ? map.values() : null;
        if (below == null) {
            return value instanceof Record record && any(record);
        }
        for (Object each : below) {
            if (each instanceof Record record && any(record)) {
                return true;
            }
        }
        return false;
    }
}
