package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Makes facts that differ from given ones in one number, to ask what the rules would say then. */
public final class FactEdit {
    private FactEdit() {}

    /** The same fact with another value of one component. */
    public static CaseFact with(CaseFact fact, String component, Measured value) {
        RecordComponent[] components = fact.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        boolean found = false;
        try {
            for (int i = 0; i < components.length; i++) {
                boolean here = components[i].getName().equals(component);
                found |= here;
                values[i] = here ? value : components[i].getAccessor().invoke(fact);
            }
            if (!found) {
                throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no " + component);
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
