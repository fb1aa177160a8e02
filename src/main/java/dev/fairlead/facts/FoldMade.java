package dev.fairlead.facts;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * One fold as made.
 *
 * @param side the side
 * @param firstBendOff first bend mark distal to where the beak in hand needs it, mm
 * @param lengthOff absolute difference between fold length and tube length, mm
 * @param heightOver fold height less the height that the planned beak gives, mm
 * @param bendRadius inner radius of the tighter bend, mm
 * @param outOfSquare deviation from square to the arch and parallel to the occlusal plane, degrees
 * @param legsOutOfParallel deviation of the legs from parallel, degrees
 * @param clearGingiva gap to the gingiva, mm
 * @param clearCheek room to the cheek with the swing at activation taken off, mm
 * @param clearCheekSoFar the same; without the swing where that is not known, mm
 */
@StandsAt("/bench")
public record FoldMade(
        Place place,
        Side side,
        Measured firstBendOff,
        Measured lengthOff,
        Measured heightOver,
        Measured bendRadius,
        Measured outOfSquare,
        Measured legsOutOfParallel,
        Measured clearGingiva,
        Measured clearCheek,
        Measured clearCheekSoFar)
        implements CaseFact {}
