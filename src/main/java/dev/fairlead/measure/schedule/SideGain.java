package dev.fairlead.measure.schedule;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * Room that one side gains while the incisors come forward as a block, and back. The chord from first molar to lateral
 * incisor runs at about 30 degrees to the midline, so it grows by cos 30 = 0.866 mm for each mm, both sides together by
 * 1.73 mm. Arches were seen to gain 1.2 to 2.1 mm (Mutinelli 2000 by the form of the arch; groups of growing children
 * lie within): that span is taken as two standard deviations to either side, and every number that rests on the gain
 * carries it.
 */
public final class SideGain {
    /** Growth of one side's chord per mm of advance. */
    public static final double PER_ADVANCE = Math.sqrt(3) / 2;

    /** Least and most room gained on one side by a millimetre of advance, mm: half of 1.2 to 2.1 mm of arch. */
    static final double LEAST = 0.6;

    static final double MOST = 1.05;

    /** One standard deviation of the gain per mm of advance. */
    static final double SD = (MOST - LEAST) / 4;

    private static final String SOURCE = "arch gained by a millimetre of advance, spread between children";

    private SideGain() {}

    /** Room gained on one side by an advance, mm. */
    public static Measured room(Measured advance) {
        return advance.known() ? spread(advance.times(PER_ADVANCE), advance.value() * SD) : advance;
    }

    /** Advance that goes with the room gained on one side, mm. */
    public static Measured advance(Measured room) {
        return room.known()
                ? spread(room.times(1 / PER_ADVANCE), -room.value() * SD / (PER_ADVANCE * PER_ADVANCE))
                : room;
    }

    /** An advance that was worked out from a room, mm, with the spread of the gain that it rests on. */
    public static Measured spreadOf(Measured advance) {
        return advance.known() ? spread(advance, -advance.value() * SD / PER_ADVANCE) : advance;
    }

    private static Measured spread(Measured m, double perDeviation) {
        Measured part = Measured.of(0, Unit.MM, SOURCE, Math.abs(perDeviation));
        return perDeviation < 0 ? m.minus(part) : m.plus(part);
    }
}
