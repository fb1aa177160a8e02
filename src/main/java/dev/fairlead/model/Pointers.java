package dev.fairlead.model;

import java.util.ArrayList;
import java.util.List;

/** Small helpers for lists of JSON Pointers (RFC 6901). */
public final class Pointers {
    private Pointers() {}

    /** Both lists in order, each pointer once. */
    public static List<String> union(List<String> a, List<String> b) {
        if (a.isEmpty() || a.equals(b)) {
            return b;
        }
        if (b.isEmpty()) {
            return a;
        }
        List<String> all = new ArrayList<>(a);
        for (String p : b) {
            if (!all.contains(p)) {
                all.add(p);
            }
        }
        return List.copyOf(all);
    }
}
