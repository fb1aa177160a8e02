package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Canine and premolars of one side: room and need before treatment.
 *
 * @param side the side
 * @param secondPrimaryStands the second primary molar stands: there is leeway to use
 * @param premolarIn the second premolar is in the mouth
 * @param premolarTold whether it is in the mouth is recorded, or follows from the primary molar
 * @param available distal of the lateral incisor to mesial of the first molar, mm
 * @param required predicted or measured widths of canine and both premolars, mm
 * @param shortage what this side lacks, with half of what the incisors lack, mm; negative when there is room to spare
 * @param predictionSpread largest less smallest prediction of the methods that could be used, mm
 * @param planSpare planned advance less the advance that this side needs on its own arch, mm
 * @param planSpareSoFar the same; by 2 mm of arch for each mm of advance where the arch was not measured, mm
 * @param noPlan no advance is planned on either side
 * @param sidesSwapped with left and right exchanged each side of the plan would come nearer to its need
 */
@StandsAt("/space")
public record BuccalSegment(
        Place place,
        Side side,
        Answer secondPrimaryStands,
        Answer premolarIn,
        Answer premolarTold,
        Measured available,
        Measured required,
        Measured shortage,
        Measured predictionSpread,
        Measured planSpare,
        Measured planSpareSoFar,
        Answer noPlan,
        Answer sidesSwapped)
        implements CaseFact {}
