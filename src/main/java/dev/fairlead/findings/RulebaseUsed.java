package dev.fairlead.findings;

import dev.fairlead.rules.verdict.Rulebase;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which rulebase judged.
 *
 * @param hash SHA-256 of all that decides a verdict or its wording
 * @param changed thresholds that differ from its files, by full name
 */
public record RulebaseUsed(String version, String hash, Map<String, Double> changed) {
    public RulebaseUsed {
        changed = Collections.unmodifiableMap(new TreeMap<>(changed));
    }

    public static RulebaseUsed of(Rulebase rulebase) {
        return new RulebaseUsed(rulebase.catalogue().version(), rulebase.hash(), rulebase.changed());
    }
}
