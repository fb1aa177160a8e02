package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;

/**
 * One condition that rules put on one component of a fact.
 *
 * @param need the component
 * @param kind what is asked of it
 * @param limit full name of the threshold that a quantity is held against; empty for other kinds
 */
public record Term(Need need, Kind kind, String limit) {
    /** What can be asked of a component. */
    public enum Kind {
        KNOWN,
        DOES_NOT_APPLY,
        YES,
        NO,
        AT_MOST,
        ABOVE,
        AT_LEAST,
        BELOW;

        /** True for a quantity held against a threshold. */
        public boolean compares() {
            return ordinal() >= AT_MOST.ordinal();
        }
    }

    /** Whether it holds for a fact under these thresholds. */
    boolean holds(CaseFact fact, Limits limits) {
        return holds(kind, need.of(fact), kind.compares() ? limits.of(limit) : null);
    }

    /** Whether a condition of this kind holds for a component; {@code limit} is null where it takes none. */
    static boolean holds(Kind kind, CaseValue k, Limit limit) {
        return switch (kind) {
            case KNOWN -> k.known();
            case DOES_NOT_APPLY -> k.doesNotApply();
            case YES -> ((Answer) k).yes();
            case NO -> ((Answer) k).no();
            case AT_MOST -> ((Measured) k).atMost(limit);
            case ABOVE -> ((Measured) k).above(limit);
            case AT_LEAST -> ((Measured) k).atLeast(limit);
            case BELOW -> ((Measured) k).below(limit);
        };
    }
}
