package dev.fairlead.audit.summary;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** A count of something that has a name. */
public record Named(String name, long count) {
    static List<Named> most(Map<String, long[]> counts) {
        return counts.entrySet().stream()
                .map(e -> new Named(e.getKey(), e.getValue()[0]))
                .sorted(Comparator.comparingLong(Named::count).reversed().thenComparing(Named::name))
                .toList();
    }
}
