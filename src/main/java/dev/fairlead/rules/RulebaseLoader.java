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

/** Loads a rulebase: texts, check of the DRL, compiled classes, and the count that shows that nothing was lost on the way. */
final class RulebaseLoader {
    private static final Path WORKING_RULES = Path.of("rules");

    private final RuleCache cache;

    RulebaseLoader(RuleCache cache) {
        this.cache = cache;
    }

    static Rulebase builtIn() {
        RulebaseLoader loader = new RulebaseLoader(RuleCache.ofUser());
        BuiltIn builtIn = BuiltIn.onClassPath();
        if (builtIn != null) {
            return loader.load(builtIn.texts(), Map.of(), builtIn);
        }
        if (Files.exists(WORKING_RULES.resolve(RuleFiles.RULEBASE))) {
            return loader.fromFolder(WORKING_RULES);
        }
        throw new RulebaseException(List.of("this program holds no compiled rulebase, and there is no rules/ in the working folder"));
    }

    Rulebase fromFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        BuiltIn builtIn = BuiltIn.onClassPath();
        if (files.text(RuleFiles.RULEBASE) != null) {
            return load(files, thresholds(files), builtIn);
        }
        RuleFiles base = builtIn != null ? builtIn.texts() : RuleFiles.of(WORKING_RULES);
        return load(Overlay.lay(files, base), thresholds(files), builtIn);
    }

    private static Map<String, Double> thresholds(RuleFiles files) {
        String text = files.text(RuleFiles.THRESHOLDS);
        if (text == null) {
            return Map.of();
        }
        List<String> problems = new ArrayList<>();
        Map<String, Double> read = StrictJson.read(RuleFiles.THRESHOLDS, text, new TypeReference<LinkedHashMap<String, Double>>() {}, problems);
        if (read == null || read.containsValue(null)) {
            throw new RulebaseException(read == null ? problems : List.of(RuleFiles.THRESHOLDS + ": a threshold is set to a number"));
        }
        return read;
    }

    /** A rulebase of these files; what {@code builtIn} knows of an unchanged file is taken from there, and null knows nothing. */
    Rulebase load(RuleFiles files, Map<String, Double> thresholds, BuiltIn builtIn) {
        Catalogue catalogue = CatalogueReader.read(files);
        Map<String, String> toCompile = new LinkedHashMap<>();
        Map<String, String> modelClass = new LinkedHashMap<>();
        Map<Criterion, List<PlainRule>> plain = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>(TextCheck.problems(catalogue));
        int expected = 0;
        for (Criterion c : catalogue.criteria()) {
            String path = c.folder() + "/" + RuleFiles.DRL;
            String text = files.text(path);
            BuiltIn.Entry known = builtIn != null && Hash.of(text).equals(builtIn.files().get(path)) ? builtIn.rules().get(path) : null;
            problems.addAll(known != null && unchanged(c, files, builtIn) ? List.of() : DrlLint.problems(c, text, catalogue));
            if (known == null) {
                toCompile.put(path, text);
                continue;
            }
            expected += known.rules();
            if (known.plain().isEmpty()) {
                modelClass.put(path, known.model());
            } else {
                plain.put(c, known.plain());
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
        Engine engine = new Engine(plain, models(catalogue, modelClass, new RuleClasses(classes, RulebaseLoader.class.getClassLoader())));
        if (engine.rules() != expected || expected < 2 * catalogue.criteria().size()) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules where the files of "
                    + catalogue.criteria().size() + " criteria hold " + expected + ": the rulebase is not whole, and nothing is judged by it"));
        }
        return new Rulebase(catalogue, engine, hash(files), thresholds, new Terms(catalogue, files));
    }

    /** True when rules and texts are those that the build has checked. */
    private static boolean unchanged(Criterion c, RuleFiles files, BuiltIn builtIn) {
        String path = c.folder() + "/" + RuleFiles.TEXTS;
        return Hash.of(files.text(path)).equals(builtIn.files().get(path));
    }

    private static Map<Criterion, Model> models(Catalogue catalogue, Map<String, String> modelClass, ClassLoader loader) {
        Map<Criterion, Model> models = new LinkedHashMap<>();
        for (Criterion c : catalogue.criteria()) {
            String name = modelClass.get(c.folder() + "/" + RuleFiles.DRL);
            if (name == null) {
                continue;
            }
            try {
                models.put(c, (Model) loader.loadClass(name).getConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new RulebaseException(List.of(c.folder() + ": its compiled rules cannot be loaded (" + e + ")"));
            }
        }
        return models;
    }

    private static String hash(RuleFiles files) {
        StringBuilder all = new StringBuilder();
        files.all().forEach((path, bytes) -> all.append(path).append(' ').append(Hash.of(bytes)).append('\n'));
        return Hash.of(all.toString());
    }
}
