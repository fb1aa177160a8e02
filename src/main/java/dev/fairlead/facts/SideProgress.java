package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * How one side has moved so far.
 *
 * @param side the side
 * @param foldWireSpare wire left in the fold less what is still to be opened, mm
 * @param response space gained against expected, per cent; does not apply before two activations
 * @param molarDistal first molar tipped or driven distally, mm
 * @param pastPlan cumulative advance less planned advance, mm
 */
@StandsAt("/visits")
public record SideProgress(
        Place place, Side side, Measured foldWireSpare, Measured response, Measured molarDistal, Measured pastPlan)
        implements CaseFact {}
