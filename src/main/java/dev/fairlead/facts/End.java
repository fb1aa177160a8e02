package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Holding arch, order of steps, alignment and recall at the end.
 *
 * @param smallestSpare the smaller of the two sides' spare, mm
 * @param leastKnownSpare the smallest spare that is known, against the customary sum where a side's need is not, mm
 * @param archStarted an impression was taken or a holding arch was placed
 * @param debonded brackets and wire are off
 * @param cemented the holding arch is cemented
 * @param cementBeforeDebond days from cementing to removal of the brackets; negative when the brackets came off first
 * @param irregularity sum of the contact displacements at the end, mm
 * @param inclination lower incisor to mandibular plane at the end, degrees
 * @param touchesCingula the holding arch touches the cingula
 * @param passive it lies passive
 * @param tissueClearance gap between arch and tissue, mm
 * @param monthsHeld months that the arch is in while second molars are not all in; does not apply before it is cemented
 * @param secondMolarsTold the state of a second molar that is not in is recorded
 * @param secondMolarRecall months between looks at the second molars
 * @param recall months between recalls
 * @param removalPoint the removal point is recorded
 */
@StandsAt("/holding")
public record End(
        Place place,
        Measured smallestSpare,
        Measured leastKnownSpare,
        Answer archStarted,
        Answer debonded,
        Answer cemented,
        Measured cementBeforeDebond,
        Measured irregularity,
        Measured inclination,
        Answer touchesCingula,
        Answer passive,
        Measured tissueClearance,
        Measured monthsHeld,
        Answer secondMolarsTold,
        Measured secondMolarRecall,
        Measured recall,
        Answer removalPoint)
        implements CaseFact {}
