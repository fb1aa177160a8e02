package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Room on one side at the end.
 *
 * @param side the side
 * @param spare space at the end less required space, mm
 */
@StandsAt("/holding")
public record EndSide(
        Place place,
        Side side,
        Measured spare)
                implements CaseFact {}
