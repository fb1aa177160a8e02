package dev.fairlead.facts;

import dev.fairlead.model.CaseValue;
import org.jspecify.annotations.Nullable;

/**
 * One record that rules match on; all of its other components are {@code Measured} or {@code Answer}, or identify it.
 */
public sealed interface CaseFact
        permits ToothWidth,
                Antimeres,
                RecordsKept,
                LowerIncisor,
                FirstMolar,
                BuccalSegment,
                Space,
                IncisorPosition,
                Bite,
                Mouth,
                Readiness,
                Wire,
                FoldMade,
                BenchWork,
                PlannedActivation,
                InsertedEnd,
                Inserted,
                ActivatedFold,
                VisitSeen,
                VisitReadings,
                SideProgress,
                Progress,
                EndSide,
                End {
    Place place();

    /** The type of that simple name; null when there is none. */
    @SuppressWarnings("unchecked") // those that are permitted are facts
    static @Nullable Class<? extends CaseFact> type(String name) {
        for (Class<?> type : CaseFact.class.getPermittedSubclasses()) {
            if (type.getSimpleName().equals(name)) {
                return (Class<? extends CaseFact>) type;
            }
        }
        return null;
    }

    /**
     * All components that can be known or missing, in the order of the record; throws when one was not given by whoever
     * built the fact.
     */
    default CaseValue[] components() {
        return Components.of(this);
    }
}
