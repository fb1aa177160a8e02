package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * One fold opened at one visit.
 *
 * @param visit number of the visit, from 1
 * @param side the side
 * @param standOff passive front before the brackets on this side, mm
 * @param legsOutOfParallel deviation of the legs from parallel after opening, degrees
 */
@StandsAt("/visits")
public record ActivatedFold(Place place, int visit, Side side, Measured standOff, Measured legsOutOfParallel)
        implements CaseFact {}
