package dev.fairlead.web.page;

import dev.fairlead.findings.Missing;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Source;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The worked numbers of a case under their headings. */
public final class WorkedNumbers {
    private static final MathContext DIGITS = new MathContext(4);

    private WorkedNumbers() {}

    /** WorkedNumbers under one heading. */
    public record Group(String title, List<Working> workings) {}

    /** All groups in the order in which they were worked out. */
    public static List<Group> of(Panel panel) {
        Map<String, List<Working>> groups = new LinkedHashMap<>();
        panel.report()
                .ifPresent(r -> r.workings()
                        .forEach(w -> groups.computeIfAbsent(w.group(), g -> new ArrayList<>())
                                .add(w)));
        return groups.entrySet().stream()
                .map(e -> new Group(e.getKey(), e.getValue()))
                .toList();
    }

    /** What one rests on, numbered in the order in which it is first cited on the page. */
    public record Cited(int number, String citation, String kind) {}

    /**
     * All sources of the worked numbers by their keys; a key without an entry in the bibliography stands for itself.
     */
    public static Map<String, Cited> cited(Panel panel, Map<String, Source> bibliography) {
        Map<String, Cited> all = new LinkedHashMap<>();
        panel.report()
                .ifPresent(r -> r.workings().stream()
                        .flatMap(w -> w.sources().stream())
                        .forEach(key -> all.computeIfAbsent(key, k -> {
                            Source s = bibliography.get(k);
                            return new Cited(
                                    all.size() + 1,
                                    s == null ? k : s.citation(),
                                    s == null
                                            ? "not in the bibliography of this rulebase"
                                            : s.kind()
                                                    .name()
                                                    .toLowerCase(java.util.Locale.ROOT)
                                                    .replace('_', ' '));
                        })));
        return all;
    }

    /** What a number waits for, with words: as the findings of the case tell it, where one of them waits for it too. */
    public static List<Missing> missing(Panel panel, Working w) {
        if (w.value().known() || !w.value().applies()) {
            return List.of();
        }
        Map<String, Missing> told = new HashMap<>();
        panel.report()
                .ifPresent(r -> r.findings().all().forEach(f -> f.missing().forEach(m -> told.put(m.pointer(), m))));
        return w.value().missing().stream()
                .map(p -> told.getOrDefault(p, Missing.of(p)))
                .toList();
    }

    /** A value with its error and unit; says so when it is not known. */
    public static String value(Working w) {
        Measured m = w.value();
        if (!m.known()) {
            return m.applies() ? "not known" : "does not apply";
        }
        String symbol = m.unit().symbol();
        String unit = symbol.isEmpty() ? "" : symbol.equals("°") || symbol.equals("%") ? symbol : "\u00a0" + symbol;
        return round(m.value()) + (m.sd() > 0 ? " ± " + round(m.sd()) : "") + unit;
    }

    private static String round(double v) {
        BigDecimal d = BigDecimal.valueOf(v).round(DIGITS);
        return d.setScale(Math.min(2, Math.max(0, d.scale())), java.math.RoundingMode.HALF_UP)
                .toPlainString();
    }
}
