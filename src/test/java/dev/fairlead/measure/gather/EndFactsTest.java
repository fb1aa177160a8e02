package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.End;
import dev.fairlead.facts.EndSide;
import dev.fairlead.measure.CaseBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Room to spare at the end against this child's need, else against the customary 8 + 8 + 7 = 23 mm; second molars. */
class EndFactsTest {
    private static End end(CaseBuilder b) {
        return Made.first(b, End.class);
    }

    private static CaseBuilder need(CaseBuilder b, int quadrant) {
        for (int position = 3; position <= 5; position++) {
            b.set("/teeth/" + (10 * quadrant + position) + "/width", 7.0);
        }
        return b;
    }

    @Test
    void theLeastRoomIsThatOfTheSideWithLess() {
        CaseBuilder b = need(need(new CaseBuilder(), 3), 4).set("/holding/spaceLeft", 22.0);
        assertThat(end(b).smallestSpare().missing()).containsExactly("/holding/spaceRight");
        assertThat(end(b).leastKnownSpare().value()).isCloseTo(1, within(1e-9));
        b.set("/holding/spaceRight", 21.6);
        assertThat(end(b).smallestSpare().value()).isCloseTo(0.6, within(1e-9));
        assertThat(end(b).leastKnownSpare()).isEqualTo(end(b).smallestSpare());
        b.set("/holding/spaceRight", 22.6);
        assertThat(end(b).leastKnownSpare().value()).isCloseTo(1, within(1e-9));
        EndSide left = Made.first(b, EndSide.class);
        assertThat(left.spare().value()).isCloseTo(1, within(1e-9));
        assertThat(left.spareOfSum().applies()).as("the need itself is known").isFalse();
    }

    @Test
    void whereANeedIsNotKnownTheCustomarySumStandsInForIt() {
        CaseBuilder b =
                need(new CaseBuilder(), 3).set("/holding/spaceLeft", 22.0).set("/holding/spaceRight", 22.5);
        assertThat(end(b).smallestSpare().known()).isFalse();
        assertThat(end(b).leastKnownSpare().value()).as("the right: 22.5 - 23").isCloseTo(-0.5, within(1e-9));
        CaseBuilder neither = new CaseBuilder().set("/holding/spaceLeft", 22.0).set("/holding/spaceRight", 22.5);
        assertThat(Made.all(neither, EndSide.class))
                .extracting(f -> f.side() + " " + f.spareOfSum().value())
                .containsExactly("LEFT -1.0", "RIGHT -0.5");
        b.set("/holding/spaceRight", 25.0);
        assertThat(end(b).leastKnownSpare().value()).as("the left: 22 - 21").isCloseTo(1, within(1e-9));
        b.without("/holding/spaceLeft");
        assertThat(end(b).leastKnownSpare().value())
                .as("the right alone: 25 - 23")
                .isCloseTo(2, within(1e-9));
        b.without("/holding/spaceRight");
        assertThat(end(b).leastKnownSpare().missing()).contains("/holding/spaceLeft", "/holding/spaceRight");
    }

    /** From 8 June to 8 December are six months; once both second molars are in nobody counts them. */
    @ParameterizedTest
    @CsvSource({
        "'', '', 6, no",
        "unerupted, '', 6, yes",
        "'', unerupted, 6, yes",
        "erupted, '', 6, no",
        "erupted, unerupted, 6, yes",
        "unerupted, erupted, 6, yes",
        "missing, erupted, 6, yes",
        "erupted, erupted, -1, no"
    })
    void monthsAreCountedUntilBothSecondMolarsAreIn(String left, String right, double months, String told) {
        CaseBuilder b = new CaseBuilder().set("/date", "2026-12-08").set("/holding/cemented", "2026-06-08");
        if (!left.isEmpty()) {
            b.set("/teeth/37/state", left);
        }
        if (!right.isEmpty()) {
            b.set("/teeth/47/state", right);
        }
        assertThat(end(b).secondMolarsTold()).hasToString(told);
        if (months < 0) {
            assertThat(end(b).monthsHeld().applies()).isFalse();
        } else {
            assertThat(end(b).monthsHeld().value()).isCloseTo(months, within(1e-9));
            b.set("/holding/removed", "2026-09-08");
            assertThat(end(b).monthsHeld().value()).isCloseTo(3, within(1e-9));
        }
        b.without("/holding/cemented");
        assertThat(end(b).secondMolarsTold().missing()).containsExactly("/holding/cemented");
    }
}
