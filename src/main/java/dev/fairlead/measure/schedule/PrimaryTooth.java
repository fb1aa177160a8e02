package dev.fairlead.measure.schedule;

import dev.fairlead.model.Choice;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/** The primary teeth of one side of the lower arch that hold the room of canine and premolars. */
public enum PrimaryTooth implements Choice {
    CANINE(3),
    FIRST_MOLAR(4),
    SECOND_MOLAR(5);

    private final int position;

    PrimaryTooth(int position) {
        this.position = position;
    }

    /** The primary tooth itself. */
    public Tooth tooth(Side side) {
        return Tooth.of((side == Side.LEFT ? 70 : 80) + position);
    }

    /** The permanent tooth that follows it. */
    public Tooth successor(Side side) {
        return Tooth.of((side == Side.LEFT ? 30 : 40) + position);
    }
}
