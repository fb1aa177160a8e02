package dev.fairlead.measure;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;

/** The knowable components of a fact by name. */
public final class Knowns {
    private Knowns() {}

    public static Map<String, CaseValue> of(CaseFact fact) {
        Map<String, CaseValue> all = new LinkedHashMap<>();
        for (RecordComponent c : fact.getClass().getRecordComponents()) {
            if (CaseValue.class.isAssignableFrom(c.getType())) {
                try {
                    all.put(c.getName(), (CaseValue) c.getAccessor().invoke(fact));
                } catch (ReflectiveOperationException e) {
                    throw new LinkageError(c.getName(), e);
                }
            }
        }
        return all;
    }
}
