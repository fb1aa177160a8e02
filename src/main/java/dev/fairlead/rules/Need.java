package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A component of a fact without which a criterion cannot be judged. */
public final class Need {
    /** Each component has one object, whoever asks for it. */
    private static final ClassValue<Map<String, Need>> KNOWN = new ClassValue<>() {
        @Override
        protected Map<String, Need> computeValue(Class<?> type) {
            return needs(type);
        }
    };

    /** So often a component is read by reflection before a function of its own is made, which takes as long as some hundred such reads. */
    private static final int FEW = 12;

    private final String component;
    private final Method accessor;
    private Function<CaseFact, Knowable> reader;
    private int times;

    private Need(RecordComponent component) {
        this.component = component.getName();
        this.accessor = component.getAccessor();
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
                needs.put(c.getName(), new Need(c));
            }
        }
        return needs;
    }

    public String component() {
        return component;
    }

    /** {@code Measured}, {@code Answer} or {@code Fact}. */
    public Class<?> type() {
        return accessor.getReturnType();
    }

    /** What {@code fact} says of it. */
    public Knowable of(CaseFact fact) {
        Function<CaseFact, Knowable> quick = reader;
        if (quick != null) {
            return quick.apply(fact);
        }
        // threads that count at once only make it a little later, or twice
        if (times++ > FEW) {
            reader = reader();
        }
        try {
            return (Knowable) accessor.invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    /** A method handle that is not a constant costs tens of nanoseconds a call; a function made of it costs one. */
    @SuppressWarnings("unchecked")
    private Function<CaseFact, Knowable> reader() {
        MethodHandles.Lookup lookup = MethodHandles.lookup();
        try {
            MethodHandle handle = lookup.unreflect(accessor);
            return (Function<CaseFact, Knowable>) LambdaMetafactory.metafactory(lookup, "apply", MethodType.methodType(Function.class),
                    MethodType.methodType(Object.class, Object.class), handle, handle.type()).getTarget().invoke();
        } catch (Throwable t) {
            throw new IllegalStateException("cannot read " + component, t);
        }
    }

    @Override
    public String toString() {
        return component;
    }
}
