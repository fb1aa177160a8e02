package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.BuccalSegment;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Measured;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planned advance of each side against its need; by rule 2 mm of arch, 1 mm a side, for each mm of advance. */
class PlanNeedsTest {
    /** Canine and premolars of 7 mm each: a need of 21 mm on either side. The incisors stand in room of their own. */
    private static CaseBuilder shortOf(double left, double right) {
        CaseBuilder b = new CaseBuilder().incisors(5.5, 5.5, 5.5, 5.5).set("/space/incisors", 22.0);
        for (int tooth : new int[] {33, 34, 35, 43, 44, 45}) {
            b.set("/teeth/" + tooth + "/width", 7.0);
        }
        return b.set("/space/left", 21 - left).set("/space/right", 21 - right);
    }

    private static BuccalSegment side(CaseBuilder b, String side) {
        return Made.at(b, BuccalSegment.class, "/space/" + side);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "3, 1, yes, no",
                "1, 3, no, no",
                "1, 1, no, no",
                // the right would come nearer, the left would not; and the other way round
                "1.2, 0, no, no",
                "5, 2, no, no",
                "0, 0, no, yes",
                "0, 2, no, no",
                "-, 0, no, no",
                "0, -, no, no",
                "-, 2, no, no",
                "-, -, unknown, unknown"
            })
    void amountsThatWereExchangedOrLeftOut(Double left, Double right, String swapped, String none) {
        // the left lacks 1 mm, the right 3
        CaseBuilder b = shortOf(1, 3);
        if (left != null) {
            b.set("/plan/advanceLeft", left);
        }
        if (right != null) {
            b.set("/plan/advanceRight", right);
        }
        for (String at : new String[] {"left", "right"}) {
            assertThat(side(b, at).sidesSwapped()).hasToString(swapped);
            assertThat(side(b, at).noPlan()).hasToString(none);
        }
        if (left == null && right == null) {
            assertThat(side(b, "left").noPlan().missing()).containsExactly("/plan/advanceLeft", "/plan/advanceRight");
        }
    }

    /** An exchange is told only where both sides gain by it. */
    @Test
    void oneSideAloneThatWouldGainIsNoExchange() {
        CaseBuilder b = shortOf(1, 3.2).set("/plan/advanceLeft", 4.0).set("/plan/advanceRight", 3.0);
        assertThat(side(b, "left").sidesSwapped()).hasToString("no");
        CaseBuilder mirrored = shortOf(3.2, 1).set("/plan/advanceLeft", 3.0).set("/plan/advanceRight", 4.0);
        assertThat(side(mirrored, "left").sidesSwapped()).hasToString("no");
        assertThat(side(
                                shortOf(1, 3)
                                        .set("/plan/advanceLeft", 3.0)
                                        .set("/plan/advanceRight", 1.0)
                                        .without("/space/left"),
                                "left")
                        .sidesSwapped())
                .as("what the left needs is not known")
                .hasToString("no");
    }

    @Test
    void whatIsWithinRoundingIsNoPlan() {
        CaseBuilder b =
                shortOf(1, 3).set("/plan/advanceLeft", Measured.ROUNDING).set("/plan/advanceRight", 0.0);
        assertThat(side(b, "left").noPlan()).hasToString("yes");
    }

    @Test
    void theRuleStandsInWhereTheArchWasNotMeasured() {
        CaseBuilder b = shortOf(1, -2).set("/plan/advanceLeft", 3.0).set("/plan/advanceRight", 0.5);
        assertThat(side(b, "left").planSpare().known()).isFalse();
        assertThat(side(b, "left").planSpareSoFar().value()).isCloseTo(2, within(1e-9));
        assertThat(side(b, "right").planSpareSoFar().value())
                .as("a side with room to spare needs no advance")
                .isCloseTo(0.5, within(1e-9));
        BuccalSegment onArch = side(SampleCase.full(), "left");
        assertThat(onArch.planSpareSoFar()).isEqualTo(onArch.planSpare());
        assertThat(onArch.planSpare().known()).isTrue();
    }
}
