package dev.fairlead.measure.mechanics.answer;

/** Outcome of one solution: numbers, or the reason why there are none. */
public sealed interface Result permits Solution, Result.Unsolved {

    /**
     * No equilibrium was found; there is no number to show.
     *
     * @param reason what the solver ran into, in words
     * @param iterations spent before giving up
     */
    record Unsolved(String reason, int iterations) implements Result {}
}
