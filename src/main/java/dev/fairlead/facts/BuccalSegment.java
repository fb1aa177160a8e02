package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Canine and premolars of one side: room and need before treatment.
 *
 * @param side the side
 * @param windowOpen a second primary molar stands or both premolars are unerupted: there is leeway to use
 * @param available distal of the lateral incisor to mesial of the first molar, mm
 * @param required predicted or measured widths of canine and both premolars, mm
 * @param shortage what this side lacks, with half of what the incisors lack, mm; negative when there is room to spare
 * @param predictionSpread largest less smallest prediction of the methods that could be used, mm
 */
@StandsAt("/space")
public record BuccalSegment(
        Place place,
        Side side,
        Answer windowOpen,
        Measured available,
        Measured required,
        Measured shortage,
        Measured predictionSpread)
        implements CaseFact {}
