package dev.fairlead.rules.engine;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.drools.model.Model;
import org.jspecify.annotations.Nullable;

/**
 * Makes an engine of a checked rulebase, and counts its rules: what was lost on the way must never look like a pass.
 */
public final class EngineLoader {
    private final RuleCache cache;
    private final @Nullable BuiltIn builtIn;

    /** {@code builtIn} holds what need not be compiled; it may be null. */
    public EngineLoader(RuleCache cache, @Nullable BuiltIn builtIn) {
        this.cache = cache;
        this.builtIn = builtIn;
    }

    /** The engine of what the program was built with. */
    public Engine ofBuild() {
        if (builtIn == null) {
            throw new IllegalStateException("the build left no rules");
        }
        return engine(
                builtIn.models().values(),
                builtIn.rules().values().stream().mapToInt(n -> n).sum(),
                Map.of());
    }

    /** The engine for these rules of a catalogue. */
    public Engine load(Catalogue catalogue, RuleFiles files) {
        List<String> names = new ArrayList<>();
        Map<String, String> toCompile = new LinkedHashMap<>();
        int expected = 0;
        Map<String, String> drl = new LinkedHashMap<>();
        catalogue.criteria().forEach(c -> drl.put(c.drl(), Objects.requireNonNull(files.text(c.drl()), c.drl())));
        for (Map<String, String> texts : DrlCompiler.byPackage(drl).values()) {
            String key = CacheKey.of(texts);
            if (builtIn != null && builtIn.models().containsKey(key)) {
                names.add(builtIn.models().get(key));
                expected += builtIn.rules().getOrDefault(key, 0);
            } else {
                toCompile.putAll(texts);
            }
        }
        Map<String, byte[]> classes = new HashMap<>();
        for (CompiledRules compiled : toCompile.isEmpty() ? List.<CompiledRules>of() : cache.compile(toCompile)) {
            names.add(compiled.modelClass());
            classes.putAll(compiled.classes());
            expected += compiled.rules();
        }
        return engine(names, expected, classes);
    }

    private static Engine engine(Collection<String> models, int rules, Map<String, byte[]> classes) {
        ClassLoader loader = new RuleClasses(classes, EngineLoader.class.getClassLoader());
        Engine engine =
                new Engine(models.stream().map(name -> model(name, loader)).toList());
        if (engine.rules() != rules) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules where the files hold "
                    + rules + ": the rulebase is not whole, and nothing is judged by it"));
        }
        return engine;
    }

    private static Model model(String name, ClassLoader loader) {
        try {
            return (Model) loader.loadClass(name).getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException(List.of("compiled rules cannot be loaded (" + e + ")"));
        }
    }
}
