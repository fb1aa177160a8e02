package dev.fairlead.testing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.shape.Edit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CaseGeneratorTest {
    @Test
    void reachesEveryFactInEveryStateAndStaysInRange() {
        Set<String> known = new HashSet<>();
        Set<String> unknown = new HashSet<>();
        Set<String> inapplicable = new HashSet<>();
        Set<String> all = new HashSet<>();
        CaseGenerator cases = new CaseGenerator(3);
        for (int i = 0; i < 300; i++) {
            Case c = cases.next();
            assertThat(InRange.complaints(c)).isEmpty();
            for (String p : Edit.factPointers(c)) {
                CaseValue fact = (CaseValue) Edit.get(c, p);
                all.add(p);
                (fact.known() ? known : fact.applies() ? unknown : inapplicable).add(p);
            }
        }
        assertThat(known).containsAll(all);
        assertThat(unknown).containsAll(all);
        assertThat(inapplicable)
                .contains("/headFilm/tippingRadius", "/holding/cemented", "/visits/0/resorption")
                .doesNotContain("/bite/overjet");
    }

    @Test
    void theSameSeedGivesTheSameCases() {
        List<Case> once = some(8);
        assertThat(some(8)).isEqualTo(once);
        assertThat(some(9)).isNotEqualTo(once);
    }

    private static List<Case> some(long seed) {
        CaseGenerator cases = new CaseGenerator(seed);
        return Stream.generate(cases::next).limit(20).toList();
    }
}
