package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.catalogue.Ending;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * The few facts of each case that comparisons need, some 100 bytes a case: which criteria applied, were judged, warned
 * and were a stop, stage, resident, day, and which facts were missing.
 */
final class CaseStore {
    /** Stands for a case without a day. */
    static final int NO_DAY = Integer.MIN_VALUE;

    private static final int KINDS = 4;
    static final int JUDGED = 0;
    static final int WARNED = 1;
    static final int STOPPED = 2;
    static final int APPLIED = 3;

    private final int criteria;
    private final int words;
    private final int[][] counts;
    private long[] bits = new long[0];
    private byte[] stage = new byte[0];
    private int[] resident = new int[0];
    private int[] day = new int[0];
    /** Numbers of the facts that are missing, case after case, and where those of each case end. */
    private char[] gaps = new char[0];

    private int[] gapsEnd = new int[0];
    private short[] asked = new short[0];
    private int size;

    CaseStore(int criteria) {
        this.criteria = criteria;
        this.words = (criteria + 63) / 64;
        this.counts = new int[KINDS][criteria];
    }

    /** A case, with the numbers of the facts that are missing in it. */
    void add(CaseRow row, int residentNumber, char[] missingFacts) {
        if (size == stage.length) {
            int more = Math.max(64, 2 * size);
            bits = Arrays.copyOf(bits, more * KINDS * words);
            stage = Arrays.copyOf(stage, more);
            resident = Arrays.copyOf(resident, more);
            day = Arrays.copyOf(day, more);
            gapsEnd = Arrays.copyOf(gapsEnd, more);
            asked = Arrays.copyOf(asked, more);
        }
        byte[] endings = row.endings();
        for (int c = 0; c < endings.length; c++) {
            int e = endings[c];
            boolean stop = e == Ending.STOP.ordinal();
            boolean warned = stop || e == Ending.CAUTION.ordinal();
            if (e >= 0 && e != Ending.DOES_NOT_APPLY.ordinal()) {
                set(APPLIED, c);
            }
            if (warned || e == Ending.PASS.ordinal()) {
                set(JUDGED, c);
            }
            if (warned) {
                set(WARNED, c);
            }
            if (stop) {
                set(STOPPED, c);
            }
        }
        stage[size] = (byte) row.reached().ordinal();
        resident[size] = residentNumber;
        day[size] =
                row.day().isEmpty() ? NO_DAY : (int) LocalDate.parse(row.day()).toEpochDay();
        int from = gapsStart(size);
        if (from + missingFacts.length > gaps.length) {
            gaps = Arrays.copyOf(gaps, Math.max(from + missingFacts.length, 2 * gaps.length));
        }
        System.arraycopy(missingFacts, 0, gaps, from, missingFacts.length);
        gapsEnd[size] = from + missingFacts.length;
        size++;
    }

    private void set(int kind, int criterion) {
        bits[(size * KINDS + kind) * words + (criterion >> 6)] |= 1L << criterion;
        counts[kind][criterion]++;
    }

    private int gapsStart(int i) {
        return i == 0 ? 0 : gapsEnd[i - 1];
    }

    /** The facts that are missing in a case, as bits at their places. */
    void missing(int i, int[] place, long[] into) {
        Arrays.fill(into, 0);
        for (int g = gapsStart(i); g < gapsEnd[i]; g++) {
            int at = place[gaps[g]];
            into[at / Long.SIZE] |= 1L << at;
        }
    }

    /** The facts that criteria which apply to a case ask for, as bits. */
    void asked(int i, long[][] byCriterion, long[] into) {
        Arrays.fill(into, 0);
        for (int w = 0; w < words; w++) {
            for (long rest = bits[(i * KINDS + APPLIED) * words + w]; rest != 0; rest &= rest - 1) {
                long[] of = byCriterion[(w << 6) + Long.numberOfTrailingZeros(rest)];
                for (int k = 0; k < into.length; k++) {
                    into[k] |= of[k];
                }
            }
        }
    }

    /** Notes how many facts a case is asked for, once that is known. */
    void asked(int i, int facts) {
        asked[i] = (short) facts;
    }

    /** In how many cases a criterion has that mark. */
    int count(int kind, int criterion) {
        return counts[kind][criterion];
    }

    /** Adds up, case by case, marks and rates of the criteria that were judged and whose rate is above 0. */
    void sums(int kind, double[] rate, double[] marks, double[] rates) {
        long[] meant = new long[words];
        for (int c = 0; c < criteria; c++) {
            meant[c >> 6] |= rate[c] > 0 ? 1L << c : 0;
        }
        for (int i = 0; i < size; i++) {
            for (int w = 0; w < words; w++) {
                long judged = bits[(i * KINDS + JUDGED) * words + w] & meant[w];
                marks[i] += Long.bitCount(bits[(i * KINDS + kind) * words + w] & judged);
                for (long rest = judged; rest != 0; rest &= rest - 1) {
                    rates[i] += rate[(w << 6) + Long.numberOfTrailingZeros(rest)];
                }
            }
        }
    }

    int size() {
        return size;
    }

    int criteria() {
        return criteria;
    }

    int stage(int i) {
        return stage[i];
    }

    int resident(int i) {
        return resident[i];
    }

    int day(int i) {
        return day[i];
    }

    int missing(int i) {
        return gapsEnd[i] - gapsStart(i);
    }

    int asked(int i) {
        return asked[i];
    }
}
