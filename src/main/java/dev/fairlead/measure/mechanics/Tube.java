package dev.fairlead.measure.mechanics;

/**
 * What a molar tube does to the wire's tail; sliding distally is blocked in all, because the fold's first bend stops at
 * the tube.
 */
public enum Tube {
    /**
     * Held in all six ways at the mesial end. A round wire spins in its tube, so this is too stiff; kept for
     * comparison.
     */
    FIXED,
    /** Direction of the tail held at the mesial end, free to spin about its own axis. */
    SPIN,
    /** Guided sideways and vertically at both ends of the tube, without play, free to spin: the tail held. */
    TWO_POINT,
    /**
     * Held in place at the mesial end, rotation about z held, about x and y free: the tail hinges. With large rotations
     * the blocked spin is the one about the fixed z axis, step by step; a universal joint that keeps the tail in the
     * vertical plane instead gives about 3 % more force.
     */
    HINGE_SPIN
}
