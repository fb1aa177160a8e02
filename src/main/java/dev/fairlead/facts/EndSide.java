package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Room on one side at the end.
 *
 * @param side the side
 * @param spare space at the end less required space, mm; 23 mm stands for what is required where incisor widths are
 *     missing
 * @param beyondNeed the same against the prediction for this child alone, mm
 */
@StandsAt("/holding")
public record EndSide(Place place, Side side, Measured spare, Measured beyondNeed) implements CaseFact {}
