package dev.fairlead.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.ArrayList;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The rules of all criteria in the engine, ready for sessions; safe to share between threads. */
final class Engine {
    private static final String PACKAGE = "dev.fairlead.rulebase";

    private final Map<Criterion, List<PlainRule>> plain;
    private final Map<Criterion, Model> compiled;
    private final KieBase all;
    private final Map<String, KieBase> alone = new ConcurrentHashMap<>();

    /** Rules as data, and the compiled model of each criterion that has something else. */
    Engine(Map<Criterion, List<PlainRule>> plain, Map<Criterion, Model> compiled) {
        this.plain = new LinkedHashMap<>(plain);
        this.compiled = new LinkedHashMap<>(compiled);
        List<Model> models = new ArrayList<>(this.compiled.values());
        models.add(0, PlainModel.of(PACKAGE, this.plain));
        this.all = KieBaseBuilder.createKieBaseFromModel(models);
    }

    KieBase all() {
        return all;
    }

    /** The rules of one criterion alone; made when first asked for. */
    KieBase only(Criterion criterion) {
        return alone.computeIfAbsent(criterion.id(), id -> KieBaseBuilder.createKieBaseFromModel(List.of(model(id))));
    }

    /** The catalogue may since have been given other thresholds: a criterion is found by its name. */
    private Model model(String id) {
        for (Map.Entry<Criterion, Model> e : compiled.entrySet()) {
            if (e.getKey().id().equals(id)) {
                return e.getValue();
            }
        }
        Criterion c = plain.keySet().stream().filter(k -> k.id().equals(id)).findFirst().orElseThrow();
        return PlainModel.of(PACKAGE, Map.of(c, plain.get(c)));
    }

    /** Number of rules that the engine holds. */
    int rules() {
        return all.getKiePackages().stream().mapToInt(p -> p.getRules().size()).sum();
    }
}
