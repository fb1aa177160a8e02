package dev.fairlead.facts;

import dev.fairlead.model.CaseValue;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Reads from facts what can be known or missing in them; which components these are, the records themselves tell. */
public final class Components {
    /** The class that the build makes of the facts (src/build/CompileFacts.java), beside this one. */
    public static final String COMPILED = "CompiledComponents";

    private static final ClassValue<Method[]> ACCESSORS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(c -> CaseValue.class.isAssignableFrom(c.getType()))
                    .map(RecordComponent::getAccessor)
                    .toArray(Method[]::new);
        }
    };

    private Components() {}

    /** Reads all components of a fact, in the order of its record. */
    interface Reader {
        CaseValue[] of(CaseFact fact);
    }

    /** Apart, for the build asks for accessors before it has made this. */
    private static final class All {
        static final Reader READER = made();

        private static Reader made() {
            try {
                return Class.forName(Components.class.getPackageName() + "." + COMPILED)
                        .asSubclass(Reader.class)
                        .getConstructor()
                        .newInstance();
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(COMPILED + " was not made: run Maven's process-classes", e);
            }
        }
    }

    /** The methods that read each of them, in the order of the record; not to be changed. */
    public static Method[] accessors(Class<? extends CaseFact> type) {
        return ACCESSORS.get(type);
    }

    static CaseValue[] of(CaseFact fact) {
        CaseValue[] components = All.READER.of(fact);
        for (int i = 0; i < components.length; i++) {
            if (components[i] == null) {
                String type = fact.getClass().getSimpleName();
                String name = accessors(fact.getClass())[i].getName();
                throw new IllegalStateException(type + "." + name + " was not given: write ." + name
                        + "(...) where measure.gather builds " + type);
            }
        }
        return components;
    }
}
