package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;

/**
 * The same tooth left and right.
 *
 * @param left the left tooth of the pair
 * @param difference absolute difference of the two widths, mm
 */
@StandsAt("/teeth")
public record Antimeres(Place place, Tooth left, Measured difference) implements CaseFact {}
