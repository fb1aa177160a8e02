package dev.fairlead.measure.gather;

import dev.fairlead.facts.ActivatedFold;
import dev.fairlead.facts.Antimeres;
import dev.fairlead.facts.BenchWork;
import dev.fairlead.facts.Bite;
import dev.fairlead.facts.BuccalSegment;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.End;
import dev.fairlead.facts.EndSide;
import dev.fairlead.facts.FirstMolar;
import dev.fairlead.facts.FoldMade;
import dev.fairlead.facts.IncisorPosition;
import dev.fairlead.facts.Inserted;
import dev.fairlead.facts.InsertedEnd;
import dev.fairlead.facts.LowerIncisor;
import dev.fairlead.facts.Mouth;
import dev.fairlead.facts.PlannedActivation;
import dev.fairlead.facts.Progress;
import dev.fairlead.facts.Readiness;
import dev.fairlead.facts.RecordsKept;
import dev.fairlead.facts.SideProgress;
import dev.fairlead.facts.Space;
import dev.fairlead.facts.ToothWidth;
import dev.fairlead.facts.VisitReadings;
import dev.fairlead.facts.VisitSeen;
import dev.fairlead.facts.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** Gathers the facts of a case in a fixed order: all, or those that somebody looks at. */
public final class Facts {
    private final Gathered from;
    private final List<CaseFact> out = new ArrayList<>(64);

    private Facts(Gathered from) {
        this.from = from;
    }

    public static List<CaseFact> of(Gathered s) {
        Facts f = new Facts(s);
        f.add(ToothFacts::add, LowerIncisor.class, ToothWidth.class, Antimeres.class);
        f.add(RecordFacts::add, RecordsKept.class);
        f.add(SpaceFacts::add, BuccalSegment.class, Space.class, IncisorPosition.class);
        f.add(MouthFacts::add, Bite.class, Mouth.class);
        f.add(HardwareFacts::add, FirstMolar.class, Readiness.class);
        f.add(WireFacts::add, Wire.class);
        f.add(BenchFacts::add, FoldMade.class, BenchWork.class);
        f.add(PlanFacts::add, PlannedActivation.class);
        f.add(InsertionFacts::add, InsertedEnd.class, Inserted.class);
        f.add(VisitFacts::add, ActivatedFold.class, VisitSeen.class, VisitReadings.class);
        f.add(ProgressFacts::add, SideProgress.class, Progress.class);
        f.add(EndFacts::add, EndSide.class, End.class);
        return List.copyOf(f.out);
    }

    /** {@code types} are all that {@code gather} makes. */
    @SafeVarargs
    private void add(BiConsumer<Gathered, List<CaseFact>> gather, Class<? extends CaseFact>... types) {
        if (from.parts().asks(types)) {
            gather.accept(from, out);
        }
    }
}
