package dev.fairlead.report.summary;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Report;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A fact that is missing, and the criteria that wait for it.
 *
 * @param criteria identifiers, in the order of the report
 */
public record MissingFact(String words, String pointer, List<String> criteria) {
    /** All of a report; the one that most criteria wait for first, and first readings before second ones. */
    public static List<MissingFact> of(Report report) {
        Map<String, List<String>> waiting = new LinkedHashMap<>();
        Map<String, String> words = new HashMap<>();
        for (Finding f : report.findings().forReading()) {
            for (Missing m : f.missing()) {
                words.putIfAbsent(m.pointer(), m.words());
                waiting.computeIfAbsent(m.pointer(), p -> new ArrayList<>()).add(f.id());
            }
        }
        return waiting.entrySet().stream()
                .map(e -> new MissingFact(
                        words.getOrDefault(e.getKey(), ""),
                        e.getKey(),
                        e.getValue().stream().distinct().toList()))
                .sorted(Comparator.comparingInt((MissingFact m) -> -m.criteria().size())
                        .thenComparing(m -> m.pointer().endsWith("/-")))
                .toList();
    }
}
