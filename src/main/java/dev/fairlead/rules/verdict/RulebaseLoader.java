package dev.fairlead.rules.verdict;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.base.Background;
import dev.fairlead.model.Clinic;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
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
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Loads a rulebase: texts, check of texts and DRL, engine. */
final class RulebaseLoader {
    private final RuleCache cache;
    private final @Nullable BuiltIn builtIn = BuiltIn.onClassPath();
    private final List<CompiledRules> known = builtIn == null ? List.of() : builtIn.rules();
    private final @Nullable Path source = BuiltIn.source();

    RulebaseLoader(RuleCache cache) {
        this.cache = cache;
    }

    /**
     * What the program was built with; where its {@code rules} folder was edited since, that folder counts. The engine
     * is made beside the reading of the texts: each takes about as long.
     */
    Rulebase builtIn() {
        Supplier<Engine> engine = known.isEmpty() ? null : Background.start("engine", () -> new Engine(known));
        return load(base(), Map.of(), engine);
    }

    Rulebase fromFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        RuleFiles whole = files.text(RuleFiles.RULEBASE) != null ? files : files.over(base());
        return load(whole, files.json(RuleFiles.THRESHOLDS, new TypeReference<>() {}, Map.of()), null);
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

    /** What the build has compiled, it has checked too; its engine may be on the way already. */
    private Rulebase load(RuleFiles files, Map<String, Double> thresholds, @Nullable Supplier<Engine> onTheWay) {
        String hash = files.hash();
        boolean built = builtIn != null && hash.equals(builtIn.hash());
        Catalogue catalogue = built ? CatalogueReader.read(files) : RulebaseCheck.check(files);
        Engine engine = built && onTheWay != null ? onTheWay.get() : new Engine(cache.compile(files.rules(), known));
        return new Rulebase(catalogue, engine, hash, thresholds, clinic(files));
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
