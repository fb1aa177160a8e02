package dev.fairlead.rules;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the engine has ruled on one criterion, by the answers of {@link Asked}; safe to share between threads, and read
 * without waiting.
 */
final class Rulings {
    private record Kept(long answers, Ruling ruling) {}

    private final Map<BitSet, Ruling> wide = new ConcurrentHashMap<>();
    // an entry is whole from the moment that it can be seen, for its parts are final: whoever misses it meanwhile asks
    // the engine once more
    private volatile Kept[] table = new Kept[16];
    private int used;
    private final Decided before;

    /** Begins with what was decided in the build; null for nothing. */
    Rulings(Decided before) {
        this.before = before;
    }

    Ruling of(long answers) {
        Ruling kept = since(answers);
        if (kept != null || before == null) {
            return kept;
        }
        Ruling decided = before.of(answers);
        if (decided != null) {
            // found sooner the next time
            put(answers, decided);
        }
        return decided;
    }

    /** All with answers of 64 bits that were kept since the beginning, by their answers. */
    Map<Long, Ruling> all() {
        Map<Long, Ruling> all = new HashMap<>();
        for (Kept k : table) {
            if (k != null) {
                all.put(k.answers, k.ruling);
            }
        }
        return all;
    }

    private Ruling since(long answers) {
        Kept[] t = table;
        for (int i = slot(answers, t.length); ; i = i + 1 & t.length - 1) {
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
    boolean keep(long answers, Ruling ruling) {
        return of(answers) == null && put(answers, ruling);
    }

    private synchronized boolean put(long answers, Ruling ruling) {
        if (since(answers) != null) {
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
