package dev.fairlead.rules.engine;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;

/**
 * Makes an engine of a checked rulebase, and counts its rules: what was lost on the way must never look like a pass.
 */
public final class EngineLoader {
    private final RuleCache cache;
    private final BuiltIn builtIn;

    /** {@code builtIn} holds what need not be compiled; it may be null. */
    public EngineLoader(RuleCache cache, BuiltIn builtIn) {
        this.cache = cache;
        this.builtIn = builtIn;
    }

    /** The engine for these rules; for what the program was built with where {@code files} is null. */
    public Engine load(Catalogue catalogue, RuleFiles files) {
        RuleFiles built = files == null || builtIn == null ? null : builtIn.files();
        Map<String, String> classOf = new HashMap<>();
        Map<String, String> toCompile = new LinkedHashMap<>();
        int expected = 0;
        for (Criterion c : catalogue.criteria()) {
            String path = c.drl();
            if (files == null || built != null && files.text(path).equals(built.text(path))) {
                classOf.put(path, builtIn.models().get(path));
                expected += builtIn.rules().get(path);
            } else {
                toCompile.put(path, files.text(path));
            }
        }
        Map<String, byte[]> classes = new HashMap<>();
        for (CompiledRules compiled : toCompile.isEmpty() ? List.<CompiledRules>of() : cache.compile(toCompile)) {
            classOf.put(compiled.path(), compiled.modelClass());
            classes.putAll(compiled.classes());
            expected += compiled.rules();
        }
        ClassLoader loader = new RuleClasses(classes, EngineLoader.class.getClassLoader());
        Map<String, Model> models = new LinkedHashMap<>();
        catalogue.criteria().forEach(c -> models.put(c.id(), model(c, classOf.get(c.drl()), loader)));
        Engine engine = new Engine(models);
        if (engine.rules() != expected || expected < 2 * models.size()) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules where the files of "
                    + models.size() + " criteria hold " + expected
                    + ": the rulebase is not whole, and nothing is judged by it"));
        }
        return engine;
    }

    private static Model model(Criterion c, String name, ClassLoader loader) {
        try {
            return (Model) loader.loadClass(name).getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException(List.of(c.folder() + ": its compiled rules cannot be loaded (" + e + ")"));
        }
    }
}
