package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * How the whole front has moved so far.
 *
 * @param sidesApart absolute difference of cumulative activation left and right, mm
 * @param sidesApartSoFar the same; while the wire's size or an opening is missing, the least that it can be
 * @param sidedPlan the plan names a side that advances more
 * @param otherSideLeads cumulative activation of the side that is to advance less, less that of the side that is to
 *     advance more, mm
 * @param otherSideLeadsSoFar the same; while the wire's size or an opening is missing, the least that it can be
 * @param sinceRecheck most advance since a check of the inclination was last recorded, mm
 * @param recheckTold every visit since says that there was no check, and the advance at the last one was measured
 * @param monthsWithoutRootDecision months of treatment in which nobody recorded whether a film of the roots is needed;
 *     does not apply once somebody has
 * @param rootDecisionTold every visit says whether that was decided
 */
@StandsAt("/visits")
public record Progress(
        Place place,
        Measured sidesApart,
        Measured sidesApartSoFar,
        Answer sidedPlan,
        Measured otherSideLeads,
        Measured otherSideLeadsSoFar,
        Measured sinceRecheck,
        Answer recheckTold,
        Measured monthsWithoutRootDecision,
        Answer rootDecisionTold)
        implements CaseFact {}
