package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The facts of one case by type, each type in the order of its places; components are read once. */
final class FactsByType {
    private final Map<Class<?>, List<CaseFact>> facts = new HashMap<>();
    private final IdentityHashMap<CaseFact, CaseValue[]> parts = new IdentityHashMap<>();

    FactsByType(Collection<? extends CaseFact> all) {
        for (CaseFact fact : all) {
            facts.computeIfAbsent(fact.getClass(), t -> new ArrayList<>(4)).add(fact);
        }
        facts.values().forEach(here -> here.sort(PlaceOrder.FACTS));
    }

    List<CaseFact> of(Class<? extends CaseFact> type) {
        return facts.getOrDefault(type, List.of());
    }

    CaseValue[] parts(CaseFact fact) {
        return parts.computeIfAbsent(fact, CaseFact::components);
    }

    /** Those of {@code some} facts, in a fixed order. */
    List<CaseFact> in(Collection<CaseFact> some) {
        return some.stream().sorted(PlaceOrder.FACTS).toList();
    }
}
