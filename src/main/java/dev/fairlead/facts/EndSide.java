package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Room on one side at the end.
 *
 * @param side the side
 * @param spare space at the end less the need predicted for this child, mm
 * @param spareOfSum where that need is unknown, space at the end less the customary sum of 23 mm; else does not apply
 */
@StandsAt("/holding")
public record EndSide(Place place, Side side, Measured spare, Measured spareOfSum) implements CaseFact {}
