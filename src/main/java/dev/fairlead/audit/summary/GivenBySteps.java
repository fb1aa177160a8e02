package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.model.Stage;
import java.util.EnumMap;
import java.util.Map;

/** Facts given among those asked, by the step that is the first to ask for them. */
final class GivenBySteps {
    private static final int STEPS = Stage.values().length;

    private final AskedFacts facts;
    private final ClusteredRate.Sums[] sums = new ClusteredRate.Sums[STEPS];
    /** For each step the facts that it asks for first, as bits. */
    private final long[][] of = new long[STEPS][0];
    /** How many facts were known when that was learnt. */
    private int known;

    GivenBySteps(AskedFacts facts) {
        this.facts = facts;
        java.util.Arrays.setAll(sums, s -> new ClusteredRate.Sums());
    }

    /** A case: facts asked and missing as bits. */
    void add(long[] asked, long[] missing) {
        if (known < facts.names().size()) {
            learn();
        }
        for (int s = 0; s < STEPS; s++) {
            int a = 0;
            int m = 0;
            for (int w = 0; w < of[s].length; w++) {
                a += w < asked.length ? Long.bitCount(asked[w] & of[s][w]) : 0;
                m += w < missing.length ? Long.bitCount(missing[w] & of[s][w]) : 0;
            }
            sums[s].add(Math.max(0, a - m), Math.max(a, m));
        }
    }

    private void learn() {
        known = facts.names().size();
        for (int s = 0; s < STEPS; s++) {
            of[s] = new long[(known >> 6) + 1];
        }
        for (int f = 0; f < known; f++) {
            of[facts.step(f).ordinal()][f >> 6] |= 1L << f;
        }
    }

    Map<Stage, ClusteredRate> rates() {
        Map<Stage, ClusteredRate> rates = new EnumMap<>(Stage.class);
        for (Stage s : Stage.values()) {
            rates.put(s, sums[s.ordinal()].rate());
        }
        return rates;
    }
}
