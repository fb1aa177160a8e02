package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The order of bending tells the numbers of the case: caliper readings by plane geometry of round wire. */
class BendingOrderTest {
    static final Tolerances ALLOWED = new Tolerances(0.5, 0.5, 5, 5, 0.5, 1, 0.5, 0.5, 1, 0.5, 0.005);

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
        assertThat(steps.get(6))
                .contains("4.5 + 0.5 mm over all three runs", "3.5 + 0.5 mm inside", "middle 4.0 + 0.5 mm");
        // along the wire from mark to mark: half a circle and the leg
        assertThat(steps.get(4)).contains("6.1 ± 0.5 mm along the wire");
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
                .contains("Stand-off R 2.0, L 1.0 ± 0.", "by R 35, L 21 ± ", "R 1.7, L 1.1 ± 0.2 more than at its bend")
                .contains("front sinks R 2.1, L 1.4 ± 0.");
    }

    @Test
    void theSecondSideIsMarkedInOneWayAlone() {
        List<String> steps = steps(SampleCase.full());
        assertThat(steps.get(9)).contains("Only with the right fold seated", "distal to the distal end of its tube");
        assertThat(steps.get(9)).doesNotContain("midline");
        assertThat(steps.stream().filter(s -> s.contains("from the midline"))).hasSize(1);
    }

    /** A number with decimals, what stands before it and what after it. */
    private static final Pattern NUMBER = Pattern.compile("(.{0,14})(?<![\\d.])(\\d+\\.\\d+)(.{0,16})");

    /** Of a pair "R 2.0, L 1.0 ± 0.2" the tolerance stands behind both; the beak's radius is a tool in the hand. */
    @Test
    void everyNumberHasItsToleranceOrItsLimit() {
        CaseBuilder sided = SampleCase.full()
                .without("/plan/standOff")
                .set("/plan/standOffRight", 2.0)
                .set("/plan/standOffLeft", 1.0)
                .set("/hardware/left/length", 4);
        int numbers = 0;
        for (CaseBuilder b : List.of(SampleCase.full(), sided)) {
            for (String step : steps(b)) {
                for (int at = 0; at < step.length(); at++) {
                    Matcher m = NUMBER.matcher(step).region(at, step.length()).useTransparentBounds(true);
                    if (!m.find()) {
                        break;
                    }
                    at = m.end(2);
                    String before = step.substring(Math.max(0, m.start(2) - 14), m.start(2));
                    String after = step.substring(m.end(2), Math.min(step.length(), m.end(2) + 16));
                    numbers++;
                    assertThat(before.matches(".*(± |\\+ |at least |no more than |no gap over |[Ww]ithin )")
                                    || after.matches("( [±+]|, L [\\d.]+ [±+]| mm radius).*"))
                            .as(before + "[" + m.group(2) + "]" + after + " of: " + step)
                            .isTrue();
                }
            }
        }
        assertThat(numbers).isGreaterThan(50);
    }

    @Test
    void whatAnOpeningMayBeOffByComesOfTheGap() {
        // bends of 1 mm, legs of 3 mm, opened by 20.8 degrees for 1.0 mm: 0.2 mm of gap are 0.2 / (3 cos 20.8) = 4.1
        // degrees; the reference model has 0.50 mm of stand-off for 0.46 mm of gap below and 0.36 above, so about 0.25
        CaseBuilder b = SampleCase.full()
                .set("/wire/beakRadius", 0.746)
                .set("/wire/size", 0.508)
                .set("/hardware/right/length", 3)
                .set("/plan/standOff", 1.0);
        OpeningTolerance t = OpeningTolerance.of(WireGeometry.of(b.build()).plannedRight());
        assertThat(t.angle()).isCloseTo(4.1, within(0.05));
        assertThat(t.standOff()).isCloseTo(0.25, within(0.03));
        // 0.59 mm of sinking for 0.46 mm of gap below, 0.46 for 0.36 above
        assertThat(t.drop()).isCloseTo(0.26, within(0.03));
    }

    @Test
    void whatIsNotKnownIsALineToWriteOn() {
        assertThat(steps(SampleCase.full().without("/wire/beakRadius")).get(6)).contains("____ + 0.5 mm over");
    }
}
