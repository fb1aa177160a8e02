package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Whether the records can be believed.
 *
 * @param anteriorRatio six lower to six upper front teeth, per cent (Bolton)
 * @param modelsAge calendar months from the study models to the start of treatment, or to the day of the check before
 *     it; negative when they are dated later
 * @param filmAge the same of the lateral head film
 * @param modelsAgeSoFar the age of the models; while the day to which it is counted is open, the least that it can be
 * @param filmAgeSoFar the same of the film
 * @param duplicateLength duplicate error of lengths (Dahlberg), mm
 * @param duplicateAngle duplicate error of angles (Dahlberg), degrees
 * @param perimeterGap absolute difference between the sum of the segments and the stated perimeter, mm
 * @param panoramicRead a clinician read the panoramic film
 * @param missingTeeth it shows a missing lower canine or premolar
 * @param supernumerary it shows a supernumerary tooth in the lower arch
 * @param ectopic it shows an ectopic lower canine or premolar
 * @param caninePathNormal the lower permanent canines are on a normal path
 * @param infraoccludedMolar a lower primary molar is infraoccluded
 * @param ectopicFirstMolar a lower first permanent molar erupts under the primary molar
 */
@StandsAt("/films")
public record RecordsKept(
        Place place,
        Measured anteriorRatio,
        Measured modelsAge,
        Measured filmAge,
        Measured modelsAgeSoFar,
        Measured filmAgeSoFar,
        Measured duplicateLength,
        Measured duplicateAngle,
        Measured perimeterGap,
        Answer panoramicRead,
        Answer missingTeeth,
        Answer supernumerary,
        Answer ectopic,
        Answer caninePathNormal,
        Answer infraoccludedMolar,
        Answer ectopicFirstMolar)
        implements CaseFact {}
