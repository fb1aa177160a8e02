package dev.fairlead.web.page;

import dev.fairlead.findings.Asks;
import dev.fairlead.findings.Numbers;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A criterion as the book shows it.
 *
 * @param standard the same criterion as it comes with the program; null when the site added it
 */
public record BookEntry(
        Criterion criterion, Catalogue catalogue, @Nullable Criterion standard) {
    /** One threshold in force beside what comes with the program. */
    public record Line(Threshold threshold, String value, String range, String usual, boolean differs) {}

    public String asks() {
        return Asks.of(criterion, catalogue);
    }

    public List<Line> lines() {
        return criterion.thresholds().entrySet().stream()
                .map(e -> line(e.getKey(), e.getValue()))
                .toList();
    }

    /** Limits of other criteria that it holds values against as well, in words. */
    public List<String> borrowed() {
        return criterion.limits().stream()
                .map(catalogue.thresholds()::get)
                .filter(t -> !criterion.thresholds().containsValue(t))
                .map(t -> t.says() + ": " + Numbers.text(t) + " (" + t.name().replaceAll("\\..*", "") + ")")
                .toList();
    }

    private Line line(String key, Threshold t) {
        Threshold usual = standard == null ? null : standard.thresholds().get(key);
        boolean differs = usual == null || usual.value() != t.value();
        return new Line(
                t,
                Numbers.text(t),
                Numbers.text(t.with(t.low())) + " to " + Numbers.text(t.with(t.high())),
                usual == null ? "" : Numbers.text(usual),
                differs);
    }

    /** True when the site added it, or changed a threshold or a text of it. */
    public boolean differs() {
        return standard == null || lines().stream().anyMatch(Line::differs) || wordsDiffer();
    }

    public boolean wordsDiffer() {
        return standard != null
                && !(criterion.title() + criterion.asks() + criterion.why() + criterion.reasons())
                        .equals(standard.title() + standard.asks() + standard.why() + standard.reasons());
    }

    /** What the criterion and its thresholds rest on, each once. */
    public List<Source> sources() {
        Set<String> keys = new LinkedHashSet<>(criterion.sources());
        criterion.thresholds().values().forEach(t -> keys.addAll(t.sources()));
        return keys.stream()
                .map(catalogue.sources()::get)
                .filter(java.util.Objects::nonNull)
                .toList();
    }

    /** Facts that it cannot do without, in words. */
    public List<String> needs() {
        return criterion.needs().stream()
                .map(n -> n.component().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT))
                .toList();
    }
}
