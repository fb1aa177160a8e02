package dev.fairlead.audit.run;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.BitSet;

/**
 * Which states of each pseudonym an audit has met, and which of them are not the latest: by the last day that each
 * tells of, then by stage, then by order of the source. A hash of 64 bits stands for each pseudonym, by which two of a
 * million differ but for one chance in forty million.
 */
final class History {
    private static final int FREE = -1;

    private long[] hashes = new long[1 << 12];
    private long[] ranks = new long[1 << 12];
    private int[] numbers = filled(1 << 12);
    private final BitSet earlier = new BitSet();
    private int used;
    private int rows;

    /** Takes the next row; returns its number. */
    int next(CaseRow row) {
        int number = rows++;
        if (row.judged()) {
            met(hash(row.id()), rank(row), number);
        }
        return number;
    }

    /** Numbers of the rows of which a later state was met. */
    BitSet earlier() {
        return earlier;
    }

    private static long rank(CaseRow row) {
        long day = row.recorded().isEmpty()
                ? -(1L << 40)
                : LocalDate.parse(row.recorded()).toEpochDay();
        return day * 16 + row.reached().ordinal();
    }

    private void met(long hash, long rank, int number) {
        if (2 * (used + 1) > hashes.length) {
            grow();
        }
        int at = place(hash);
        if (numbers[at] == FREE) {
            used++;
        } else if (rank < ranks[at]) {
            earlier.set(number);
            return;
        } else {
            earlier.set(numbers[at]);
        }
        hashes[at] = hash;
        ranks[at] = rank;
        numbers[at] = number;
    }

    private int place(long hash) {
        int at = (int) (hash & hashes.length - 1);
        while (numbers[at] != FREE && hashes[at] != hash) {
            at = at + 1 & hashes.length - 1;
        }
        return at;
    }

    private void grow() {
        long[] h = hashes;
        long[] r = ranks;
        int[] n = numbers;
        hashes = new long[2 * h.length];
        ranks = new long[2 * h.length];
        numbers = filled(2 * h.length);
        for (int i = 0; i < h.length; i++) {
            if (n[i] != FREE) {
                int at = place(h[i]);
                hashes[at] = h[i];
                ranks[at] = r[i];
                numbers[at] = n[i];
            }
        }
    }

    private static int[] filled(int length) {
        int[] all = new int[length];
        Arrays.fill(all, FREE);
        return all;
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
