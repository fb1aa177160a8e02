package dev.fairlead.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The compiled rules, ready for sessions; safe to share between threads. */
final class Engine {
    private final Map<String, Model> byCriterion;
    private final KieBase all;
    private final Map<String, KieBase> alone = new ConcurrentHashMap<>();

    /** One model a criterion, by criterion id. */
    Engine(Map<String, Model> byCriterion) {
        this.byCriterion = new LinkedHashMap<>(byCriterion);
        this.all = KieBaseBuilder.createKieBaseFromModel(List.copyOf(this.byCriterion.values()));
    }

    KieBase all() {
        return all;
    }

    /** The rules of one criterion alone; made when first asked for. */
    KieBase only(String criterion) {
        return alone.computeIfAbsent(criterion, id -> KieBaseBuilder.createKieBaseFromModel(List.of(byCriterion.get(id))));
    }

    /** Number of rules that the engine holds. */
    int rules() {
        return all.getKiePackages().stream().mapToInt(p -> p.getRules().size()).sum();
    }
}
