package dev.fairlead.rules.catalogue;

/**
 * One way in which a criterion warns: how heavily, what is wrong, what is seen and what to do about it.
 *
 * @param weight the lint holds it to what the rule reports
 * @param title states the fault, in a few words
 * @param says what is seen, with its numbers
 * @param todo what to do next about this fault and no other
 */
public record Reason(Weight weight, String title, String says, String todo) {
    /** The heavier first. */
    public enum Weight {
        STOP,
        CAUTION
    }

    public boolean stop() {
        return weight == Weight.STOP;
    }
}
