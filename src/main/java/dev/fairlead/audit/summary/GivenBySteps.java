package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.model.Stage;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** Facts given among those asked, by the step that is the first to ask for them. */
final class GivenBySteps {
    /** For each step the facts that it asks for first, as bits. */
    private final long[][] of;

    private final ClusteredRate.Sums[] sums;

    GivenBySteps(long[][] steps) {
        of = steps;
        sums = new ClusteredRate.Sums[of.length];
        Arrays.setAll(sums, s -> new ClusteredRate.Sums());
    }

    /** A case: facts asked and missing as bits. */
    void add(long[] asked, long[] missing) {
        for (int s = 0; s < of.length; s++) {
            int a = 0;
            int m = 0;
            for (int w = 0; w < of[s].length; w++) {
                a += Long.bitCount(asked[w] & of[s][w]);
                m += Long.bitCount(missing[w] & of[s][w]);
            }
            sums[s].add(a - m, a);
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
