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

/** All criteria of a rulebase in their fixed order, with the bibliography. */
public final class Catalogue {
    private final String version;
    private final Map<String, Criterion> byId = new LinkedHashMap<>();
    private final Map<String, Source> sources;
    private final Map<String, List<String>> causes;
    private final Map<String, Threshold> thresholds = new LinkedHashMap<>();

    Catalogue(String version, List<Criterion> criteria, Map<String, Source> sources, Map<String, List<String>> causes) {
        this.version = version;
        this.causes = Collections.unmodifiableMap(new LinkedHashMap<>(causes));
        this.sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
        for (Criterion c : criteria) {
            byId.put(c.id(), c);
            for (Threshold t : c.thresholds().values()) {
                thresholds.put(t.name(), t);
            }
        }
    }

    /** The version that the rulebase gives itself. */
    public String version() {
        return version;
    }

    /** Every criterion: stage by stage, in the order of {@code rulebase.json} within a stage. */
    public List<Criterion> criteria() {
        return List.copyOf(byId.values());
    }

    public List<Criterion> criteria(Stage stage) {
        return byId.values().stream().filter(c -> c.stage() == stage).toList();
    }

    /** The criterion of that identifier, or null. */
    public @Nullable Criterion criterion(String id) {
        return byId.get(id);
    }

    /** Criteria that warn of one cause in several ways, by the name of the cause. */
    public Map<String, List<String>> causes() {
        return causes;
    }

    /** The bibliography by key. */
    public Map<String, Source> sources() {
        return sources;
    }

    /** Every threshold by full name. */
    public Map<String, Threshold> thresholds() {
        return Collections.unmodifiableMap(thresholds);
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
        List<Criterion> changed =
                byId.values().stream().map(c -> c.with(values)).toList();
        return new Catalogue(version, changed, sources, causes);
    }
}
