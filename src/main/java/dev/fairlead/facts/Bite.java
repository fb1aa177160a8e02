package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Overjet, overbite, sagittal relation and midline.
 *
 * @param overjet overjet before, mm; negative when reversed
 * @param overjetAfter overjet left after the planned advancement, mm
 * @param overjetSoFar the same; the most that can be left while the amount of a side is missing, mm
 * @param overbiteAfter overbite left after the planned advancement, mm; the most that can be left while a number that
 *     it rests on is missing
 * @param overbiteLeast the same by the steepest figures for what was not measured, mm
 * @param biteOnBrackets the upper incisors bite on the lower brackets or wire
 * @param overbiteWithoutWord overbite before, mm, where nothing is recorded of that; does not apply where something is
 * @param anb ANB, degrees
 * @param anteriorShift the jaw slides forward on closing
 * @param molarsClassThree the first molars are in class III on both sides
 * @param familyClassThree a class III relation is known in a parent, brother or sister
 * @param midlineOff absolute distance of the lower midline from the face, mm
 * @param midlineAfter the same after the planned amounts, mm
 * @param amountsDiffer left and right are planned to advance by different amounts
 * @param carriesOff the planned amounts carry the midline further off
 * @param wordAgrees the side that the plan names is the one that the amounts advance more
 */
@StandsAt("/bite")
public record Bite(
        Place place,
        Measured overjet,
        Measured overjetAfter,
        Measured overjetSoFar,
        Measured overbiteAfter,
        Measured overbiteLeast,
        Answer biteOnBrackets,
        Measured overbiteWithoutWord,
        Measured anb,
        Answer anteriorShift,
        Answer molarsClassThree,
        Answer familyClassThree,
        Measured midlineOff,
        Measured midlineAfter,
        Answer amountsDiffer,
        Answer carriesOff,
        Answer wordAgrees)
        implements CaseFact {}
