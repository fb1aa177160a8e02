package dev.fairlead.measure.mechanics;

/** Outcome of asking for a force band: the band, or why there is none. */
public sealed interface BandResult permits ForceBand, NoBand {}
