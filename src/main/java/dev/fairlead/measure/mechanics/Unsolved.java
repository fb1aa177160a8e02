package dev.fairlead.measure.mechanics;

/**
 * No equilibrium was found; there is no number to show.
 *
 * @param reason what the solver ran into, in words
 * @param iterations spent before giving up
 */
public record Unsolved(String reason, int iterations) implements Result {}
