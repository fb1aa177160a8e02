package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
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
    private final MethodHandle accessor;

    private Need(String component, Class<?> type, MethodHandle accessor) {
        this.component = component;
        this.type = type;
        this.accessor = accessor;
    }

    /** The component of {@code type} with that name; null when there is none that can be known or unknown. */
    static Need of(Class<? extends CaseFact> type, String component) {
        return KNOWN.get(type).get(component);
    }

    /** All components of {@code type} that can be known or unknown, in its order. */
    static List<Need> all(Class<?> type) {
        return List.copyOf(KNOWN.get(type).values());
    }

    private static Map<String, Need> needs(Class<?> type) {
        Map<String, Need> needs = new LinkedHashMap<>();
        for (RecordComponent c : type.getRecordComponents()) {
            if (Knowable.class.isAssignableFrom(c.getType())) {
                try {
                    needs.put(c.getName(), new Need(c.getName(), c.getType(), MethodHandles.publicLookup().unreflect(c.getAccessor())
                            .asType(MethodType.methodType(Knowable.class, CaseFact.class))));
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException("cannot read " + c.getName() + " of " + type, e);
                }
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

    /** What {@code fact} says of it. */
    public Knowable of(CaseFact fact) {
        try {
            return (Knowable) accessor.invokeExact(fact);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable t) {
            throw new IllegalStateException("cannot read " + component, t);
        }
    }

    @Override
    public String toString() {
        return component;
    }
}
