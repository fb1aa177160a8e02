package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
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

    /** Asks of one set of facts what would become of it if single facts were others. Not shared between threads. */
    public final class Around {
        private final List<? extends CaseFact> facts;
        private final Known.Sorted sorted;

        private Around(List<? extends CaseFact> facts) {
            this.facts = facts;
            this.sorted = judge.known().new Sorted(facts, false);
        }

        /** How the criterion of that number would end if {@code by} stood for {@code one}; null when the engine has to be asked. */
        public Ending ending(int criterion, CaseFact one, CaseFact by) {
            return sorted.ending(criterion, one, by);
        }

        /** The same, with the engine asked. */
        public Ending asked(int criterion, CaseFact one, CaseFact by, Stage reached) {
            List<CaseFact> variant = new ArrayList<>(facts);
            variant.replaceAll(f -> f == one ? by : f);
            BitSet wanted = new BitSet();
            wanted.set(criterion);
            return endings(variant, reached, wanted)[criterion];
        }
    }

    public Around around(List<? extends CaseFact> facts) {
        return new Around(facts);
    }

    /** How every criterion of the stages reached ends. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached) {
        BitSet all = new BitSet();
        all.set(0, criteria.size());
        return endings(facts, reached, all);
    }
}
