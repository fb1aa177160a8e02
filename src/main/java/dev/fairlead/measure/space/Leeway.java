package dev.fairlead.measure.space;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/**
 * Leeway of one side: primary canine and molars less their successors (Nance 1947), from this child's own teeth, never
 * from a mean.
 */
public final class Leeway {
    private static final Tooth[] LEFT = {Tooth.of(73), Tooth.of(74), Tooth.of(75)};
    private static final Tooth[] RIGHT = {Tooth.of(83), Tooth.of(84), Tooth.of(85)};

    private Leeway() {}

    /** Widths of the primary canine and molars of one side of the lower arch, mm. */
    public static Measured primaryWidths(Readings readings, Side side) {
        Tooth[] t = side == Side.LEFT ? LEFT : RIGHT;
        return readings.width(t[0]).plus(readings.width(t[1])).plus(readings.width(t[2]));
    }

    /** Primary widths less the widths of canine and premolars, mm. */
    public static Measured of(Measured primaryWidths, Measured successors) {
        return primaryWidths.minus(successors);
    }
}
