package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Tells of many variants of a case how each criterion ends, and no more: no verdicts, no places. Safe to share between
 * threads.
 */
public final class QuickJudge {
    private final Judge judge;
    private final List<Criterion> criteria;
    private final List<String> ids;

    QuickJudge(Judge judge) {
        this.judge = judge;
        this.criteria = judge.catalogue().criteria();
        this.ids = judge.catalogue().ids();
    }

    /** The criteria in the order of the endings that {@link #endings} gives. */
    public List<String> criteria() {
        return ids;
    }

    /**
     * How every criterion ends; null for those of stages that are not reached, and for those left out of
     * {@code wanted}.
     */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached, BitSet wanted) {
        return endings(facts, judge.known().new Sorted(facts, false), reached, wanted);
    }

    private Ending[] endings(List<? extends CaseFact> facts, Known.Sorted sorted, Stage reached, BitSet wanted) {
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
                    judge.known().keep(asked);
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

        /** How every criterion of the stages reached ends as the facts are. */
        public Ending[] endings(Stage reached) {
            return QuickJudge.this.endings(facts, sorted, reached, all());
        }

        /** The facts that the criterion of that number looks at, in their order. */
        public List<CaseFact> about(int criterion) {
            return sorted.about(criterion);
        }

        /** What the fact at that place among those facts says of one component. */
        public CaseValue value(int criterion, int place, Need need) {
            return sorted.value(criterion, place, need);
        }

        /** How the criterion would end if that component were another; null when the engine has to be asked. */
        public Ending ending(int criterion, int place, Need need, CaseValue other) {
            return sorted.ending(criterion, place, need, other);
        }

        /** How the criterion would end if {@code by} stood for {@code one}, with the engine asked. */
        public Ending asked(int criterion, CaseFact one, CaseFact by, Stage reached) {
            List<CaseFact> variant = new ArrayList<>(facts);
            variant.replaceAll(f -> f == one ? by : f);
            BitSet wanted = new BitSet();
            wanted.set(criterion);
            return QuickJudge.this.endings(variant, reached, wanted)[criterion];
        }
    }

    public Around around(List<? extends CaseFact> facts) {
        return new Around(facts);
    }

    /** How every criterion of the stages reached ends. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached) {
        return endings(facts, reached, all());
    }

    private BitSet all() {
        BitSet all = new BitSet();
        all.set(0, criteria.size());
        return all;
    }
}
