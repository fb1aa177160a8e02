package dev.fairlead.rules.catalogue;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One thing that the rulebase judges: its texts, thresholds and sources, and which facts it needs.
 *
 * @param id also the name of its folder, the anchor in reports and the key of waivers
 * @param stage stage of care that it belongs to
 * @param title a short statement that is true on a pass
 * @param asks what is demanded; {@code {threshold}} stands for a value with its unit
 * @param why the reason in plain clinical words
 * @param about type of the facts that it looks at
 * @param needs components of that type without which it cannot be judged
 * @param passes what is seen on a pass
 * @param reasons ways in which it warns, by key, in order
 * @param exemptions why it does not apply, by key
 * @param thresholds its own thresholds by short name
 * @param sources keys of the bibliography
 * @param dispute where the literature disagrees; empty when it does not
 */
public record Criterion(
        String id,
        Stage stage,
        String title,
        String asks,
        String why,
        Class<? extends CaseFact> about,
        List<Need> needs,
        String passes,
        Map<String, Reason> reasons,
        Map<String, String> exemptions,
        Map<String, Threshold> thresholds,
        List<String> sources,
        String dispute) {
    private static final Pattern BORROWED = Pattern.compile("\\{([\\w-]+\\.[\\w-]+)}");

    public Criterion {
        needs = List.copyOf(needs);
        reasons = Collections.unmodifiableMap(new LinkedHashMap<>(reasons));
        exemptions = Collections.unmodifiableMap(new LinkedHashMap<>(exemptions));
        thresholds = Collections.unmodifiableMap(new LinkedHashMap<>(thresholds));
        sources = List.copyOf(sources);
    }

    /** The folder of this criterion below the rulebase. */
    public String folder() {
        return stage.word() + "/" + id;
    }

    /** Path of its rules below the rulebase. */
    public String drl() {
        return folder() + "/" + RuleFiles.DRL;
    }

    /**
     * Full names of every threshold that its rules may hold values against: its own, and those of other criteria that
     * {@link #asks} names.
     */
    public List<String> limits() {
        Set<String> names = new LinkedHashSet<>();
        thresholds.values().forEach(t -> names.add(t.name()));
        BORROWED.matcher(asks).results().forEach(m -> names.add(m.group(1)));
        return List.copyOf(names);
    }

    /** The same with other values of thresholds, by full name. */
    Criterion with(Map<String, Double> values) {
        Map<String, Threshold> changed = new LinkedHashMap<>(thresholds);
        changed.replaceAll((key, t) -> t.with(values.getOrDefault(t.name(), t.value())));
        return new Criterion(
                id, stage, title, asks, why, about, needs, passes, reasons, exemptions, changed, sources, dispute);
    }
}
