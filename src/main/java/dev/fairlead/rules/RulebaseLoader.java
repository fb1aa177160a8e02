package dev.fairlead.rules;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.build.CompiledRules;
import dev.fairlead.rules.build.RuleCache;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;

/**
 * Loads a rulebase: texts, check of the DRL, compiled classes, and the count that shows that nothing was lost on the
 * way.
 */
final class RulebaseLoader {
    private static final Path WORKING_RULES = Path.of("rules");

    private final RuleCache cache;

    RulebaseLoader(RuleCache cache) {
        this.cache = cache;
    }

    static Rulebase builtIn() {
        RulebaseLoader loader = new RulebaseLoader(RuleCache.ofUser());
        Prepared prepared = Prepared.onClassPath();
        if (prepared != null) {
            return loader.load(prepared);
        }
        if (Files.exists(WORKING_RULES.resolve(RuleFiles.RULEBASE))) {
            return loader.fromFolder(WORKING_RULES);
        }
        throw new RulebaseException(
                List.of("this program holds no compiled rulebase, and there is no rules/ in the working folder"));
    }

    private Rulebase load(Prepared prepared) {
        return new Rulebase(
                prepared.catalogue(),
                new Engine.Later(() -> {
                    Packaged packaged = Packaged.onClassPath();
                    if (packaged == null || !packaged.index().hash().equals(prepared.hash())) {
                        throw new RulebaseException(
                                List.of("the built-in rules are not what was compiled: build again"));
                    }
                    Engine engine = load(packaged.texts(), Map.of(), packaged).engine();
                    if (engine.rules() != prepared.rules()) {
                        throw new RulebaseException(List.of("the engine holds " + engine.rules()
                                + " rules where the build had " + prepared.rules()));
                    }
                    return engine;
                }),
                prepared.hash(),
                Map.of(),
                new Terms(prepared.terms(), prepared.decided()));
    }

    /** The built-in rulebase with its texts. */
    record Packaged(BuiltIn index, RuleFiles texts) {
        /** Null when the build left none. */
        static Packaged onClassPath() {
            BuiltIn index = BuiltIn.onClassPath();
            return index == null ? null : new Packaged(index, index.texts());
        }
    }

    Rulebase fromFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        Packaged packaged = Packaged.onClassPath();
        if (files.text(RuleFiles.RULEBASE) != null) {
            return load(files, thresholds(files), packaged);
        }
        RuleFiles base = packaged != null ? packaged.texts() : RuleFiles.of(WORKING_RULES);
        return load(Overlay.lay(files, base), thresholds(files), packaged);
    }

    private static Map<String, Double> thresholds(RuleFiles files) {
        String text = files.text(RuleFiles.THRESHOLDS);
        if (text == null) {
            return Map.of();
        }
        List<String> problems = new ArrayList<>();
        Map<String, Double> read = StrictJson.read(
                RuleFiles.THRESHOLDS, text, new TypeReference<LinkedHashMap<String, Double>>() {}, problems);
        if (read == null || read.containsValue(null)) {
            throw new RulebaseException(
                    read == null ? problems : List.of(RuleFiles.THRESHOLDS + ": a threshold is set to a number"));
        }
        return read;
    }

    /**
     * A rulebase of these files; what was made of an unchanged file in the build is taken from {@code packaged}, which
     * may be null.
     */
    Rulebase load(RuleFiles files, Map<String, Double> thresholds, Packaged packaged) {
        boolean whole = packaged != null && files == packaged.texts();
        Catalogue catalogue = CatalogueReader.read(files);
        List<String> problems = new ArrayList<>(whole ? List.of() : TextCheck.problems(catalogue));
        Map<String, String> toCompile = new LinkedHashMap<>();
        Map<String, String> modelClass = new LinkedHashMap<>();
        Map<String, PlainModel.Source> plain = new LinkedHashMap<>();
        int expected = 0;
        for (Criterion c : catalogue.criteria()) {
            String path = c.folder() + "/" + RuleFiles.DRL;
            BuiltIn.Entry known = whole || packaged != null && files.same(path, packaged.texts())
                    ? packaged.index().rules().get(path)
                    : null;
            if (known == null || !whole && !files.same(c.folder() + "/" + RuleFiles.TEXTS, packaged.texts())) {
                problems.addAll(DrlLint.problems(c, files.text(path), catalogue));
            }
            if (known == null) {
                toCompile.put(path, files.text(path));
                continue;
            }
            expected += known.rules();
            if (known.plain().isEmpty()) {
                modelClass.put(path, known.model());
            } else {
                plain.put(c.id(), new PlainModel.Source(c.id(), c.about(), known.plain()));
            }
        }
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
        Map<String, byte[]> classes = new HashMap<>();
        for (CompiledRules compiled : toCompile.isEmpty() ? List.<CompiledRules>of() : cache.compile(toCompile)) {
            modelClass.put(compiled.path(), compiled.modelClass());
            classes.putAll(compiled.classes());
            expected += compiled.rules();
        }
        Engine engine = new Engine(
                plain, models(catalogue, modelClass, new RuleClasses(classes, RulebaseLoader.class.getClassLoader())));
        if (engine.rules() != expected || expected < 2 * catalogue.criteria().size()) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules where the files of "
                    + catalogue.criteria().size() + " criteria hold " + expected
                    + ": the rulebase is not whole, and nothing is judged by it"));
        }
        return new Rulebase(
                catalogue,
                new Engine.Later(() -> engine),
                whole ? packaged.index().hash() : files.hash(),
                thresholds,
                new Terms(catalogue, files));
    }

    private static Map<String, Model> models(Catalogue catalogue, Map<String, String> modelClass, ClassLoader loader) {
        Map<String, Model> models = new LinkedHashMap<>();
        for (Criterion c : catalogue.criteria()) {
            String name = modelClass.get(c.folder() + "/" + RuleFiles.DRL);
            if (name == null) {
                continue;
            }
            try {
                models.put(
                        c.id(), (Model) loader.loadClass(name).getConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new RulebaseException(List.of(c.folder() + ": its compiled rules cannot be loaded (" + e + ")"));
            }
        }
        return models;
    }
}
