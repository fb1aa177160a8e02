package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import java.util.List;

/** All components of a type of fact that can be known or missing, in their order. */
final class Components {
    private static final ClassValue<Components> OF = new ClassValue<>() {
        @Override
        protected Components computeValue(Class<?> type) {
            return new Components(Need.all(type));
        }
    };

    private final List<Need> all;
    private final Need[] needs;

    private Components(List<Need> all) {
        this.all = all;
        this.needs = all.toArray(new Need[0]);
    }

    static Components of(Class<?> type) {
        return OF.get(type);
    }

    int indexOf(Need need) {
        return all.indexOf(need);
    }

    /** What {@code fact} says of each, in order. */
    Knowable[] of(CaseFact fact) {
        Knowable[] read = new Knowable[needs.length];
        for (int i = 0; i < read.length; i++) {
            read[i] = needs[i].of(fact);
        }
        return read;
    }

    /** The same with another value of one component. */
    Knowable[] with(Knowable[] read, Need need, Knowable other) {
        Knowable[] copy = read.clone();
        copy[indexOf(need)] = other;
        return copy;
    }
}
