package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.util.List;
import java.util.function.Function;

/** Reads all components of a type of fact that can be known or missing, in one go and as quickly as a call written by hand. */
final class Components {
    private static final ClassValue<Components> OF = new ClassValue<>() {
        @Override
        protected Components computeValue(Class<?> type) {
            return new Components(type);
        }
    };

    private final List<Need> needs;
    private final Function<CaseFact, Knowable>[] readers;

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Components(Class<?> type) {
        needs = Need.all(type);
        readers = needs.stream().map(n -> reader(type, n)).toArray(Function[]::new);
    }

    /** A method handle that is not a constant costs tens of nanoseconds a call; a function made of it costs one. */
    @SuppressWarnings("unchecked")
    private static Function<CaseFact, Knowable> reader(Class<?> type, Need need) {
        MethodHandles.Lookup lookup = MethodHandles.lookup();
        try {
            MethodHandle accessor = lookup.findVirtual(type, need.component(), MethodType.methodType(need.type()));
            return (Function<CaseFact, Knowable>) LambdaMetafactory.metafactory(lookup, "apply", MethodType.methodType(Function.class),
                    MethodType.methodType(Object.class, Object.class), accessor, MethodType.methodType(need.type(), type)).getTarget().invoke();
        } catch (Throwable t) {
            throw new IllegalStateException("cannot read " + need + " of " + type, t);
        }
    }

    static Components of(Class<?> type) {
        return OF.get(type);
    }

    int indexOf(Need need) {
        return needs.indexOf(need);
    }

    /** What {@code fact} says of each, in order. */
    Knowable[] of(CaseFact fact) {
        Knowable[] all = new Knowable[readers.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = readers[i].apply(fact);
        }
        return all;
    }
}
