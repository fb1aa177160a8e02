package dev.fairlead.web.page;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which criteria look at which fact: found by forgetting one fact after the other and looking which of the numbers and
 * answers that criteria ask about are no longer the same, and by forgetting all, for then whatever a criterion asks
 * about names the facts that it would take.
 *
 * @param criteria identifiers of the criteria by pointer of the fact, in the order of the book
 * @param facts pointers of the known facts by identifier of the criterion
 */
public record Uses(Map<String, List<String>> criteria, Map<String, Set<String>> facts) {
    static final Uses NONE = new Uses(Map.of(), Map.of());

    /**
     * Finds uses by one rulebase, and remembers them: they depend on which facts are known far more than on their
     * values.
     */
    static final class Finder {
        private static final int KEPT = 64;
        /**
         * The beam model names all its inputs as missing where nothing is known, so it need not be solved for each of
         * them.
         */
        private static final Calculations PARTS = Calculations.full().withoutForces();

        /** The components of its fact that each criterion cannot do without; its conditions ask about no others. */
        private final Map<Criterion, Collection<Need>> looks = new LinkedHashMap<>();

        private final Map<List<String>, Uses> found = new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<List<String>, Uses> eldest) {
                return size() > KEPT;
            }
        };

        Finder(Rulebase rules) {
            for (Criterion c : rules.catalogue().criteria()) {
                Map<String, Need> needs = new TreeMap<>();
                c.needs().forEach(n -> needs.putIfAbsent(n.component(), n));
                looks.put(c, needs.values());
            }
        }

        /** The uses of the facts of a case. */
        synchronized Uses of(Case c) {
            List<String> all = Edit.factPointers(c);
            Set<String> known = new TreeSet<>();
            all.stream()
                    .filter(p -> Edit.get(c, p) instanceof CaseValue k && k.known())
                    .forEach(known::add);
            List<String> key = new ArrayList<>(all);
            key.addAll(known);
            return found.computeIfAbsent(key, k -> find(c, all, known));
        }

        private Uses find(Case c, List<String> all, Set<String> known) {
            Map<String, Set<String>> facts = new LinkedHashMap<>();
            looks.keySet().forEach(r -> facts.put(r.id(), new TreeSet<>()));
            // the day is held: forgetting the latest event is to show what that fact decides, not what a day decides
            Optional<LocalDate> day = CheckOptions.USUAL.reach(c).day();
            List<CaseFact> present = measured(c, day, PARTS);
            Map<Criterion, List<CaseValue>> now = new LinkedHashMap<>();
            looks.forEach((r, needs) -> now.put(r, asked(present, r, needs)));
            Case blank = c;
            for (String pointer : all) {
                blank = Edit.forget(blank, pointer);
                if (known.contains(pointer)) {
                    List<CaseFact> then = measured(Edit.forget(c, pointer), day, PARTS);
                    looks.forEach((r, needs) -> {
                        if (!asked(then, r, needs).equals(now.get(r))) {
                            of(facts, r).add(pointer);
                        }
                    });
                }
            }
            List<CaseFact> nothing = measured(blank, day, Calculations.full());
            looks.forEach((r, needs) ->
                    asked(nothing, r, needs).forEach(k -> of(facts, r).addAll(k.missing())));
            Map<String, List<String>> criteria = new TreeMap<>();
            facts.forEach((id, pointers) -> pointers.forEach(
                    p -> criteria.computeIfAbsent(p, x -> new ArrayList<>()).add(id)));
            facts.values().forEach(f -> f.retainAll(known));
            return new Uses(criteria, facts);
        }

        private static Set<String> of(Map<String, Set<String>> facts, Criterion c) {
            return Objects.requireNonNull(facts.get(c.id()), c.id());
        }

        private static List<CaseFact> measured(Case c, Optional<LocalDate> day, Calculations parts) {
            return Measures.of(c, day, Workbook.none(), parts).facts();
        }

        private static List<CaseValue> asked(List<CaseFact> facts, Criterion c, Collection<Need> needs) {
            return facts.stream()
                    .filter(f -> f.getClass() == c.about())
                    .flatMap(f -> needs.stream().map(n -> n.of(f)))
                    .toList();
        }
    }

    /** The criteria that look at the fact at a pointer. */
    List<String> of(String pointer) {
        return criteria.getOrDefault(pointer, List.of());
    }

    /** The known facts that a criterion looks at. */
    Set<String> by(String criterion) {
        return facts.getOrDefault(criterion, Set.of());
    }
}
