package dev.fairlead.facts;

import dev.fairlead.model.Measured;

/**
 * Room and need of the whole lower arch before treatment.
 *
 * @param largestShortage the larger of the two sides' shortages, mm
 * @param totalShortage required less available over the whole arch, mm
 */
@StandsAt("/space")
public record Space(Place place, Measured largestShortage, Measured totalShortage) implements CaseFact {}
