package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Whether what is recorded of the visits contradicts itself. Distances beyond what can be true are given in standard
 * errors of the readings; all do not apply while no visit is logged.
 *
 * @param datesInOrder insertion and visits are dated one after another
 * @param standOffApart how far the stand-off of an opened fold lies beyond what its opening can have made
 * @param standOffApartSoFar the same of those readings that are there
 * @param closedSideRose how far the stand-off of a side rose at a visit that is said not to have opened it
 * @param advanceApart how far the measured advance lies beyond what the space gained can mean
 * @param advanceApartSoFar the same of those readings that are there
 */
@StandsAt("/visits")
public record VisitReadings(
        Place place,
        Answer datesInOrder,
        Measured standOffApart,
        Measured standOffApartSoFar,
        Measured closedSideRose,
        Measured advanceApart,
        Measured advanceApartSoFar)
        implements CaseFact {}
