package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;

/** A component of a fact without which a criterion cannot be judged. */
public final class Need {
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
        for (RecordComponent c : type.getRecordComponents()) {
            if (c.getName().equals(component) && Knowable.class.isAssignableFrom(c.getType())) {
                try {
                    return new Need(component, c.getType(), MethodHandles.publicLookup().unreflect(c.getAccessor())
                            .asType(MethodType.methodType(Knowable.class, CaseFact.class)));
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException("cannot read " + component + " of " + type, e);
                }
            }
        }
        return null;
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
