package dev.fairlead.measure.arch;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/** Where the lateral incisors stand once the four incisors stand in line on the arch. */
final class Laterals {
    private static final Tooth[][] INCISORS = {{Tooth.of(31), Tooth.of(32)}, {Tooth.of(41), Tooth.of(42)}};

    private Laterals() {}

    /** Distal of the lateral along the arch from the midline: widths of central and lateral incisor, mm. */
    static Measured distal(Readings readings, Side side) {
        Tooth[] teeth = INCISORS[side.ordinal()];
        return readings.width(teeth[0]).plus(readings.width(teeth[1]));
    }

    /** Middle of the lateral along the arch from the midline, mm. */
    static Measured middle(Readings readings, Side side) {
        Tooth[] teeth = INCISORS[side.ordinal()];
        return readings.width(teeth[0]).plus(readings.width(teeth[1]).times(0.5));
    }
}
