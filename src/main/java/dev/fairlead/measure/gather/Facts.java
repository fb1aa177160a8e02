package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import java.util.ArrayList;
import java.util.List;

/** Gathers all facts of a case in a fixed order. */
public final class Facts {
    private Facts() {}

    public static List<CaseFact> of(Gathered s) {
        List<CaseFact> out = new ArrayList<>(64);
        ToothFacts.add(s, out);
        RecordFacts.add(s, out);
        SpaceFacts.add(s, out);
        MouthFacts.add(s, out);
        HardwareFacts.add(s, out);
        WireFacts.add(s, out);
        BenchFacts.add(s, out);
        PlanFacts.add(s, out);
        InsertionFacts.add(s, out);
        VisitFacts.add(s, out);
        ProgressFacts.add(s, out);
        EndFacts.add(s, out);
        return List.copyOf(out);
    }
}
