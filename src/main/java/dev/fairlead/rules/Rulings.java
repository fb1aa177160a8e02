package dev.fairlead.rules;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What the engine has ruled on one criterion, by the answers of {@link Asked}; safe to share between threads, and read without waiting. */
final class Rulings {
    private record Kept(long answers, Ruling ruling) {}

    private final Map<BitSet, Ruling> wide = new ConcurrentHashMap<>();
    // an entry is whole from the moment that it can be seen, for its parts are final: whoever misses it meanwhile asks the engine once more
    private volatile Kept[] table = new Kept[16];
    private int used;
    private final Decided before;

    /** Begins with what was decided in the build; null for nothing. */
    Rulings(Decided before) {
        this.before = before;
    }

    Ruling of(long answers) {
        Ruling met = met(answers);
        if (met == null && before != null) {
            met = before.of(answers);
            if (met != null) {
                // of the many answers that can be given a few are: those are soon found at once
                keep(answers, met);
            }
        }
        return met;
    }

    private Ruling met(long answers) {
        Kept[] t = table;
        for (int i = slot(answers, t.length);; i = i + 1 & t.length - 1) {
            Kept k = t[i];
            if (k == null) {
                return null;
            }
            if (k.answers == answers) {
                return k.ruling;
            }
        }
    }

    Ruling of(BitSet answers) {
        return wide.get(answers);
    }

    /** False when there is one already. */
    synchronized boolean keep(long answers, Ruling ruling) {
        if (met(answers) != null) {
            return false;
        }
        if (2 * ++used > table.length) {
            Kept[] larger = new Kept[2 * table.length];
            for (Kept k : table) {
                if (k != null) {
                    put(larger, k);
                }
            }
            table = larger;
        }
        put(table, new Kept(answers, ruling));
        return true;
    }

    boolean keep(BitSet answers, Ruling ruling) {
        return wide.putIfAbsent(answers, ruling) == null;
    }

    /** All that was kept, by its answers: a {@code Long}, or a set where they are many. */
    Map<Object, Ruling> all() {
        Map<Object, Ruling> all = new HashMap<>(wide);
        for (Kept k : table) {
            if (k != null) {
                all.put(k.answers, k.ruling);
            }
        }
        return all;
    }

    private static void put(Kept[] table, Kept kept) {
        int i = slot(kept.answers, table.length);
        while (table[i] != null) {
            i = i + 1 & table.length - 1;
        }
        table[i] = kept;
    }

    /** The upper bits of a product with an odd number near the golden ratio depend on all bits of the answers. */
    private static int slot(long answers, int size) {
        return (int) (answers * 0x9E3779B97F4A7C15L >>> 32) & size - 1;
    }
}
