package dev.fairlead.rules.verdict;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.base.Background;
import dev.fairlead.base.Hash;
import dev.fairlead.model.Clinic;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.language.RulebaseCheck;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A rulebase ready to judge: catalogue, thresholds in force, compiled rules. Immutable, and safe to share between
 * threads.
 */
public final class Rulebase {
    /** Loaded when first asked for, and kept: it never changes while the program runs. */
    private static @Nullable Rulebase builtIn;

    private final Catalogue catalogue;
    private final Engine engine;
    private final String filesHash;
    private final Map<String, Double> changed;
    private final Judge judge;
    private final Clinic clinic;

    private Rulebase(Catalogue catalogue, Engine engine, String filesHash, Map<String, Double> changed, Clinic clinic) {
        int criteria = catalogue.criteria().size();
        // every criterion passes by one rule and warns by another: fewer than that were lost on the way
        if (engine.rules() < 2 * criteria) {
            throw new RulebaseException(List.of("the engine holds " + engine.rules() + " rules for " + criteria
                    + " criteria: the rulebase is not whole, and nothing is judged by it"));
        }
        this.clinic = clinic;
        this.catalogue = catalogue.with(changed);
        this.engine = engine;
        this.filesHash = filesHash;
        this.changed = Collections.unmodifiableMap(new TreeMap<>(changed));
        this.judge = judge(this.catalogue.limits());
    }

    /**
     * The rulebase that comes with the program. Where the {@code rules} folder that it was built from still stands
     * beside {@code target} and was edited since, the edited rules are compiled and count. The engine is made beside
     * the reading of the texts: each takes about as long.
     */
    public static synchronized Rulebase builtIn() {
        if (builtIn == null) {
            BuiltIn built = BuiltIn.onClassPath();
            Supplier<Engine> engine = Background.start("engine", () -> new Engine(built.rules()));
            builtIn = of(BuiltIn.files(), Map.of(), RuleCache.ofUser(), built, engine);
        }
        return builtIn;
    }

    /**
     * The rulebase that {@code --rules} asks for: the built-in one when {@code folder} is null. With a
     * {@code rulebase.json} a folder stands alone; without one it is laid over the built-in rulebase:
     * {@code thresholds.json} sets thresholds (full name to number, in the threshold's unit),
     * {@code stage/id/criterion.json} changes texts (JSON merge patch, RFC 7396), {@code stage/id/criterion.drl}
     * replaces rules, {@code sources.json} adds to the bibliography, {@code clinic.json} says how teeth answer.
     */
    public static Rulebase load(@Nullable Path folder) {
        return folder == null ? builtIn() : fromFolder(folder, RuleCache.ofUser());
    }

    /** A rulebase from a folder, with another place to keep compiled rules in. */
    public static Rulebase fromFolder(Path folder, RuleCache cache) {
        if (!Files.isDirectory(folder)) {
            throw new RulebaseException(List.of(folder + " is no folder"));
        }
        RuleFiles files = RuleFiles.of(folder);
        RuleFiles whole = files.text(RuleFiles.RULEBASE) != null ? files : files.over(BuiltIn.files());
        Map<String, Double> thresholds = files.json(RuleFiles.THRESHOLDS, new TypeReference<>() {}, Map.of());
        return of(whole, thresholds, cache, BuiltIn.onClassPath(), null);
    }

    /** What the build has compiled, it has checked too; its engine may be on the way already. */
    private static Rulebase of(
            RuleFiles files,
            Map<String, Double> thresholds,
            RuleCache cache,
            BuiltIn built,
            @Nullable Supplier<Engine> onTheWay) {
        String hash = files.hash();
        boolean known = hash.equals(built.hash());
        Catalogue catalogue = known ? CatalogueReader.read(files) : RulebaseCheck.check(files);
        Engine engine =
                known && onTheWay != null ? onTheWay.get() : new Engine(cache.compile(files.rules(), built.rules()));
        Clinic clinic = files.json(RuleFiles.CLINIC, new TypeReference<>() {}, Clinic.PUBLISHED);
        if (files.text(RuleFiles.CLINIC) != null) {
            RulebaseException.throwIfAny(clinic.faults().stream()
                    .map(fault -> RuleFiles.CLINIC + ": " + fault)
                    .toList());
        }
        return new Rulebase(catalogue, engine, hash, thresholds, clinic);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** SHA-256 of all that decides a verdict or its wording: texts, rules, bibliography, changed thresholds. */
    public String hash() {
        return changed.isEmpty() ? filesHash : Hash.of(filesHash + changed);
    }

    /** Thresholds that differ from the files, by full name. */
    public Map<String, Double> changed() {
        return changed;
    }

    /** How teeth answer: as published, or as a clinic's own cases have shown ({@code clinic.json} of an overlay). */
    public Clinic clinic() {
        return clinic;
    }

    /** The same rules with some thresholds set (full name, value in the threshold's unit); nothing is compiled. */
    public Rulebase withThresholds(Map<String, Double> values) {
        Map<String, Double> all = new TreeMap<>(changed);
        all.putAll(values);
        return new Rulebase(catalogue, engine, filesHash, all, clinic);
    }

    /**
     * Judges cases by these rules; always the same, so that all who judge profit from what the engine was asked before.
     */
    public Judge judge() {
        return judge;
    }

    /** The same rules with these limits, allowed or not: for tests that show that every threshold matters. */
    Judge judge(Limits others) {
        return new Judge(catalogue.criteria(), others, engine, false);
    }
}
