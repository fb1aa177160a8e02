package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import java.util.BitSet;
import java.util.List;

/** Tells of many variants of a case how each criterion ends, and no more: no verdicts, no places. Safe to share between threads. */
public final class QuickJudge {
    private final Judge judge;
    private final List<Criterion> criteria;

    QuickJudge(Judge judge) {
        this.judge = judge;
        this.criteria = judge.catalogue().criteria();
    }

    /** The criteria in the order of the endings that {@link #endings} gives. */
    public List<String> criteria() {
        return criteria.stream().map(Criterion::id).toList();
    }

    /** How every criterion ends; null for those of stages that are not reached, and for those left out of {@code wanted}. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached, BitSet wanted) {
        Known known = judge.known();
        Known.Sorted sorted = known.new Sorted(facts, false);
        Ending[] endings = new Ending[criteria.size()];
        Judgement asked = null;
        for (int i = 0; i < endings.length; i++) {
            if (!wanted.get(i) || !reached.hasReached(criteria.get(i).stage())) {
                continue;
            }
            endings[i] = sorted.ending(i);
            if (endings[i] == null) {
                if (asked == null) {
                    asked = judge.byEngine(facts, Stage.HOLDING);
                    known.keep(asked);
                }
                endings[i] = Ending.of(asked.of(criteria.get(i).id()));
            }
        }
        return endings;
    }

    /** How every criterion of the stages reached ends. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached) {
        BitSet all = new BitSet();
        all.set(0, criteria.size());
        return endings(facts, reached, all);
    }
}
