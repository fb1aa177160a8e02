package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Whether the mouth is ready for steel.
 *
 * @param flexibleWireFirst the incisors were aligned with a flexible wire first
 * @param irregularityNow sum of the contact displacements now, mm
 * @param largestContactNow largest single displacement now, mm
 * @param irregularitySoFar sum of those displacements that are recorded, mm: the whole is no less
 * @param largestContactSoFar the largest that is recorded, mm
 * @param modelOverBands the arch is made on a model taken over the bands
 * @param buccalSegmentsFree nothing else binds the buccal segments
 */
@StandsAt("/hardware")
public record Readiness(
        Place place,
        Answer flexibleWireFirst,
        Measured irregularityNow,
        Measured largestContactNow,
        Measured irregularitySoFar,
        Measured largestContactSoFar,
        Answer modelOverBands,
        Answer buccalSegmentsFree)
        implements CaseFact {}
