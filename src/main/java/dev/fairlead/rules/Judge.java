package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * Judges the facts of one case by a rulebase. What the engine has decided for one fact it has decided for every fact
 * that its conditions cannot tell from that one, so it is asked only what it was not asked before; for the rulebase
 * that comes with the program the build has asked it everything. Safe to share between threads; the order of facts does
 * not matter.
 */
public final class Judge {
    private final Catalogue catalogue;
    private final Limits limits;
    private final Engine.Later engine;
    private final Terms terms;
    private final AtomicBoolean asked = new AtomicBoolean();
    private volatile Judgement first;
    private volatile Known known;

    Judge(Catalogue catalogue, Limits limits, Engine.Later engine, Terms terms) {
        this.catalogue = catalogue;
        this.limits = limits;
        this.engine = engine;
        this.terms = terms;
    }

    /** Judges by every criterion. */
    public Judgement judge(List<? extends CaseFact> facts) {
        return judge(facts, Stage.HOLDING);
    }

    /** Judges by the criteria of all stages up to {@code reached}. */
    public Judgement judge(List<? extends CaseFact> facts, Stage reached) {
        if (!asked.getAndSet(true) && terms.decided().isEmpty()) {
            // a single case has nothing to gain from what is learned: that begins when more is asked
            Judgement judged = byEngine(facts, reached);
            first = judged;
            return judged;
        }
        Known before = known();
        Judgement quick = before.new Sorted(facts, true).judgement(reached);
        if (quick != null) {
            return quick;
        }
        Judgement judged = byEngine(facts, reached);
        before.keep(judged);
        return judged;
    }

    /** How each criterion of all stages up to {@code reached} ends, for many cases one after another. */
    public Endings endings(List<? extends CaseFact> facts, Stage reached) {
        Known before = known();
        Endings quick = before.new Sorted(facts, false).endings(reached);
        if (quick != null) {
            return quick;
        }
        Judgement judged = byEngine(facts, reached);
        before.keep(judged);
        return Endings.of(judged, catalogue.criteria());
    }

    /** What the engine has decided so far. */
    Known known() {
        Known now = known;
        if (now == null) {
            synchronized (this) {
                now = known == null ? new Known(catalogue, limits, terms.all(), terms.decided()) : known;
                known = now;
            }
        }
        Judgement judged = first;
        if (judged != null) {
            now.keep(judged);
            first = null;
        }
        return now;
    }

    Catalogue catalogue() {
        return catalogue;
    }

    /** The same by the engine alone, whatever it has said before. */
    public Judgement byEngine(List<? extends CaseFact> facts, Stage reached) {
        List<CaseFact> sorted = new ArrayList<>(facts);
        sorted.sort(PlaceOrder.FACTS);
        List<OwnError> errors = new ArrayList<>();
        List<Verdict> verdicts;
        try {
            verdicts = fire(engine.get().all(), sorted);
        } catch (RuntimeException e) {
            // one failing condition stops the whole session: find the criterion that fails, and judge by all others
            verdicts = fireEach(sorted, errors);
        }
        return new FillIn(catalogue, limits, sorted, verdicts, errors).judgement(reached);
    }

    private List<Verdict> fireEach(List<CaseFact> facts, List<OwnError> errors) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Criterion c : catalogue.criteria()) {
            try {
                verdicts.addAll(fire(engine.get().only(c.id()), facts));
            } catch (RuntimeException e) {
                errors.add(new OwnError(c.id(), "a rule failed: " + rootCause(e)));
            }
        }
        return verdicts;
    }

    private List<Verdict> fire(KieBase rules, List<CaseFact> facts) {
        Verdicts verdicts = new Verdicts();
        KieSession session = rules.newKieSession();
        try {
            session.setGlobal("limits", limits);
            session.setGlobal("verdicts", verdicts);
            facts.forEach(session::insert);
            session.fireAllRules();
        } finally {
            session.dispose();
        }
        return verdicts.all();
    }

    private static String rootCause(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.toString();
    }
}
