package dev.fairlead.rules;

import dev.fairlead.rules.build.RuleCache;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A rulebase ready to judge: catalogue, thresholds in force, compiled rules. Immutable, and safe to share between
 * threads.
 */
public final class Rulebase {
    /** Loaded when first asked for, and kept: it never changes while the program runs. */
    private static Rulebase builtIn;

    private final Catalogue catalogue;
    private final Engine.Later engine;
    private final String filesHash;
    private final Map<String, Double> changed;
    private final Limits limits;
    private final Terms terms;
    private final Judge judge;

    Rulebase(Catalogue catalogue, Engine.Later engine, String filesHash, Map<String, Double> changed, Terms terms) {
        this.catalogue = catalogue.with(changed);
        this.engine = engine;
        this.filesHash = filesHash;
        this.changed = new TreeMap<>(changed);
        this.limits = this.catalogue.limits();
        this.terms = terms;
        this.judge = new Judge(this.catalogue, limits, engine, terms);
    }

    /**
     * The rulebase that comes with the program; a program that was not packaged reads {@code rules/} of the working
     * folder instead.
     */
    public static synchronized Rulebase builtIn() {
        if (builtIn == null) {
            builtIn = RulebaseLoader.builtIn();
        }
        return builtIn;
    }

    /**
     * A rulebase from a folder. With a {@code rulebase.json} the folder stands alone; without one it is laid over the
     * built-in rulebase: {@code thresholds.json} sets thresholds (full name to number, in the threshold's unit),
     * {@code stage/id/criterion.json} changes texts (JSON merge patch, RFC 7396), {@code stage/id/criterion.drl}
     * replaces rules, {@code sources.json} adds to the bibliography.
     */
    public static Rulebase fromFolder(Path folder) {
        return fromFolder(folder, RuleCache.ofUser());
    }

    /** The same with another place to keep compiled rules in. */
    public static Rulebase fromFolder(Path folder, RuleCache cache) {
        return new RulebaseLoader(cache).fromFolder(folder);
    }

    /** The rulebase that {@code --rules} asks for: the built-in one when {@code folder} is null. */
    public static Rulebase load(Path folder) {
        return folder == null ? builtIn() : fromFolder(folder);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** The thresholds in force. */
    public Limits limits() {
        return limits;
    }

    public String version() {
        return catalogue.version();
    }

    /** SHA-256 of all that decides a verdict or its wording: texts, rules, bibliography, changed thresholds. */
    public String hash() {
        return changed.isEmpty() ? filesHash : Hash.of(filesHash + changed);
    }

    /** Thresholds that differ from the files, by full name. */
    public Map<String, Double> changed() {
        return Map.copyOf(changed);
    }

    /** The same rules with one threshold set (full name, value in the threshold's unit); nothing is compiled. */
    public Rulebase withThreshold(String name, double value) {
        return withThresholds(Map.of(name, value));
    }

    /** The same rules with some thresholds set; nothing is compiled. */
    public Rulebase withThresholds(Map<String, Double> values) {
        Map<String, Double> all = new TreeMap<>(changed);
        all.putAll(values);
        return new Rulebase(catalogue, engine, filesHash, all, terms);
    }

    /**
     * Judges cases by these rules; always the same, so that all who judge profit from what the engine was asked before.
     */
    public Judge judge() {
        return judge;
    }

    /** Makes ready now what would otherwise be made when a second case, or a variant of the first, is judged. */
    public Rulebase prepared() {
        judge.known();
        return this;
    }

    /** Judges many variants of cases by these rules. */
    public QuickJudge quickJudge() {
        return new QuickJudge(judge);
    }

    /** The conditions that the rules of a criterion put on its fact, each once. */
    public List<Term> terms(String criterion) {
        return terms.all().get(criterion);
    }

    /** The same rules with these limits, allowed or not: for tests that show that every threshold matters. */
    Judge judge(Limits others) {
        return new Judge(catalogue, others, engine, terms);
    }

    Engine engine() {
        return engine.get();
    }

    int ruleCount() {
        return engine.get().rules();
    }
}
