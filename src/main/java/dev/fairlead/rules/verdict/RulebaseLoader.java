package dev.fairlead.rules.verdict;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.model.Clinic;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Overlay;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.StrictJson;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.EngineLoader;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.language.RulebaseCheck;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;

/** Loads a rulebase: texts, check of texts and DRL, engine. */
final class RulebaseLoader {
    private final @Nullable BuiltIn builtIn = BuiltIn.onClassPath();
    private final EngineLoader engines;

    RulebaseLoader(RuleCache cache) {
        this.engines = new EngineLoader(cache, builtIn);
    }

    /**
     * What the program was built with; where its {@code rules} folder was edited since, that folder counts. The engine
     * is made beside the reading of the texts: each takes about as long.
     */
    Rulebase builtIn() {
        CompletableFuture<Engine> engine = new CompletableFuture<>();
        if (builtIn != null) {
            Thread maker = new Thread(() -> engine.completeAsync(engines::ofBuild, Runnable::run), "engine");
            maker.setDaemon(true);
            maker.start();
        }
        Path source = BuiltIn.source();
        RuleFiles edited = source == null ? null : RuleFiles.of(source);
        if (builtIn != null && (edited == null || edited.hash().equals(builtIn.hash()))) {
            Catalogue catalogue = CatalogueReader.read(builtIn.texts());
            return rulebase(catalogue, made(engine), builtIn.hash(), Map.of(), Clinic.PUBLISHED);
        }
        if (edited == null) {
            throw new RulebaseException(
                    List.of("this program holds no compiled rulebase, and there is no rules folder beside it"));
        }
        return load(edited, Map.of());
    }

    private static Engine made(CompletableFuture<Engine> engine) {
        try {
            return engine.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RulebaseException own ? own : e;
        }
    }

    /** Every criterion passes by one rule and warns by another: fewer than that were lost on the way. */
    private static Rulebase rulebase(
            Catalogue catalogue, Engine engine, String hash, Map<String, Double> thresholds, Clinic clinic) {
        int criteria = catalogue.criteria().size();
        if (engine.rules() < 2 * criteria) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules for " + criteria
                    + " criteria: the rulebase is not whole, and nothing is judged by it"));
        }
        return new Rulebase(catalogue, engine, hash, thresholds, clinic);
    }

    Rulebase fromFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        RuleFiles whole = files.text(RuleFiles.RULEBASE) != null ? files : Overlay.lay(files, base());
        return load(whole, thresholds(files));
    }

    private RuleFiles base() {
        Path source = BuiltIn.source();
        if (source != null) {
            return RuleFiles.of(source);
        }
        if (builtIn == null) {
            throw new RulebaseException(List.of("this program holds no rulebase to lay the folder over"));
        }
        return builtIn.files();
    }

    private Rulebase load(RuleFiles files, Map<String, Double> thresholds) {
        String hash = files.hash();
        // the build has checked what it compiled
        boolean checked = builtIn != null && hash.equals(builtIn.hash());
        Catalogue catalogue = checked ? CatalogueReader.read(files) : RulebaseCheck.check(files);
        return rulebase(catalogue, engines.load(catalogue, files), hash, thresholds, clinic(files));
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

    private static Clinic clinic(RuleFiles files) {
        String text = files.text(RuleFiles.CLINIC);
        if (text == null) {
            return Clinic.PUBLISHED;
        }
        List<String> problems = new ArrayList<>();
        Clinic read = StrictJson.read(RuleFiles.CLINIC, text, new TypeReference<Clinic>() {}, problems);
        if (read != null) {
            read.faults().forEach(f -> problems.add(RuleFiles.CLINIC + ": " + f));
        }
        if (read == null || !problems.isEmpty()) {
            throw new RulebaseException(
                    problems.isEmpty() ? List.of(RuleFiles.CLINIC + ": it says nothing") : problems);
        }
        return read;
    }
}
