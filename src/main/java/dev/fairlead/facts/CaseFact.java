package dev.fairlead.facts;

import dev.fairlead.model.CaseValue;

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

    /**
     * All components that can be known or missing, in the order of the record; throws when one was not given by whoever
     * built the fact.
     */
    default CaseValue[] components() {
        return Components.of(this);
    }
}
