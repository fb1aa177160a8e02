package dev.fairlead.rules.catalogue;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * All criteria of a rulebase in their fixed order, with the bibliography.
 *
 * @param version what the rulebase calls itself
 * @param criteria stage by stage, in the order of {@code rulebase.json} within a stage
 * @param sources the bibliography by key
 * @param causes criteria that warn of one cause in several ways, by the name of the cause
 * @param thresholds every threshold by full name
 */
public record Catalogue(
        String version,
        List<Criterion> criteria,
        Map<String, Source> sources,
        Map<String, List<String>> causes,
        Map<String, Threshold> thresholds) {
    public Catalogue {
        criteria = List.copyOf(criteria);
        sources = Collections.unmodifiableMap(sources);
        causes = Collections.unmodifiableMap(causes);
        thresholds = Collections.unmodifiableMap(thresholds);
    }

    Catalogue(String version, List<Criterion> criteria, Map<String, Source> sources, Map<String, List<String>> causes) {
        this(version, criteria, sources, causes, byName(criteria));
    }

    private static Map<String, Threshold> byName(List<Criterion> criteria) {
        Map<String, Threshold> all = new LinkedHashMap<>();
        criteria.forEach(c -> c.thresholds().values().forEach(t -> all.put(t.name(), t)));
        return all;
    }

    public List<Criterion> criteria(Stage stage) {
        return criteria.stream().filter(c -> c.stage() == stage).toList();
    }

    /** The criterion of that identifier, or null. */
    public @Nullable Criterion criterion(String id) {
        return criteria.stream().filter(c -> c.id().equals(id)).findFirst().orElse(null);
    }

    /** The threshold of that full name; the lint lets no rule or text name another. */
    public Threshold threshold(String name) {
        return Objects.requireNonNull(thresholds.get(name), name);
    }

    /** The thresholds as rules read them. */
    public Limits limits() {
        Map<String, Limit> limits = new HashMap<>();
        thresholds.forEach((name, t) -> limits.put(name, t.limit()));
        return new Limits(limits);
    }

    /**
     * The same catalogue with other threshold values (full name to value in the threshold's unit); every wrong one is
     * named at once.
     */
    public Catalogue with(Map<String, Double> values) {
        if (values.isEmpty()) {
            return this;
        }
        List<String> problems = new ArrayList<>();
        values.forEach((name, value) -> {
            Threshold t = thresholds.get(name);
            String fault = t == null ? "no threshold is called " + name : t.fault(value);
            if (fault != null) {
                problems.add(fault);
            }
        });
        RulebaseException.throwIfAny(problems);
        return new Catalogue(version, criteria.stream().map(c -> c.with(values)).toList(), sources, causes);
    }
}
