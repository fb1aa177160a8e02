package dev.fairlead.rules.catalogue;

import dev.fairlead.model.Limit;
import java.util.Map;

/**
 * The thresholds in force; the global {@code limits} of every rule.
 *
 * @param all by full name ({@code criterion-id.threshold})
 */
public record Limits(Map<String, Limit> all) {
    public Limits {
        all = Map.copyOf(all);
    }

    /**
     * The threshold of that name; unknown names are found when a rulebase is loaded, so here they are our own error.
     */
    public Limit of(String name) {
        Limit limit = all.get(name);
        if (limit == null) {
            throw new IllegalArgumentException("no threshold is called " + name);
        }
        return limit;
    }
}
