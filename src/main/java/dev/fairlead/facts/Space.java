package dev.fairlead.facts;

import dev.fairlead.model.Measured;

/**
 * Room and need of the whole lower arch before treatment.
 *
 * @param largestShortage the larger of the two sides' shortages, mm
 * @param largestKnownShortage the same of those sides whose shortage is known, mm
 * @param totalShortage required less the three segments over the whole arch, mm
 * @param totalShortageSoFar the same; less the stated perimeter where a segment is missing, mm
 */
@StandsAt("/space")
public record Space(
        Place place,
        Measured largestShortage,
        Measured largestKnownShortage,
        Measured totalShortage,
        Measured totalShortageSoFar)
        implements CaseFact {}
