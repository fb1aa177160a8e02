package dev.fairlead.audit.summary;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** A count of something that has a name. */
public record NamedCount(String name, long count) {
    static List<NamedCount> most(Map<String, long[]> counts) {
        return counts.entrySet().stream()
                .map(e -> new NamedCount(e.getKey(), e.getValue()[0]))
                .sorted(Comparator.comparingLong(NamedCount::count).reversed().thenComparing(NamedCount::name))
                .toList();
    }
}
