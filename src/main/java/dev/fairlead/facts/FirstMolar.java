package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/**
 * One lower first molar: eruption, band, tube.
 *
 * @param side left 36, right 46
 * @param erupted it is in the mouth
 * @param cemented its band is cemented
 * @param loose its band is loose
 * @param seated the margins of its band are seated
 * @param hook its tube carries a hook
 * @param wireIn the steel wire is in the mouth
 * @param tubeClearance inner size of the tube less wire size, mm
 * @param secondMolarAngle angle between the axes of first and second molar, degrees
 */
@StandsAt("/hardware")
public record FirstMolar(
        Place place,
        Side side,
        Answer erupted,
        Answer cemented,
        Answer loose,
        Answer seated,
        Answer hook,
        Answer wireIn,
        Measured tubeClearance,
        Measured secondMolarAngle)
        implements CaseFact {}
