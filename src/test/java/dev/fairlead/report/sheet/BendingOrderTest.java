package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of bending tells the numbers of the case: caliper readings by plane geometry of round wire. */
class BendingOrderTest {
    static final Tolerances ALLOWED = new Tolerances(0.5, 0.5, 5, 5, 0.5, 1, 0.5, 0.5, 1, 0.5);

    static List<String> steps(Case c) {
        return new BendingOrder(c, WireGeometry.of(c), ALLOWED)
                .steps().stream().map(BendingOrder.Step::text).toList();
    }

    private static List<String> steps(CaseBuilder b) {
        return steps(b.build());
    }

    @Test
    void caliperReadingsOfAFold() {
        // beak of 0.75 mm, wire of 0.5 mm: bends of 1 mm at the wire's middle, runs 4 mm apart from middle to middle;
        // legs of 3 mm that are 5 degrees out of parallel are 3 sin 5 = 0.26 mm further apart at their end
        List<String> steps = steps(SampleCase.full()
                .set("/wire/beakRadius", 0.75)
                .set("/wire/size", 0.5)
                .set("/hardware/right/length", 3));
        assertThat(steps.get(3))
                .contains("1.5 ± 0.26 mm inside", "2.5 ± 0.26 mm outside", "0.75 mm radius", "180 ± 5°");
        assertThat(steps.get(6)).contains("4.5 mm over all three runs", "3.5 mm inside", "no more than 0.5 mm higher");
        // along the wire from mark to mark: half a circle and the leg
        assertThat(steps.get(4)).contains("6.1 ± 0.5 mm along the wire");
    }

    @Test
    void theOpenedGapIsWiderAtItsEndThanAtItsBend() {
        // legs at a right angle: the bend of 1 mm spans a quarter circle of 2 mm, so its end lies 2 mm off the other
        // leg
        // and the leg's end 3 mm further
        assertThat(FoldReadings.apart(1, 3, Math.PI / 2)).isCloseTo(5, within(1e-9));
        assertThat(FoldReadings.apart(1, 3, 0)).isCloseTo(2, within(1e-9));
        // 30 degrees: r' = pi / (5 pi / 6) = 1.2; 1.2 (1 + cos 30) + 3 sin 30
        assertThat(FoldReadings.apart(1, 3, Math.PI / 6)).isCloseTo(1.2 * (1 + Math.sqrt(3) / 2) + 1.5, within(1e-9));
    }

    @Test
    void sidesThatDifferAreToldApart() {
        CaseBuilder b = SampleCase.full().set("/hardware/left/length", 3).set("/hardware/right/length", 4.5);
        assertThat(steps(b).get(4)).contains("straight leg of R 4.5, L 3.0 ± 0.5 mm");
        b.set("/hardware/left/length", 4.5);
        assertThat(steps(b).get(4)).contains("straight leg of 4.5 ± 0.5 mm");
    }

    @Test
    void aSidedPlanHasTwoStandOffsAndTwoOpenings() {
        // reference model, bends of 1 mm and legs of 3 mm: 35.4 degrees and 1.74 mm for 2.0 mm, 20.8 and 1.07 for 1.0
        CaseBuilder b = SampleCase.full()
                .set("/wire/beakRadius", 0.746)
                .set("/wire/size", 0.508)
                .set("/hardware/right/length", 3)
                .set("/hardware/left/length", 3)
                .without("/plan/standOff")
                .set("/plan/standOffRight", 2.0)
                .set("/plan/standOffLeft", 1.0);
        assertThat(steps(b).get(11))
                .contains("Stand-off R 2.0, L 1.0 mm", "by R 35, L 21°", "gap R 1.7, L 1.1 ± 0.2 mm wider")
                .contains("front sinks R 2.1, L 1.4 mm");
    }

    @Test
    void theSecondSideIsMarkedInOneWayAlone() {
        List<String> steps = steps(SampleCase.full());
        assertThat(steps.get(9)).contains("Only with the right fold seated", "distal to the distal end of its tube");
        assertThat(steps.get(9)).doesNotContain("midline");
        assertThat(steps.stream().filter(s -> s.contains("from the midline"))).hasSize(1);
    }

    @Test
    void everyNumberHasItsToleranceOrItsLimit() {
        for (String step : steps(SampleCase.full()).subList(2, 11)) {
            if (step.matches(".*\\d\\.\\d.*")) {
                assertThat(step).containsPattern("± |at least|no more than|no gap over|within");
            }
        }
    }

    @Test
    void whatIsNotKnownIsALineToWriteOn() {
        assertThat(steps(SampleCase.full().without("/wire/beakRadius")).get(6)).contains("____ mm over");
    }
}
