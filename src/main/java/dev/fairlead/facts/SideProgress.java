package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * How one side has moved so far.
 *
 * @param side the side
 * @param foldWireSpare wire left in the fold less what is still to be opened, mm
 * @param response space gained against expected, per cent; does not apply before two visits
 * @param molarDistal first molar tipped or driven distally at the last visit, else the farthest that was read, mm
 * @param molarDistalNow the same at the last visit alone, mm
 * @param pastPlan measured advance of the incisors less planned advance, mm: at the last visit, else the farthest read
 * @param pastPlanNow the same at the last visit alone, mm
 * @param pastPlanBySpace advance by the space gained on this side less planned advance, mm
 */
@StandsAt("/visits")
public record SideProgress(
        Place place,
        Side side,
        Measured foldWireSpare,
        Measured response,
        Measured molarDistal,
        Measured molarDistalNow,
        Measured pastPlan,
        Measured pastPlanNow,
        Measured pastPlanBySpace)
        implements CaseFact {}
