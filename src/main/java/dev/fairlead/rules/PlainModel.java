package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.drools.model.DSL;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Block2;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate2;
import org.drools.model.impl.ModelImpl;

/**
 * Makes the engine's model of rules that are given as data. A thousand small classes would do the same, and take most
 * of a second to load.
 */
final class PlainModel {
    private PlainModel() {}

    /** The rules of a criterion, and the type of fact that they look at. */
    record Source(String id, Class<? extends CaseFact> about, List<PlainRule> rules) {}

    /** One package with all rules of these criteria. */
    static Model of(String name, Collection<Source> criteria) {
        Global<Limits> limits = DSL.globalOf(Limits.class, name, "limits");
        Global<Verdicts> verdicts = DSL.globalOf(Verdicts.class, name, "verdicts");
        List<Rule> rules = new ArrayList<>();
        criteria.forEach(c -> c.rules().forEach(r -> rules.add(rule(name, c, r, limits, verdicts))));
        return new ModelImpl(name).withRules(rules).addGlobal(limits).addGlobal(verdicts);
    }

    private static Rule rule(String name, Source c, PlainRule rule, Global<Limits> limits, Global<Verdicts> verdicts) {
        Variable<CaseFact> fact = declare(c.about());
        PatternDSL.PatternDef<CaseFact> pattern = PatternDSL.pattern(fact);
        for (PlainRule.Condition condition : rule.when()) {
            Holds holds = new Holds(new Term(need(c, condition.component()), condition.kind(), condition.limit()));
            pattern.expr(holds.getExpressionHash(), limits, holds);
        }
        RuleItemBuilder<?> then = DSL.on(verdicts, fact).execute(Says.of(c, rule));
        return PatternDSL.rule(name, rule.name()).build(pattern, then);
    }

    @SuppressWarnings("unchecked")
    private static Variable<CaseFact> declare(Class<? extends CaseFact> about) {
        return (Variable<CaseFact>) DSL.declarationOf(about, "$f");
    }

    private static Need need(Source c, String component) {
        Need need = Need.of(c.about(), component);
        if (need == null) {
            throw new IllegalStateException(c.id() + ": " + c.about().getSimpleName() + " has no " + component);
        }
        return need;
    }

    /** A condition; two that ask the same of the same component share one node of the engine's network. */
    private static final class Holds implements Predicate2<CaseFact, Limits>, HashedExpression {
        private static final long serialVersionUID = 1L;
        private final transient Term term;

        Holds(Term term) {
            this.term = term;
        }

        @Override
        public boolean test(CaseFact fact, Limits limits) {
            return term.holds(fact, limits);
        }

        @Override
        public String getExpressionHash() {
            return term.need().component() + " " + term.kind() + " " + term.limit();
        }
    }

    /** A verdict with the values that it shows. */
    private static final class Says implements Block2<Verdicts, CaseFact> {
        private static final long serialVersionUID = 1L;
        private final transient Source criterion;
        private final transient PlainRule rule;
        private final transient List<Need> seen;
        private final transient List<String> components;

        private Says(Source criterion, PlainRule rule, List<Need> seen) {
            this.criterion = criterion;
            this.rule = rule;
            this.seen = seen;
            this.components = seen.stream().map(Need::component).toList();
        }

        static Says of(Source c, PlainRule rule) {
            return new Says(
                    c,
                    rule,
                    rule.seen().stream().map(s -> need(c, s.component())).toList());
        }

        @Override
        public void execute(Verdicts verdicts, CaseFact fact) {
            Verdict verdict = verdicts.add(criterion.id(), fact, rule.outcome(), rule.reason());
            for (int i = 0; i < seen.size(); i++) {
                verdict.seen(rule.seen().get(i).limit(), (Measured) seen.get(i).of(fact));
            }
            verdict.showing(components);
        }
    }
}
