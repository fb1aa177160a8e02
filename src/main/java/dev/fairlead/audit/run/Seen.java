package dev.fairlead.audit.run;

/**
 * Which pseudonyms an audit has met, eight bytes each: a hash of 64 bits stands for each, by which two of a million
 * differ but for one chance in forty million.
 */
final class Seen {
    private long[] slots = new long[1 << 12];
    private int used;
    private boolean zero;

    /** True when the pseudonym is met for the first time. */
    boolean first(String id) {
        long h = hash(id);
        if (h == 0) {
            boolean first = !zero;
            zero = true;
            return first;
        }
        if (2 * (used + 1) > slots.length) {
            grow();
        }
        boolean added = add(slots, h);
        used += added ? 1 : 0;
        return added;
    }

    private void grow() {
        long[] larger = new long[2 * slots.length];
        for (long h : slots) {
            if (h != 0) {
                add(larger, h);
            }
        }
        slots = larger;
    }

    private static boolean add(long[] slots, long h) {
        int at = (int) (h & slots.length - 1);
        while (slots[at] != 0) {
            if (slots[at] == h) {
                return false;
            }
            at = at + 1 & slots.length - 1;
        }
        slots[at] = h;
        return true;
    }

    /** FNV-1a with the finish of SplitMix64, so that all bits count. */
    private static long hash(String id) {
        long h = 0xcbf29ce484222325L;
        for (int i = 0; i < id.length(); i++) {
            h = (h ^ id.charAt(i)) * 0x100000001b3L;
        }
        h = (h ^ h >>> 30) * 0xbf58476d1ce4e5b9L;
        h = (h ^ h >>> 27) * 0x94d049bb133111ebL;
        return h ^ h >>> 31;
    }
}
