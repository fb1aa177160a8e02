package dev.fairlead.rules.engine;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.language.Verdicts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** The rules of all criteria in Drools, which alone decides on verdicts; safe to share between threads. */
public final class Engine {
    private final List<Model> models;
    private final KieBase all;
    private final int rules;

    /**
     * What the rules said of some facts.
     *
     * @param verdicts by criterion
     * @param failed criteria of which a rule threw, with what it threw; they gave no verdict
     */
    public record Heard(Map<String, List<Verdict>> verdicts, Map<String, String> failed) {
        /** Where nothing was asked. */
        public static final Heard NOTHING = new Heard(Map.of(), Map.of());
    }

    /** Of compiled rules, which are counted: what was lost on the way must never look like a pass. */
    public Engine(List<CompiledRules> compiled) {
        RuleClasses classes = new RuleClasses(compiled);
        this.models = compiled.stream().map(c -> classes.model(c.model())).toList();
        // Drools finds its own parts by the class loader of whoever asks first: that is better not left to a pool's
        // thread
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(Engine.class.getClassLoader());
        try {
            this.all = KieBaseBuilder.createKieBaseFromModel(models);
            this.all.newKieSession().dispose();
        } finally {
            thread.setContextClassLoader(before);
        }
        this.rules =
                all.getKiePackages().stream().mapToInt(p -> p.getRules().size()).sum();
        int expected = compiled.stream().mapToInt(CompiledRules::rules).sum();
        if (rules != expected) {
            throw new RulebaseException(List.of("the engine holds " + rules + " rules where the files hold " + expected
                    + ": the rulebase is not whole, and nothing is judged by it"));
        }
    }

    /**
     * What all rules say of these facts under these thresholds; each rule looks at one fact, so any facts may be asked
     * about.
     */
    public Heard ask(Collection<? extends CaseFact> facts, Limits limits) {
        Map<String, String> failed = new LinkedHashMap<>();
        List<Verdict> verdicts;
        try {
            verdicts = fire(all, facts, limits);
        } catch (RuntimeException e) {
            // one failing condition stops the whole session: find the criterion that fails, and judge by all others
            verdicts = fireEach(facts, limits, failed);
        }
        Map<String, List<Verdict>> byCriterion = new HashMap<>();
        verdicts.forEach(v -> byCriterion
                .computeIfAbsent(v.criterion(), id -> new ArrayList<>(4))
                .add(v));
        return new Heard(byCriterion, failed);
    }

    private List<Verdict> fireEach(Collection<? extends CaseFact> facts, Limits limits, Map<String, String> failed) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Model model : models) {
            Map<String, List<Rule>> byCriterion = model.getRules().stream()
                    .collect(Collectors.groupingBy(
                            r -> r.getName().substring(0, r.getName().indexOf(": "))));
            byCriterion.forEach((id, rules) -> {
                Model alone = new ModelImpl().withRules(rules).withGlobals(model.getGlobals());
                try {
                    verdicts.addAll(fire(KieBaseBuilder.createKieBaseFromModel(alone), facts, limits));
                } catch (RuntimeException e) {
                    failed.put(id, rootCause(e));
                }
            });
        }
        return verdicts;
    }

    private static List<Verdict> fire(KieBase rules, Collection<? extends CaseFact> facts, Limits limits) {
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

    /** Number of rules that Drools holds. */
    public int rules() {
        return rules;
    }

    private static String rootCause(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.toString();
    }
}
