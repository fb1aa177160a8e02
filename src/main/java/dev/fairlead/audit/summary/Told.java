package dev.fairlead.audit.summary;

import java.util.ArrayList;
import java.util.List;

/** Counts what went wrong, and keeps the first of it. */
final class Told {
    private final int most;
    private final List<Trouble.One> first = new ArrayList<>();
    private long count;

    Told(int most) {
        this.most = most;
    }

    void add(String source, String reason) {
        count++;
        if (first.size() < most) {
            first.add(new Trouble.One(source, reason));
        }
    }

    Trouble all() {
        return new Trouble(count, List.copyOf(first));
    }
}
