package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * Insertion checklist of one side.
 *
 * @param side the side
 * @param endProud cut end proud of the tube, mm
 * @param cutEndCaught the cut-off piece was caught
 * @param bentBehind the wire is bent behind the tube
 * @param stopGap gap between fold and mesial of the tube, mm
 * @param underHook the fold sits under the hook
 * @param cheekSore the fold digs into the cheek
 */
@StandsAt("/insertion")
public record InsertedEnd(
        Place place,
        Side side,
        Measured endProud,
        Answer cutEndCaught,
        Answer bentBehind,
        Measured stopGap,
        Answer underHook,
        Answer cheekSore)
        implements CaseFact {}
