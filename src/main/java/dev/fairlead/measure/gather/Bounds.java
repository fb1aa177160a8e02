package dev.fairlead.measure.gather;

import dev.fairlead.model.Measured;

/** What can be told of a number while something that it rests on is missing. */
final class Bounds {
    private Bounds() {}

    /** The larger of two, and of one alone where only that is known: the larger of both can be no less. */
    static Measured largestKnown(Measured a, Measured b) {
        return a.known() == b.known() ? a.max(b) : a.known() ? a : b;
    }

    /** The smaller of two, and of one alone where only that is known: the smaller of both can be no more. */
    static Measured smallestKnown(Measured a, Measured b) {
        return a.known() == b.known() ? a.min(b) : a.known() ? a : b;
    }

    /** The number itself, else what it cannot go beyond on the side that matters. */
    static Measured or(Measured exact, Measured bound) {
        return exact.known() || !exact.applies() || !bound.known() ? exact : bound;
    }
}
