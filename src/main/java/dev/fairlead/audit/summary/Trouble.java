package dev.fairlead.audit.summary;

import java.util.ArrayList;
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

    /** Counts as it goes wrong, and keeps the first of it. */
    static final class Counter {
        private final int most;
        private final List<One> first = new ArrayList<>();
        private long count;

        Counter(int most) {
            this.most = most;
        }

        void add(String source, String reason) {
            count++;
            if (first.size() < most) {
                first.add(new One(source, reason));
            }
        }

        Trouble all() {
            return new Trouble(count, List.copyOf(first));
        }
    }
}
