package dev.fairlead.measure;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.VisitReadings;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.testing.CaseGenerator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Facts of whole cases: every kind is made, and what is missing is named. */
class MeasuresTest {
    private static Worked work(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.none());
    }

    @Test
    void everyKindOfFactIsMadeFromAFullCase() {
        Set<Class<?>> made = new HashSet<>();
        work(SampleCase.full()).facts().forEach(f -> made.add(f.getClass()));
        assertThat(made).containsExactlyInAnyOrder(CaseFact.class.getPermittedSubclasses());
    }

    @Test
    void aBlankCaseYieldsOnlyUnknowns() {
        Worked blank = work(new CaseBuilder());
        assertThat(blank.facts()).isNotEmpty();
        for (CaseFact f : blank.facts()) {
            Knowns.of(f).forEach((name, k) -> {
                if (f instanceof VisitReadings) {
                    // readings of visits are held against each other: of no visit nothing applies
                    assertThat(k.applies()).as(name).isFalse();
                    return;
                }
                assertThat(k.known())
                        .as(f.getClass().getSimpleName() + "." + name)
                        .isFalse();
                assertThat(k.missing())
                        .as(f.getClass().getSimpleName() + "." + name)
                        .isNotEmpty()
                        .allMatch(p -> p.startsWith("/"));
            });
        }
    }

    @Test
    @SuppressWarnings("unchecked")
    void whoAsksForAKindOfFactGetsAllOfItAndLessOfOthers() {
        CaseGenerator any = new CaseGenerator(20261129);
        for (Case c : List.of(SampleCase.full().build(), new CaseBuilder().build(), any.next(), any.next())) {
            List<CaseFact> all = facts(c, Calculations.plain());
            for (Class<?> kind : CaseFact.class.getPermittedSubclasses()) {
                List<CaseFact> some = facts(c, Calculations.plain().asking(Set.of((Class<? extends CaseFact>) kind)));
                assertThat(some).hasSizeLessThan(all.size()).isSubsetOf(all);
                assertThat(some.stream().filter(kind::isInstance))
                        .as(kind.getSimpleName())
                        .containsExactlyElementsOf(
                                all.stream().filter(kind::isInstance).toList());
            }
        }
    }

    private static List<CaseFact> facts(Case c, Calculations parts) {
        return Measures.of(c, Optional.empty(), Workbook.none(), parts).facts();
    }

    @Test
    void placesAreUniqueWithinAKind() {
        for (CaseBuilder b : List.of(new CaseBuilder(), SampleCase.full())) {
            assertThat(work(b).facts().stream().map(f -> f.getClass().getSimpleName() + f.place()))
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void sameCaseSameFacts() {
        assertThat(work(SampleCase.full()).facts())
                .isEqualTo(work(SampleCase.full()).facts());
    }
}
