package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.Memo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Judges the facts of cases by a rulebase: the engine is asked about every fact that the memo does not know the like
 * of. Safe to share between threads; the order of facts does not matter.
 */
public final class Judge {
    private final List<Criterion> criteria;
    private final Limits limits;
    private final Engine engine;
    private final @Nullable Memo<Ruling> memo;
    /** By stage. */
    private final List<Set<Class<? extends CaseFact>>> about;

    /** Without a memo when {@code memo} is null. */
    Judge(List<Criterion> criteria, Limits limits, Engine engine, @Nullable Memo<Ruling> memo) {
        this.criteria = criteria;
        this.limits = limits;
        this.engine = engine;
        this.memo = memo;
        this.about = Arrays.stream(Stage.values())
                .map(reached -> criteria.stream()
                        .filter(c -> reached.hasReached(c.stage()))
                        .<Class<? extends CaseFact>>map(Criterion::about)
                        .collect(Collectors.toUnmodifiableSet()))
                .toList();
    }

    /** Identifiers of the criteria, in the order in which endings come. */
    public List<String> criteria() {
        return criteria.stream().map(Criterion::id).toList();
    }

    /** The facts that the criteria of the stages up to {@code reached} are about. */
    public Set<Class<? extends CaseFact>> about(Stage reached) {
        return about.get(reached.ordinal());
    }

    /** Judges by every criterion. */
    public Judgement judge(List<? extends CaseFact> facts) {
        return judge(facts, Stage.HOLDING);
    }

    /** Judges by the criteria of all stages up to {@code reached}. */
    public Judgement judge(List<? extends CaseFact> facts, Stage reached) {
        Hearing heard = hear(facts, reached, null);
        List<CriterionResult> results = new ArrayList<>(criteria.size());
        for (int i = 0; i < criteria.size(); i++) {
            if (heard.asked(i)) {
                results.add(heard.result(i));
            }
        }
        return new Judgement(results, heard.errors());
    }

    /** How every criterion of the stages reached ends, with what is missing, and no more: for many cases. */
    public Endings endings(List<? extends CaseFact> facts, Stage reached) {
        Hearing heard = hear(facts, reached, null);
        Ending[] endings = new Ending[criteria.size()];
        List<List<String>> missing = new ArrayList<>(endings.length);
        for (int i = 0; i < endings.length; i++) {
            endings[i] = heard.asked(i) ? heard.ending(i) : null;
            missing.add(endings[i] == Ending.NOT_ASSESSED ? heard.missing(i) : List.of());
        }
        return new Endings(Arrays.asList(endings), missing, heard.errors());
    }

    /** How every criterion of the stages reached ends; null for the others. */
    public Ending[] ends(List<? extends CaseFact> facts, Stage reached) {
        return ends(facts, reached, null);
    }

    /** How the criteria of those numbers in the catalogue end; null for others, and for stages that are not reached. */
    public Ending[] ends(List<? extends CaseFact> facts, Stage reached, @Nullable BitSet wanted) {
        Hearing heard = hear(facts, reached, wanted);
        Ending[] endings = new Ending[criteria.size()];
        for (int i = 0; i < endings.length; i++) {
            endings[i] = heard.asked(i) ? heard.ending(i) : null;
        }
        return endings;
    }

    private Hearing hear(List<? extends CaseFact> facts, Stage reached, @Nullable BitSet wanted) {
        Hearing hearing = new Hearing(criteria, limits, facts);
        for (int i = 0; i < criteria.size(); i++) {
            if ((wanted == null || wanted.get(i))
                    && reached.hasReached(criteria.get(i).stage())) {
                hearing.remember(i, memo);
            }
        }
        hearing.ask(engine, memo);
        return hearing;
    }

    /** The same by the engine alone, whatever it has said before. */
    public Judge withoutMemo() {
        return new Judge(criteria, limits, engine, null);
    }

    /** How many answers of the engine are remembered. */
    int remembered() {
        return memo == null ? 0 : memo.size();
    }
}
