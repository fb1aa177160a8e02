package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * How the whole front has moved so far.
 *
 * @param sidesApart absolute difference of cumulative activation left and right, mm
 * @param sidedPlan the plan names a side that advances more
 * @param otherSideLeads cumulative activation of the side that is to advance less, less that of the side that is to
 *     advance more, mm
 * @param sinceRecheck advance since the inclination was last measured, mm
 */
@StandsAt("/visits")
public record Progress(
        Place place, Measured sidesApart, Answer sidedPlan, Measured otherSideLeads, Measured sinceRecheck)
        implements CaseFact {}
