package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.util.List;

/** Reads all components of a type of fact that can be known or missing, in one go. */
final class Components {
    private static final ClassValue<Components> OF = new ClassValue<>() {
        @Override
        protected Components computeValue(Class<?> type) {
            return new Components(type);
        }
    };

    private final List<Need> needs;
    private final MethodHandle all;

    private Components(Class<?> type) {
        needs = Need.all(type);
        int n = needs.size();
        MethodHandle array = MethodHandles.identity(Knowable[].class).asCollector(Knowable[].class, n);
        MethodHandle read = MethodHandles.filterArguments(array, 0, needs.stream().map(Need::accessor).toArray(MethodHandle[]::new));
        all = MethodHandles.permuteArguments(read, MethodType.methodType(Knowable[].class, CaseFact.class), new int[n]);
    }

    static Components of(Class<?> type) {
        return OF.get(type);
    }

    int indexOf(Need need) {
        return needs.indexOf(need);
    }

    /** What {@code fact} says of each, in order. */
    Knowable[] of(CaseFact fact) {
        try {
            return (Knowable[]) all.invokeExact(fact);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable t) {
            throw new IllegalStateException("cannot read " + fact.getClass(), t);
        }
    }
}
