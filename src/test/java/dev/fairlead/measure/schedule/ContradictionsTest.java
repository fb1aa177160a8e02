package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings that cannot all be true, in standard errors: 0.2 mm for a stand-off and for an opening, 0.25 mm for each
 * space, 0.2 mm for the advance.
 */
class ContradictionsTest {
    private static final double RISE = 0.2 * Math.sqrt(2);
    private static final double STAND_OFF = 0.2 * Math.sqrt(3);

    private static Contradictions of(CaseBuilder b) {
        return Contradictions.of(new Activations(b.build()));
    }

    /** Two visits that open both folds, with nothing else read. */
    private static CaseBuilder visits() {
        CaseBuilder b = SampleCase.full().drop("/visits/2/");
        for (int i = 0; i < 2; i++) {
            for (String reading :
                    new String[] {"/incisorAdvance", "/left/standOff", "/right/standOff", "/left/space", "/right/space"
                    }) {
                b.without("/visits/" + i + reading);
            }
        }
        return b;
    }

    @ParameterizedTest
    @CsvSource({
        "2026-01-20, 2026-01-20, 2026-02-24, yes",
        "2026-01-20, 2026-01-19, 2026-02-24, no",
        "2026-01-20, 2026-02-24, 2026-02-23, no",
        "2026-01-20, 2026-02-24, 2026-02-24, yes",
        ", 2026-02-24, 2026-02-25, yes",
        ", 2026-02-24, 2026-02-23, no",
        "2026-01-20, , 2026-01-19, no",
        "2026-01-20, , 2026-02-24, ?"
    })
    void datesFollowEachOther(String in, String first, String second, String answer) {
        CaseBuilder b =
                visits().without("/insertion/date").without("/visits/0/date").without("/visits/1/date");
        put(b, "/insertion/date", in);
        put(b, "/visits/0/date", first);
        put(b, "/visits/1/date", second);
        Answer inOrder = of(b).datesInOrder();
        assertThat(inOrder.known() ? inOrder.toString() : "?").isEqualTo(answer);
        if (!inOrder.known()) {
            assertThat(inOrder.missing()).containsExactly("/visits/0/date");
        }
    }

    private static void put(CaseBuilder b, String pointer, String value) {
        if (value != null) {
            b.set(pointer, value);
        }
    }

    @Test
    void aSideThatWasNotOpenedDoesNotRise() {
        CaseBuilder b = visits().set("/visits/0/activated", "left").set("/visits/1/activated", "left");
        assertThat(of(b).closedSide().value()).as("nobody read it").isZero();
        b.set("/visits/1/right/standOff", 1.2);
        assertThat(of(b).closedSide().value()).as("the one before is not known").isZero();
        b.set("/visits/0/right/standOff", 0.5);
        assertThat(of(b).closedSide().value()).isCloseTo(0.7 / RISE, within(1e-9));
        b.set("/visits/0/right/standOff", 0.9);
        assertThat(of(b).closedSide().value())
                .as("before the first visit there was none")
                .isCloseTo(0.9 / RISE, within(1e-9));
        assertThat(of(b.set("/visits/0/right/standOff", 0).set("/visits/1/right/standOff", 0))
                        .closedSide()
                        .value())
                .isZero();
    }

    @Test
    void anOpenedFoldStandsOffBetweenItsTravelAndWhatWasLeftBefore() {
        CaseBuilder b = visits().set("/visits/1/activated", "left").set("/visits/0/activated", "left");
        Activations a = new Activations(b.build());
        double first = a.forward(Side.LEFT, 1).value();
        double second = a.forward(Side.LEFT, 2).value() - first;
        b.set("/visits/0/left/standOff", first).set("/visits/1/left/standOff", second + first);
        assertThat(of(b).standOff().value()).isCloseTo(0, within(1e-9));
        b.set("/visits/1/left/standOff", second);
        assertThat(of(b).standOff().value()).isCloseTo(0, within(1e-9));
        b.set("/visits/1/left/standOff", second + first + 0.3);
        assertThat(of(b).standOff().value()).isCloseTo(0.3 / STAND_OFF, within(1e-9));
        b.set("/visits/0/left/standOff", first - 0.4).set("/visits/1/left/standOff", second);
        assertThat(of(b).standOff().value()).isCloseTo(0.4 / STAND_OFF, within(1e-9));
        // the opening and both readings are off
        assertThat(of(b).standOff().sd()).isPositive();
        Contradictions gap = of(b.without("/visits/1/left/standOff"));
        assertThat(gap.standOff().missing()).containsExactly("/visits/1/left/standOff");
        assertThat(gap.standOffSoFar().value()).isCloseTo(0.4 / STAND_OFF, within(1e-9));
        Contradictions which = of(b.set("/visits/1/left/standOff", second).without("/visits/1/activated"));
        assertThat(which.standOff().missing()).containsExactly("/visits/1/activated");
        assertThat(which.standOffSoFar().value()).isCloseTo(0.4 / STAND_OFF, within(1e-9));
    }

    /** Each mm of advance gains a side 0.6 to 1.05 mm, half of 1.2 to 2.1 mm of arch (Mutinelli 2000). */
    @ParameterizedTest
    @CsvSource({"2, 1.2, 0", "2, 2.1, 0", "2, 3.0, 0.9", "2, 0.2, 1.0", "0, -0.5, 0.5", "-1, -0.6, 0", "-1, -1.2, 0.15"
    })
    void spaceGrowsAsTheIncisorsAdvance(double advance, double gained, double beyond) {
        CaseBuilder b = visits().set("/space/left", 20).set("/space/right", 21);
        b.set("/visits/0/left/space", 20).set("/visits/0/right/space", 21).set("/visits/0/incisorAdvance", 0);
        b.set("/visits/1/left/space", 20 + gained + 0.3)
                .set("/visits/1/right/space", 21 + gained - 0.3)
                .set("/visits/1/incisorAdvance", advance);
        double error = Math.hypot(0.25, 0.2 * (0.6 + 1.05) / 2);
        assertThat(of(b).advance().value()).isCloseTo(beyond / error, within(1e-9));
        assertThat(of(b).advanceSoFar()).isEqualTo(of(b).advance());
        Contradictions gap = of(b.without("/visits/0/incisorAdvance").without("/visits/0/left/space"));
        assertThat(gap.advance().missing()).containsExactly("/visits/0/left/space", "/visits/0/incisorAdvance");
        assertThat(gap.advanceSoFar().value()).isCloseTo(beyond / error, within(1e-9));
    }

    @Test
    void withoutVisitsNothingApplies() {
        Contradictions none = of(SampleCase.full().drop("/visits/"));
        assertThat(none.datesInOrder()).isEqualTo(Answer.NOT_APPLICABLE);
        assertThat(none.standOff()).isEqualTo(Measured.notApplicable());
        assertThat(none.advanceSoFar()).isEqualTo(Measured.notApplicable());
    }
}
