package dev.fairlead.check;

/**
 * How chances of another outcome are worked out.
 *
 * @param draws random draws beside first-order propagation; 0 for propagation alone, negative for no chances at all
 * @param seed seed of the draws; the same seed gives the same report
 */
public record Doubting(int draws, long seed) {
    /** No chances. */
    public static final Doubting NONE = new Doubting(-1, 0);
    /** First-order propagation alone. */
    public static final Doubting FIRST_ORDER = new Doubting(0, 0);

    /** First-order propagation, and {@code draws} random draws, 1 or more. */
    public static Doubting drawn(int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a simulation needs at least one draw");
        }
        return new Doubting(draws, seed);
    }

    boolean wanted() {
        return draws >= 0;
    }

    boolean simulates() {
        return draws > 0;
    }
}
