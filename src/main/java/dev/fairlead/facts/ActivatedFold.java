package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * One fold at one visit, opened there or not.
 *
 * @param visit number of the visit, from 1
 * @param side the side
 * @param opened this side's fold was opened at this visit
 * @param standOff passive front before the brackets on this side, mm
 * @param legsOutOfParallel deviation of the legs from parallel after opening, degrees
 */
@StandsAt("/visits")
public record ActivatedFold(
        Place place, int visit, Side side, Answer opened, Measured standOff, Measured legsOutOfParallel)
        implements CaseFact {}
