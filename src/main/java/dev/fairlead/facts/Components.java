package dev.fairlead.facts;

import dev.fairlead.model.CaseValue;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Reads from facts what can be known or missing in them; which components these are, the records themselves tell. */
public final class Components {
    private static final Object[] NO_ARGUMENTS = {};

    private static final ClassValue<Method[]> ACCESSORS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(c -> CaseValue.class.isAssignableFrom(c.getType()))
                    .map(RecordComponent::getAccessor)
                    // public as they are: spares the look at who asks
                    .peek(accessor -> accessor.setAccessible(true))
                    .toArray(Method[]::new);
        }
    };

    private Components() {}

    /** What reads each of them, in the order of the record; not to be changed. */
    public static Method[] accessors(Class<? extends CaseFact> type) {
        return ACCESSORS.get(type);
    }

    static CaseValue[] of(CaseFact fact) {
        Method[] accessors = accessors(fact.getClass());
        CaseValue[] components = new CaseValue[accessors.length];
        for (int i = 0; i < components.length; i++) {
            components[i] = read(accessors[i], fact);
        }
        return components;
    }

    private static CaseValue read(Method accessor, CaseFact fact) {
        Object value;
        try {
            value = accessor.invoke(fact, NO_ARGUMENTS);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        if (value == null) {
            String type = fact.getClass().getSimpleName();
            throw new IllegalStateException(type + "." + accessor.getName() + " was not given: write ."
                    + accessor.getName() + "(...) where measure.gather builds " + type);
        }
        return (CaseValue) value;
    }
}
