package dev.fairlead.model;

import java.util.ArrayList;
import java.util.List;

/** Small helpers for lists of JSON Pointers (RFC 6901). */
public final class Pointers {
    private Pointers() {}

    /** Both lists in order, each pointer once; one of the two where it holds all. */
    public static List<String> union(List<String> a, List<String> b) {
        if (a.isEmpty()) {
            return b;
        }
        List<String> all = a;
        for (int i = 0; i < b.size(); i++) {
            if (!all.contains(b.get(i))) {
                all = all == a ? new ArrayList<>(a) : all;
                all.add(b.get(i));
            }
        }
        return all == a ? a : List.copyOf(all);
    }
}
