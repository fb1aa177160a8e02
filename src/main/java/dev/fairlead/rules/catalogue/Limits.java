package dev.fairlead.rules.catalogue;

import dev.fairlead.model.Limit;
import java.util.Map;

/** All thresholds in force by full name ({@code criterion-id.threshold}); the global {@code limits} of every rule. */
public final class Limits {
    private final Map<String, Limit> byName;

    public Limits(Map<String, Limit> byName) {
        this.byName = Map.copyOf(byName);
    }

    /**
     * The threshold of that name; unknown names are found when a rulebase is loaded, so here they are our own error.
     */
    public Limit of(String name) {
        Limit limit = byName.get(name);
        if (limit == null) {
            throw new IllegalArgumentException("no threshold is called " + name);
        }
        return limit;
    }

    public Map<String, Limit> all() {
        return byName;
    }
}
