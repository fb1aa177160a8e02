package dev.fairlead.measure.mechanics;

/** Outcome of one solution: numbers, or the reason why there are none. */
public sealed interface Result permits Solution, Unsolved {}
