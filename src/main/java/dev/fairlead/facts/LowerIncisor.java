package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;

/**
 * One lower permanent incisor: eruption, gingiva, bracket.
 *
 * @param tooth 42, 41, 31 or 32
 * @param erupted it is in the mouth
 * @param gingivaThickness labial gingival thickness, mm
 * @param keratinised labial keratinised gingiva, mm
 * @param recession labial recession, mm
 * @param periodontalOpinion a periodontal opinion is recorded
 * @param opinionAllows the opinion says that the incisors may be advanced; no without one
 * @param opinionForbids the opinion says that they must not be advanced; no without one
 * @param advancePlanned an advance is planned on either side
 * @param bonded its bracket is bonded
 * @param loose its bracket is loose
 * @param wireIn the steel wire is in the mouth
 * @param slotClearance slot height less wire size, mm
 */
@StandsAt("/teeth")
public record LowerIncisor(
        Place place,
        Tooth tooth,
        Answer erupted,
        Measured gingivaThickness,
        Measured keratinised,
        Measured recession,
        Answer periodontalOpinion,
        Answer opinionAllows,
        Answer opinionForbids,
        Answer advancePlanned,
        Answer bonded,
        Answer loose,
        Answer wireIn,
        Measured slotClearance)
        implements CaseFact {}
