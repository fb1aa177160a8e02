package dev.fairlead.rules.catalogue;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;

/** A component of a fact without which a criterion cannot be judged. */
public final class Need {
    /** Each component has one object, whoever asks for it. */
    private static final ClassValue<Map<String, Need>> KNOWN = new ClassValue<>() {
        @Override
        protected Map<String, Need> computeValue(Class<?> type) {
            return needs(type);
        }
    };

    private final String component;
    private final Class<?> type;
    private final int at;

    private Need(RecordComponent component, int at) {
        this.component = component.getName();
        this.type = component.getType();
        this.at = at;
    }

    /** The component of {@code type} with that name; null when there is none that can be known or unknown. */
    public static Need of(Class<? extends CaseFact> type, String component) {
        return KNOWN.get(type).get(component);
    }

    private static Map<String, Need> needs(Class<?> type) {
        Map<String, Need> needs = new LinkedHashMap<>();
        for (RecordComponent c : type.getRecordComponents()) {
            if (CaseValue.class.isAssignableFrom(c.getType())) {
                needs.put(c.getName(), new Need(c, needs.size()));
            }
        }
        return needs;
    }

    public String component() {
        return component;
    }

    /** {@code Measured}, {@code Answer} or {@code Fact}. */
    public Class<?> type() {
        return type;
    }

    /** Its number among those that can be known or unknown. */
    public int at() {
        return at;
    }

    /** What {@code fact} says of it. */
    public CaseValue of(CaseFact fact) {
        return fact.components()[at];
    }

    @Override
    public String toString() {
        return component;
    }
}
