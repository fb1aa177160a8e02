package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.Memo;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Judges the facts of cases by a rulebase: the engine is asked about every fact that the memo does not know the like
 * of. Safe to share between threads; the order of facts does not matter.
 */
public final class Judge {
    private final List<Criterion> criteria;
    private final Limits limits;
    private final Engine engine;
    private final List<Memo<Ruling>> memos;

    /** By these criteria under these limits; remembers nothing of what the engine says where that is {@code off}. */
    Judge(List<Criterion> criteria, Limits limits, Engine engine, boolean off) {
        this.criteria = criteria;
        this.limits = limits;
        this.engine = engine;
        this.memos =
                criteria.stream().map(c -> new Memo<Ruling>(c, limits, off)).toList();
    }

    /** Identifiers of the criteria, in the order in which endings come. */
    public List<String> criteria() {
        return criteria.stream().map(Criterion::id).toList();
    }

    /** The facts that the criteria of the stages up to {@code reached} are about. */
    public Set<Class<? extends CaseFact>> about(Stage reached) {
        Set<Class<? extends CaseFact>> about = new HashSet<>();
        for (Criterion c : criteria) {
            if (reached.hasReached(c.stage())) {
                about.add(c.about());
            }
        }
        return about;
    }

    /** Judges by every criterion. */
    public Judgement judge(List<? extends CaseFact> facts) {
        return judge(facts, Stage.HOLDING);
    }

    /** Judges by the criteria of all stages up to {@code reached}. */
    public Judgement judge(List<? extends CaseFact> facts, Stage reached) {
        return judge(facts, reached, null);
    }

    /** The same by those criteria alone whose numbers in the catalogue are {@code wanted}. */
    public Judgement judge(List<? extends CaseFact> facts, Stage reached, @Nullable BitSet wanted) {
        Judgement judgement = new Judgement(criteria, facts);
        List<CaseFact> open = new ArrayList<>();
        for (int i = 0; i < criteria.size(); i++) {
            if ((wanted == null || wanted.get(i))
                    && reached.hasReached(criteria.get(i).stage())) {
                judgement.remember(i, memos.get(i), open);
            }
        }
        judgement.hear(open.isEmpty() ? Engine.Heard.NOTHING : engine.ask(open, limits), limits, memos);
        return judgement;
    }

    /** The same by the engine alone, whatever it has said before. */
    public Judge withoutMemo() {
        return new Judge(criteria, limits, engine, true);
    }

    /** How many answers of the engine are remembered. */
    int remembered() {
        return memos.stream().mapToInt(Memo::size).sum();
    }
}
