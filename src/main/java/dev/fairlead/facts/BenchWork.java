package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * How the wire was made as a whole.
 *
 * @param midlineMarked the midline is marked
 * @param otherSideMarkedSeated the second side was marked with the first seated
 * @param sidesDiffer largest left-right difference of marks and folds, mm
 * @param sidedPlan the plan names a side that advances more
 * @param passiveGap largest gap at a bracket with the wire passive on the model, mm
 * @param rebends how often the most-bent spot was bent back
 */
@StandsAt("/bench")
public record BenchWork(
        Place place,
        Answer midlineMarked,
        Answer otherSideMarkedSeated,
        Measured sidesDiffer,
        Answer sidedPlan,
        Measured passiveGap,
        Measured rebends)
        implements CaseFact {}
