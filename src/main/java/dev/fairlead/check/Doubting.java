package dev.fairlead.check;

import dev.fairlead.measure.uncertainty.Simulation;

/**
 * How chances of another outcome are worked out.
 *
 * @param draws random draws beside first-order propagation; 0 for propagation alone, negative for no chances at all
 * @param seed seed of the draws; the same seed gives the same report
 * @param corrects the draws only correct first-order propagation, where it does not hold; else their shares are told
 */
public record Doubting(int draws, long seed, boolean corrects) {
    /** No chances. */
    public static final Doubting NONE = new Doubting(-1, 0, false);
    /**
     * First-order propagation alone: wrong for the largest of several values and for differences in either direction.
     */
    public static final Doubting FIRST_ORDER = new Doubting(0, 0, false);
    /** First-order propagation, corrected by as many draws as a single check has the time for. */
    public static final Doubting CORRECTED = new Doubting(200, Simulation.USUAL_SEED, true);

    /** First-order propagation, and the shares of {@code draws} random draws, 1 or more. */
    public static Doubting drawn(int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a simulation needs at least one draw");
        }
        return new Doubting(draws, seed, false);
    }

    boolean wanted() {
        return draws >= 0;
    }

    boolean simulates() {
        return draws > 0;
    }
}
