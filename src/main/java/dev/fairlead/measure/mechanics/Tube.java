package dev.fairlead.measure.mechanics;

/** What a molar tube does to the wire's tail; sliding distally is blocked in all, because the fold's first bend stops at the tube. */
public enum Tube {
    /** Held in all six ways at the mesial end. A round wire spins in its tube, so this is too stiff; kept for comparison. */
    FIXED,
    /** Direction of the tail held at the mesial end, free to spin about its own axis. */
    SPIN,
    /** Guided sideways and vertically at both ends of the tube, without play, free to spin: the tail held. */
    TWO_POINT,
    /** Held in place at the mesial end, direction held in the horizontal plane only: the tail hinges. */
    HINGE_SPIN
}
