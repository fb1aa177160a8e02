package dev.fairlead.rules.verdict;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.model.Clinic;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Overlay;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.engine.CompiledRules;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.language.RulebaseCheck;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;

/** Loads a rulebase: texts, check of texts and DRL, engine. */
final class RulebaseLoader {
    private final RuleCache cache;
    private final @Nullable BuiltIn builtIn = BuiltIn.onClassPath();
    private final @Nullable Path source = BuiltIn.source();

    RulebaseLoader(RuleCache cache) {
        this.cache = cache;
    }

    /**
     * What the program was built with; where its {@code rules} folder was edited since, that folder counts. The engine
     * is made beside the reading of the texts: each takes about as long.
     */
    Rulebase builtIn() {
        CompletableFuture<Engine> engine = new CompletableFuture<>();
        if (builtIn != null) {
            Thread maker =
                    new Thread(() -> engine.completeAsync(() -> new Engine(builtIn.rules()), Runnable::run), "engine");
            maker.setDaemon(true);
            maker.start();
        }
        RuleFiles files = base();
        String hash = files.hash();
        if (builtIn == null || !hash.equals(builtIn.hash())) {
            return load(files, Map.of());
        }
        // the build has checked what it compiled
        Catalogue catalogue = CatalogueReader.read(files);
        try {
            return rulebase(catalogue, engine.join(), hash, Map.of(), Clinic.PUBLISHED);
        } catch (CompletionException e) {
            throw e.getCause() instanceof RulebaseException own ? own : e;
        }
    }

    Rulebase fromFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        RuleFiles whole = files.text(RuleFiles.RULEBASE) != null ? files : Overlay.lay(files, base());
        String thresholds = files.text(RuleFiles.THRESHOLDS);
        return load(
                whole,
                thresholds == null
                        ? Map.of()
                        : RuleFiles.json(RuleFiles.THRESHOLDS, thresholds, new TypeReference<>() {}));
    }

    /** The files that the program comes with: those that lie beside it, or those that it was built with. */
    private RuleFiles base() {
        if (source != null) {
            return RuleFiles.of(source);
        }
        if (builtIn == null) {
            throw new RulebaseException(
                    List.of("this program holds no compiled rulebase, and there is no rules folder beside it"));
        }
        return builtIn.files();
    }

    private Rulebase load(RuleFiles files, Map<String, Double> thresholds) {
        String hash = files.hash();
        boolean checked = builtIn != null && hash.equals(builtIn.hash());
        Catalogue catalogue = checked ? CatalogueReader.read(files) : RulebaseCheck.check(files);
        List<CompiledRules> compiled = cache.compile(files.rules(), builtIn == null ? List.of() : builtIn.rules());
        return rulebase(catalogue, new Engine(compiled), hash, thresholds, clinic(files));
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

    private static Clinic clinic(RuleFiles files) {
        String text = files.text(RuleFiles.CLINIC);
        if (text == null) {
            return Clinic.PUBLISHED;
        }
        Clinic read = RuleFiles.json(RuleFiles.CLINIC, text, new TypeReference<>() {});
        RulebaseException.throwIfAny(
                read.faults().stream().map(f -> RuleFiles.CLINIC + ": " + f).toList());
        return read;
    }
}
