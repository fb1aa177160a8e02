package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Mirror;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** What must hold for form, need and position of any case. */
class FrontPropertiesTest {
    private static final Set<String> GROUPS = Set.of("Arch form", "Incisor position");

    private static Map<String, Working> front(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept()).workings().stream()
                .filter(w -> GROUPS.contains(w.group()))
                .collect(Collectors.toMap(Working::id, w -> w));
    }

    /**
     * Facts are forgotten one after another until none is left: no number that was unknown may become known on the way.
     */
    @RepeatedTest(3)
    void forgettingNeverTeaches(RepetitionInfo run) {
        CaseBuilder b = SampleCase.full();
        List<String> pointers = new ArrayList<>(b.values().keySet());
        Collections.shuffle(pointers, new Random(run.getCurrentRepetition()));
        Map<String, Working> before = front(b);
        for (String pointer : pointers) {
            b.without(pointer);
            Map<String, Working> after = front(b);
            for (Working w : after.values()) {
                Working then = before.get(w.id());
                if (w.value().known()
                        && then != null
                        && then.value().applies()
                        && !then.value().known()) {
                    throw new AssertionError(w.id() + " became known when " + pointer + " was forgotten");
                }
            }
            before = after;
        }
        assertThat(before.values()).noneMatch(w -> w.value().known());
    }

    @Test
    void aMirrorMirrors() {
        CaseBuilder b = SampleCase.full()
                .set("/plan/advanceLeft", 2.5)
                .set("/plan/advanceRight", 1)
                .set("/space/left", 19.2);
        Map<String, Working> one = front(b);
        Map<String, Working> other = front(Mirror.of(b));
        for (Working w : one.values()) {
            if (!w.value().known()) {
                continue;
            }
            Working m = other.get(Mirror.name(w.id()));
            boolean turns = w.id().endsWith("front-sideways") || w.id().endsWith("front-yaw");
            assertThat(m.value().value())
                    .as(w.id())
                    .isEqualTo(turns ? -w.value().value() : w.value().value(), within(1e-6));
        }
        assertThat(one.get("position.front-sideways").value().value()).isNotZero();
    }
}
