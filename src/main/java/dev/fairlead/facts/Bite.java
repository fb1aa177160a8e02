package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Overjet, overbite, sagittal relation and midline.
 *
 * @param overjet overjet before, mm; negative when reversed
 * @param overjetAfter overjet left after the planned advancement, mm
 * @param overbiteAfter overbite left after the planned advancement, mm
 * @param anb ANB, degrees
 * @param anteriorShift the jaw slides forward on closing
 * @param midlineOff absolute distance of the lower midline from the face, mm
 * @param sidedPlan the plan names a side that advances more
 * @param carriesBack that side is the one to which the midline is shifted, so that the front moves back to the face
 */
@StandsAt("/bite")
public record Bite(
        Place place,
        Measured overjet,
        Measured overjetAfter,
        Measured overbiteAfter,
        Measured anb,
        Answer anteriorShift,
        Measured midlineOff,
        Answer sidedPlan,
        Answer carriesBack)
        implements CaseFact {}
