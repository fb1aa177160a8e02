package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;

/**
 * The measured mesiodistal width of one tooth against published widths.
 *
 * @param tooth the tooth
 * @param width mesiodistal width, mm
 * @param mean published mean width of that tooth, mm
 * @param deviation distance from the mean width of that tooth in standard deviations, never negative
 */
@StandsAt("/teeth")
public record ToothWidth(Place place, Tooth tooth, Measured width, Measured mean, Measured deviation)
        implements CaseFact {}
