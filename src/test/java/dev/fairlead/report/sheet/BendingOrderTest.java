package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of bending tells the numbers of the case: caliper readings by plane geometry of round wire. */
class BendingOrderTest {
    private static final BendingOrder.Tolerances TOLERANCES =
            new BendingOrder.Tolerances("(± 0.5 mm)", "(± 0.5 mm)", "(± 5°)", "0.5 mm", "(no more than 0.5 mm proud)");

    private static List<String> steps(CaseBuilder b) {
        Case c = b.build();
        return new BendingOrder(c, WireGeometry.of(c), TOLERANCES).steps();
    }

    @Test
    void caliperReadingsOfAFold() {
        // beak of 0.75 mm, wire of 0.5 mm: bends of 1 mm at the wire's middle, runs 4 mm apart from middle to middle
        List<String> steps =
                steps(SampleCase.full().set("/wire/beakRadius", 0.75).set("/wire/size", 0.5));
        assertThat(steps.get(3)).contains("1.5 mm inside", "2.5 mm", "0.75 mm radius", "(± 5°)");
        assertThat(steps.get(5)).contains("4.5 mm over the highest and lowest run outside", "3.5 mm inside");
    }

    @Test
    void sidesThatDifferAreToldApart() {
        CaseBuilder b = SampleCase.full().set("/hardware/left/length", 3).set("/hardware/right/length", 4.5);
        assertThat(steps(b).get(4)).contains("between the bends is 4.5 mm right, 3.0 mm left");
        b.set("/hardware/left/length", 4.5);
        assertThat(steps(b).get(4)).contains("between the bends is 4.5 mm (±").doesNotContain("right");
    }

    @Test
    void whatIsNotKnownIsALineToWriteOn() {
        assertThat(steps(SampleCase.full().without("/wire/beakRadius")).get(5)).contains("____ mm over");
    }
}
