package dev.fairlead.measure.mechanics;

/** Which part of the opened fold's travel is taken up when the tail is seated in the tube. */
public enum Seat {
    /** Forward only: the clinician has bent the gingival travel out again. */
    LEVEL,
    /** Forward, gingival and buccal. */
    FULL
}
