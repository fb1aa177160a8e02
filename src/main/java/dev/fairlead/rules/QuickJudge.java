package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Knowable;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Judges many variants of a case quickly and as the engine would: a rule looks at one fact through a few plain conditions, so that how a
 * criterion ends at a place depends on nothing but which of its conditions hold and which of its needs are known and apply. The
 * engine is asked once for each such combination; what it said is kept. Safe to share between threads.
 */
public final class QuickJudge {
    /** Beyond this many combinations nothing more is kept; the rulebase that comes with the program has fewer than a thousand likely ones. */
    private static final int MOST_KEPT = 100_000;

    private final Judge judge;
    private final Limits limits;
    private final List<Criterion> criteria;
    private final List<List<Term>> terms = new ArrayList<>();
    private final List<Map<Object, Ending>> kept = new ArrayList<>();
    private final java.util.concurrent.atomic.AtomicInteger size = new java.util.concurrent.atomic.AtomicInteger();

    QuickJudge(Judge judge, Limits limits, Catalogue catalogue, Map<String, List<Term>> terms) {
        this.judge = judge;
        this.limits = limits;
        this.criteria = catalogue.criteria();
        for (Criterion c : criteria) {
            this.terms.add(terms.get(c.id()));
            this.kept.add(new ConcurrentHashMap<>());
        }
    }

    /** The criteria in the order of the endings that {@link #endings} gives. */
    public List<String> criteria() {
        return criteria.stream().map(Criterion::id).toList();
    }

    /** How every criterion ends; null for those of stages that are not reached, and for those left out of {@code wanted}. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached, BitSet wanted) {
        Map<Class<?>, List<CaseFact>> byType = new HashMap<>();
        facts.forEach(f -> byType.computeIfAbsent(f.getClass(), t -> new ArrayList<>(4)).add(f));
        Ending[] endings = new Ending[criteria.size()];
        Judgement asked = null;
        for (int i = 0; i < endings.length; i++) {
            Criterion c = criteria.get(i);
            if (!wanted.get(i) || !reached.hasReached(c.stage())) {
                continue;
            }
            Ending found = ending(i, byType.getOrDefault(c.about(), List.of()));
            if (found == null) {
                asked = asked != null ? asked : keep(judge.judge(facts));
                CriterionResult result = asked.of(c.id());
                found = Ending.of(result);
            }
            endings[i] = found;
        }
        return endings;
    }

    /** How every criterion of the stages reached ends. */
    public Ending[] endings(List<? extends CaseFact> facts, Stage reached) {
        BitSet all = new BitSet();
        all.set(0, criteria.size());
        return endings(facts, reached, all);
    }

    /** The ending over all places; null when a combination was not seen before. */
    private Ending ending(int criterion, List<CaseFact> about) {
        Ending heaviest = about.isEmpty() ? Ending.NOT_ASSESSED : Ending.FAILED;
        for (CaseFact fact : about) {
            Ending here = kept.get(criterion).get(combination(criterion, fact));
            if (here == null) {
                return null;
            }
            heaviest = here.compareTo(heaviest) < 0 ? here : heaviest;
        }
        return heaviest;
    }

    private Judgement keep(Judgement judged) {
        for (int i = 0; i < criteria.size(); i++) {
            CriterionResult result = judged.of(criteria.get(i).id());
            for (PlaceResult place : result.failed() ? List.<PlaceResult>of() : result.places()) {
                if (place.fact() != null && size.get() < MOST_KEPT && kept.get(i).put(combination(i, place.fact()), Ending.of(place)) == null) {
                    size.incrementAndGet();
                }
            }
        }
        return judged;
    }

    /** Which conditions hold and which needs are known and apply, as bits. */
    private Object combination(int criterion, CaseFact fact) {
        List<Term> conditions = terms.get(criterion);
        List<Need> needs = criteria.get(criterion).needs();
        int bits = conditions.size() + 2 * needs.size();
        if (bits > Long.SIZE) {
            return wide(conditions, needs, fact);
        }
        long mask = 0;
        for (int i = 0; i < conditions.size(); i++) {
            mask = mask << 1 | (conditions.get(i).holds(fact, limits) ? 1 : 0);
        }
        for (int i = 0; i < needs.size(); i++) {
            Knowable k = needs.get(i).of(fact);
            mask = mask << 2 | (k.known() ? 3 : k.applies() ? 1 : 0);
        }
        return mask;
    }

    private BitSet wide(List<Term> conditions, List<Need> needs, CaseFact fact) {
        BitSet mask = new BitSet();
        int at = 0;
        for (Term t : conditions) {
            mask.set(at++, t.holds(fact, limits));
        }
        for (Need n : needs) {
            Knowable k = n.of(fact);
            mask.set(at++, k.known());
            mask.set(at++, k.applies());
        }
        return mask;
    }
}
