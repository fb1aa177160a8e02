package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.function.BiFunction;

/** Makes facts that differ from given ones, to ask what the rules would say then. */
public final class FactEdit {
    private FactEdit() {}

    /** The same fact with another value of one component. */
    public static CaseFact with(CaseFact fact, String component, Measured value) {
        if (Arrays.stream(fact.getClass().getRecordComponents())
                .noneMatch(c -> c.getName().equals(component))) {
            throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no " + component);
        }
        return changed(fact, (name, old) -> name.equals(component) ? value : old);
    }

    /**
     * The same fact with an object of its own for each number, so that it can be told which of them a verdict shows.
     */
    static CaseFact distinct(CaseFact fact) {
        return changed(fact, (name, old) -> old instanceof Measured m ? m.plus(0.0) : old);
    }

    private static CaseFact changed(CaseFact fact, BiFunction<String, Object, Object> change) {
        RecordComponent[] components = fact.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                values[i] = change.apply(
                        components[i].getName(), components[i].getAccessor().invoke(fact));
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return (CaseFact) fact.getClass().getConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("cannot make a " + fact.getClass().getSimpleName(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + fact.getClass().getSimpleName(), e);
        }
    }
}
