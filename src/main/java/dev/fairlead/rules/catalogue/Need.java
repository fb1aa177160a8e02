package dev.fairlead.rules.catalogue;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Components;
import dev.fairlead.model.CaseValue;
import java.lang.reflect.Method;
import org.jspecify.annotations.Nullable;

/**
 * A component of a fact without which a criterion cannot be judged.
 *
 * @param component its name
 * @param type {@code Measured}, {@code Answer} or {@code Fact}
 * @param at its number among those that can be known or unknown
 * @param mayLack true where a pass can stand without it, because another component bounds it: it is asked for where the
 *     bounds decide nothing; written with a question mark behind the name
 */
public record Need(String component, Class<?> type, int at, boolean mayLack) {
    /** The component of {@code type} as it is written; null when there is none that can be known or unknown. */
    public static @Nullable Need of(Class<? extends CaseFact> type, String written) {
        boolean mayLack = written.endsWith("?");
        String name = mayLack ? written.substring(0, written.length() - 1) : written;
        Method[] accessors = Components.accessors(type);
        for (int at = 0; at < accessors.length; at++) {
            if (accessors[at].getName().equals(name)) {
                return new Need(name, accessors[at].getReturnType(), at, mayLack);
            }
        }
        return null;
    }

    /** What {@code fact} says of it. */
    public CaseValue of(CaseFact fact) {
        return fact.components()[at];
    }
}
