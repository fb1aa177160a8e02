package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.ActivatedFold;
import dev.fairlead.facts.VisitSeen;
import dev.fairlead.measure.CaseBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of a visit, and what a visit that opened nothing need not tell. */
class VisitFactsTest {
    private static VisitSeen seen(CaseBuilder b) {
        return Made.first(b, VisitSeen.class);
    }

    private static ActivatedFold left(CaseBuilder b) {
        return Made.at(b, ActivatedFold.class, "/visits/0/left");
    }

    private static CaseBuilder opened(String sides) {
        return new CaseBuilder().set("/visits/0/activated", sides).set("/visits/0/date", "2026-03-01");
    }

    @Test
    void visitsAreCountedFromOne() {
        CaseBuilder b = opened("both").set("/visits/1/activated", "none");
        assertThat(Made.all(b, VisitSeen.class)).extracting(VisitSeen::visit).containsExactly(1, 2);
        assertThat(Made.all(b, ActivatedFold.class))
                .extracting(ActivatedFold::visit)
                .containsExactly(1, 1, 2, 2);
    }

    @Test
    void aGaugeTellsTheForceWhateverTheModelSays() {
        CaseBuilder b = opened("both");
        List<String> waits = List.of("/visits/0/beamModelOfTheWireOmitted", "/visits/0/gauge");
        assertThat(seen(b).forceLow().missing()).containsExactlyInAnyOrderElementsOf(waits);
        assertThat(seen(b).forceHigh().missing()).containsExactlyInAnyOrderElementsOf(waits);
        b.set("/visits/0/gauge", 180.0);
        assertThat(seen(b).forceLow().value()).isEqualTo(180);
        assertThat(seen(b).forceHigh().value()).isEqualTo(180);
        b.set("/visits/0/activated", "none");
        assertThat(seen(b).forceLow().value())
                .as("read at a visit that only looked")
                .isEqualTo(180);
    }

    /** Nothing opened and no stand-off read on either side: the wire lies as it lay. */
    @ParameterizedTest
    @CsvSource({
        "none, '', false",
        "none, /visits/0/left/standOff, true",
        "none, /visits/0/right/standOff, true",
        "left, '', true",
        "right, /visits/0/left/standOff, true"
    })
    void aVisitThatOnlyLooksHasNoForces(String sides, String read, boolean asked) {
        CaseBuilder b = opened(sides);
        if (!read.isEmpty()) {
            b.set(read, 1.0);
        }
        VisitSeen v = seen(b);
        assertThat(v.forceLow().applies()).isEqualTo(asked);
        assertThat(v.peakStress().applies()).isEqualTo(asked);
        assertThat(v.overProof().applies()).isEqualTo(asked);
    }

    /** Where nothing was opened nobody need have read it; what was read counts. */
    @Test
    void readingsAreAskedForWhereAFoldWasOpened() {
        assertThat(left(opened("left")).standOff().missing()).containsExactly("/visits/0/left/standOff");
        assertThat(left(opened("right")).standOff().applies()).isFalse();
        assertThat(left(opened("right").set("/visits/0/left/standOff", 1.5))
                        .standOff()
                        .value())
                .isEqualTo(1.5);
        assertThat(left(opened("both").set("/visits/0/left/standOff", 1.5))
                        .standOff()
                        .value())
                .isEqualTo(1.5);
        CaseBuilder untold = opened("both").without("/visits/0/activated");
        assertThat(left(untold).standOff().missing()).containsExactly("/visits/0/left/standOff");
        assertThat(seen(opened("none")).frontOffLevel().applies()).isFalse();
        assertThat(seen(opened("left")).frontOffLevel().missing()).containsExactly("/visits/0/frontOffLevel");
    }

    /** Grade I is what the least that can be felt is called; II and III are more (grades after Miller, from memory). */
    @ParameterizedTest
    @CsvSource({"grade-0, no", "grade-i, no", "grade-ii, yes", "grade-iii, yes"})
    void mobilityAboveTheFirstGrade(String grade, String above) {
        assertThat(seen(opened("both").set("/visits/0/mobility", grade)).mobilityAboveI())
                .hasToString(above);
        assertThat(seen(opened("both")).mobilityAboveI().missing()).containsExactly("/visits/0/mobility");
    }
}
