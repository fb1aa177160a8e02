package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Cases that belong together: of one resident, or of one period; counts by stage of the case. */
public final class Group {
    private static final int STAGES = Stage.values().length;

    private final String name;
    private final int criteria;
    private final int[] cases = new int[STAGES];
    private final int[] withStop = new int[STAGES];
    private final int[][] judged = new int[STAGES][];
    private final int[][] warned = new int[STAGES][];
    private final int[][] asked = new int[STAGES][];
    private final int[][] missing = new int[STAGES][];
    private ClusteredRate.Sums given = new ClusteredRate.Sums();
    private String note = "";

    /** {@code name} is the code of the resident, or the period. */
    Group(String name, int criteria) {
        this.name = name;
        this.criteria = criteria;
    }

    /** Counts a case. */
    void add(int stage, byte[] endings, boolean stop) {
        if (judged[stage] == null) {
            judged[stage] = new int[criteria];
            warned[stage] = new int[criteria];
        }
        cases[stage]++;
        withStop[stage] += stop ? 1 : 0;
        int[] j = judged[stage];
        int[] w = warned[stage];
        for (int c = 0; c < endings.length; c++) {
            int e = endings[c];
            boolean warns = e == Ending.STOP.ordinal() || e == Ending.CAUTION.ordinal();
            if (warns || e == Ending.PASS.ordinal()) {
                j[c]++;
                w[c] += warns ? 1 : 0;
            }
        }
    }

    /** Forgets what was counted of facts, which is counted over all cases at once. */
    void forgetFacts() {
        Arrays.fill(asked, null);
        Arrays.fill(missing, null);
        given = new ClusteredRate.Sums();
    }

    /** Counts the facts that a case is asked for, and those of them that are missing, as bits. */
    void addFacts(int stage, long[] askedFacts, long[] missingFacts, int nAsked, int nMissing) {
        if (asked[stage] == null) {
            asked[stage] = new int[Long.SIZE * askedFacts.length];
            missing[stage] = new int[Long.SIZE * askedFacts.length];
        }
        count(asked[stage], askedFacts);
        count(missing[stage], missingFacts);
        given.add(nAsked - nMissing, nAsked);
    }

    private static void count(int[] counts, long[] bits) {
        for (int w = 0; w < bits.length; w++) {
            for (long rest = bits[w]; rest != 0; rest &= rest - 1) {
                counts[(w << 6) + Long.numberOfTrailingZeros(rest)]++;
            }
        }
    }

    /** Adds the counts of another. */
    Group with(Group other) {
        for (int s = 0; s < STAGES; s++) {
            cases[s] += other.cases[s];
            withStop[s] += other.withStop[s];
            judged[s] = sum(judged[s], other.judged[s]);
            warned[s] = sum(warned[s], other.warned[s]);
            asked[s] = sum(asked[s], other.asked[s]);
            missing[s] = sum(missing[s], other.missing[s]);
        }
        given.add(other.given);
        return this;
    }

    private static int @Nullable [] sum(int @Nullable [] a, int @Nullable [] b) {
        if (a == null || b == null) {
            return a == null ? b == null ? null : b.clone() : a;
        }
        int[] sum = Arrays.copyOf(a, Math.max(a.length, b.length));
        for (int i = 0; i < b.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }

    void note(String text) {
        note = text;
    }

    public String name() {
        return name;
    }

    /** What is to be said of a period, such as that it is partial; empty for nothing. */
    public String note() {
        return note;
    }

    public int cases() {
        return Arrays.stream(cases).sum();
    }

    /** Cases with an open stop. */
    public int withStop() {
        return Arrays.stream(withStop).sum();
    }

    /** How often a criterion was judged in cases of a stage. */
    int judged(int stage, int criterion) {
        return judged[stage] == null ? 0 : judged[stage][criterion];
    }

    int warned(int stage, int criterion) {
        return warned[stage] == null ? 0 : warned[stage][criterion];
    }

    int asked(int stage, int fact) {
        return asked[stage] == null || fact >= asked[stage].length ? 0 : asked[stage][fact];
    }

    int missing(int stage, int fact) {
        return missing[stage] == null || fact >= missing[stage].length ? 0 : missing[stage][fact];
    }

    /** How often each criterion was judged, in catalogue order. */
    public int[] judged() {
        return over(judged);
    }

    /** How often each warned. */
    public int[] warned() {
        return over(warned);
    }

    private int[] over(int[][] byStage) {
        int[] all = new int[criteria];
        for (int[] of : byStage) {
            for (int c = 0; of != null && c < criteria; c++) {
                all[c] += of[c];
            }
        }
        return all;
    }

    /** In how many cases a fact was asked. */
    public int asked(int fact) {
        int n = 0;
        for (int s = 0; s < STAGES; s++) {
            n += asked(s, fact);
        }
        return n;
    }

    /** In how many of these it was missing. */
    public int missing(int fact) {
        int n = 0;
        for (int s = 0; s < STAGES; s++) {
            n += missing(s, fact);
        }
        return n;
    }

    /** Facts given among those asked. */
    public ClusteredRate completeness() {
        return given.rate();
    }

    void addTo(ClusteredRate.Sums sums) {
        sums.add(given);
    }

    /** All warnings. */
    public int warnings() {
        return Arrays.stream(warned()).sum();
    }

    /** Warnings that the overall rates would lead to expect, given what was judged here. */
    public double expected(double[] rates) {
        int[] j = judged();
        double sum = 0;
        for (int i = 0; i < j.length; i++) {
            sum += j[i] == 0 ? 0 : j[i] * rates[i];
        }
        return sum;
    }
}
