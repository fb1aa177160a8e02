package dev.fairlead.audit.summary;

import java.util.List;

/**
 * How often something went wrong.
 *
 * @param first the first of them, in order
 */
public record Trouble(long count, List<One> first) {
    /** One of them. */
    public record One(String source, String reason) {}

    public boolean any() {
        return count > 0;
    }

    /** How many are counted and not named. */
    public long more() {
        return count - first.size();
    }
}
