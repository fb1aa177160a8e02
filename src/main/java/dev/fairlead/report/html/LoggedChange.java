package dev.fairlead.report.html;

/**
 * One change of a case as its log tells it.
 *
 * @param when day and time
 * @param who as typed; empty where nobody said
 * @param what fact in words, and what was done when it was more than a value typed
 * @param old what stood there; empty for nothing
 * @param now what stands there since; empty for nothing
 */
public record LoggedChange(String when, String who, String what, String old, String now) {
    /** The change in a line of text. */
    public String line() {
        return when + (who.isEmpty() ? "" : ", " + who) + ": " + what + ", " + (old.isEmpty() ? "nothing" : old) + " → "
                + (now.isEmpty() ? "nothing" : now);
    }
}
