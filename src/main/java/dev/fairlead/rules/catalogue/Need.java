package dev.fairlead.rules.catalogue;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A component of a fact without which a criterion cannot be judged. With a question mark behind its name it is one that
 * a pass may lack, because another component bounds it: it is asked for where the bounds decide nothing.
 */
public final class Need {
    /** Each component has one object, whoever asks for it. */
    private static final ClassValue<Map<String, Need>> KNOWN = new ClassValue<>() {
        @Override
        protected Map<String, Need> computeValue(Class<?> type) {
            return needs(type);
        }
    };

    private static final String MAY_LACK = "?";

    private final String component;
    private final Class<?> type;
    private final int at;
    private final boolean mayLack;

    private Need(RecordComponent component, int at, boolean mayLack) {
        this.component = component.getName();
        this.type = component.getType();
        this.at = at;
        this.mayLack = mayLack;
    }

    /**
     * The component of {@code type} with that name, a question mark behind it or none; null when there is none that can
     * be known or unknown.
     */
    public static @Nullable Need of(Class<? extends CaseFact> type, String component) {
        return KNOWN.get(type).get(component);
    }

    private static Map<String, Need> needs(Class<?> type) {
        Map<String, Need> needs = new LinkedHashMap<>();
        for (RecordComponent c : type.getRecordComponents()) {
            if (CaseValue.class.isAssignableFrom(c.getType())) {
                int at = needs.size() / 2;
                needs.put(c.getName(), new Need(c, at, false));
                needs.put(c.getName() + MAY_LACK, new Need(c, at, true));
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

    /** True where a pass can stand without it. */
    public boolean mayLack() {
        return mayLack;
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
