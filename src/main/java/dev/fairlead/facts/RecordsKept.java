package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Whether the records can be believed.
 *
 * @param anteriorRatio six lower to six upper front teeth, per cent (Bolton)
 * @param modelsAge age of the study models on the day of the check, months
 * @param filmAge age of the lateral head film on the day of the check, months
 * @param duplicateLength duplicate error of lengths (Dahlberg), mm
 * @param duplicateAngle duplicate error of angles (Dahlberg), degrees
 * @param perimeterGap absolute difference between the sum of the segments and the stated perimeter, mm
 * @param panoramicRead a clinician read the panoramic film
 * @param missingTeeth it shows a missing lower canine or premolar
 * @param supernumerary it shows a supernumerary tooth in the lower arch
 * @param ectopic it shows an ectopic lower canine or premolar
 */
@StandsAt("/films")
public record RecordsKept(
        Place place,
        Measured anteriorRatio,
        Measured modelsAge,
        Measured filmAge,
        Measured duplicateLength,
        Measured duplicateAngle,
        Measured perimeterGap,
        Answer panoramicRead,
        Answer missingTeeth,
        Answer supernumerary,
        Answer ectopic)
        implements CaseFact {}
