package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.PlannedActivation;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Stage;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planned activation: of two sides the most and the least, and what its forces wait for. */
class PlanFactsTest {
    private static PlannedActivation plan(CaseBuilder b) {
        return Made.first(b, PlannedActivation.class);
    }

    /**
     * A side that is not to advance, with a stand-off of 0, has none; where either is not said, 0 is what is planned.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                // stand-off both, left, right; advance left, right; most, least
                "1.5, -, -, 2, 2, 1.5, 1.5",
                "0, -, -, 0, 0, 0, 0",
                "-, 2, 1, 2, 1, 2, 1",
                "-, 1, 2, 1, 2, 2, 1",
                "9, 2, 1, 2, 1, 2, 1",
                "-, 2, -, 2, 1, 2, 2",
                "-, -, 1, 2, 1, 1, 1",
                "-, 2, 0, 2, 0, 2, 2",
                "-, 0, 2, 0, 2, 2, 2",
                "-, 2, 0, 2, 1, 2, 0",
                "-, 0, 2, 1, 2, 2, 0",
                "-, 2, 0, 2, -, 2, 0",
                "-, 0, 2, -, 2, 2, 0",
                "-, 2, 1, 2, 0, 2, 1",
                "-, 0, 0, 0, 0, 0, 0",
                "-, 0, -, 0, 2, 0, 0"
            })
    void theMostAndTheLeastStandOffOfTheSides(
            Double both,
            Double left,
            Double right,
            Double advanceLeft,
            Double advanceRight,
            Double most,
            Double least) {
        CaseBuilder b = new CaseBuilder();
        put(b, "/plan/standOff", both);
        put(b, "/plan/standOffLeft", left);
        put(b, "/plan/standOffRight", right);
        put(b, "/plan/advanceLeft", advanceLeft);
        put(b, "/plan/advanceRight", advanceRight);
        if (most == null || plan(b).standOffMost().known()) {
            assertThat(plan(b).standOffMost().value()).isEqualTo(most);
            assertThat(plan(b).standOffLeast().value()).isEqualTo(least);
        }
    }

    private static void put(CaseBuilder b, String pointer, Double value) {
        if (value != null) {
            b.set(pointer, value);
        }
    }

    /** No gauge can be read before the wire is in, and no visit be filled in. */
    @Test
    void forcesOfThePlanWaitForWhatStandsInThePlan() {
        CaseBuilder b = SampleCase.until(Stage.BENCH).without("/plan/standOff").without("/wire/size");
        PlannedActivation p = (PlannedActivation)
                Measures.of(b.build(), Optional.empty(), Workbook.none(), Calculations.full()).facts().stream()
                        .filter(PlannedActivation.class::isInstance)
                        .findFirst()
                        .orElseThrow();
        assertThat(p.forceLow().missing()).containsExactly("/plan/standOff", "/wire/size");
        assertThat(p.forceHigh().missing()).containsExactly("/plan/standOff", "/wire/size");
        assertThat(p.peakStress().missing()).containsExactly("/plan/standOff", "/wire/size");
        assertThat(p.overProof().missing()).containsExactly("/plan/standOff", "/wire/size");
        assertThat(plan(SampleCase.until(Stage.BENCH)).forceLow().missing())
                .as("without the beam model its answer")
                .containsExactly("/plan/beamModelOfTheWireOmitted");
    }

    /** Of visits the forces are those of each visit: the plan's are past. */
    @Test
    void onceThereAreVisitsThePlanHasNoForces() {
        PlannedActivation p = plan(SampleCase.full());
        assertThat(p.forceLow().applies()).isFalse();
        assertThat(p.peakStress().applies()).isFalse();
        assertThat(p.overProof().applies()).isFalse();
    }
}
