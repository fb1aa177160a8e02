package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import java.lang.reflect.RecordComponent;
import java.util.function.Function;

/** Makes facts component by component, also such as differ from given ones, to ask what the rules would say then. */
public final class FactEdit {
    private FactEdit() {}

    /** A fact of that type, with the value that is given for each component. */
    public static CaseFact make(Class<? extends CaseFact> type, Function<RecordComponent, Object> value) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = value.apply(components[i]);
        }
        try {
            return type.getConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e);
        }
    }

    /** What a fact has for a component. */
    public static Object get(RecordComponent component, CaseFact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same fact with another value of one component. */
    public static CaseFact with(CaseFact fact, String component, Measured value) {
        boolean[] found = {false};
        CaseFact changed = make(fact.getClass(), c -> {
            boolean here = c.getName().equals(component);
            found[0] |= here;
            return here ? value : get(c, fact);
        });
        if (!found[0]) {
            throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no " + component);
        }
        return changed;
    }

    /**
     * The same fact with an object of its own for each number, so that it can be told which of them a verdict shows.
     */
    public static CaseFact distinct(CaseFact fact) {
        return make(fact.getClass(), c -> get(c, fact) instanceof Measured m ? m.plus(0.0) : get(c, fact));
    }
}
