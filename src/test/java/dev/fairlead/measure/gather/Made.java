package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import java.util.List;
import java.util.Optional;

/** Facts of one kind that a case makes. */
final class Made {
    private Made() {}

    static <T extends CaseFact> List<T> all(CaseBuilder b, Class<T> kind) {
        return Measures.of(b.build(), Optional.empty(), Workbook.none()).facts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** The one that stands at that place of a case. */
    static <T extends CaseFact> T at(CaseBuilder b, Class<T> kind, String pointer) {
        return all(b, kind).stream()
                .filter(f -> f.place().pointer().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    static <T extends CaseFact> T first(CaseBuilder b, Class<T> kind) {
        return all(b, kind).get(0);
    }
}
