package dev.fairlead.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The rules of all criteria in the engine, ready for sessions; safe to share between threads. */
final class Engine {
    private static final String PACKAGE = "dev.fairlead.rulebase";

    private final Map<String, PlainModel.Source> plain;
    private final Map<String, Model> compiled;
    private final KieBase all;
    private final Map<String, KieBase> alone = new ConcurrentHashMap<>();

    /** By criterion id: rules as data, and the compiled model of each criterion that has something else. */
    Engine(Map<String, PlainModel.Source> plain, Map<String, Model> compiled) {
        this.plain = new LinkedHashMap<>(plain);
        this.compiled = new LinkedHashMap<>(compiled);
        List<Model> models = new ArrayList<>();
        models.add(PlainModel.of(PACKAGE, this.plain.values()));
        models.addAll(this.compiled.values());
        // the engine finds its own parts by the class loader of whoever asks first: that is better not left to a pool's
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
    }

    /**
     * An engine that is made when it is first asked: it takes long, and most cases hold nothing that was not put to it
     * in the build.
     */
    static final class Later {
        private final Supplier<Engine> making;
        private Engine made;

        Later(Supplier<Engine> making) {
            this.making = making;
        }

        synchronized Engine get() {
            if (made == null) {
                made = making.get();
            }
            return made;
        }
    }

    KieBase all() {
        return all;
    }

    /** The rules of one criterion alone; made when first asked for. */
    KieBase only(String criterion) {
        return alone.computeIfAbsent(
                criterion,
                id -> KieBaseBuilder.createKieBaseFromModel(List.of(
                        compiled.containsKey(id) ? compiled.get(id) : PlainModel.of(PACKAGE, List.of(plain.get(id))))));
    }

    /** Number of rules that the engine holds. */
    int rules() {
        return all.getKiePackages().stream().mapToInt(p -> p.getRules().size()).sum();
    }
}
