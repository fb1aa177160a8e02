package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import org.junit.jupiter.api.Test;

/** What a caliper reads on an opened fold, by plane geometry. */
class FoldReadingsTest {
    @Test
    void theOpenedGapIsWiderAtItsEndThanAtItsBend() {
        // legs at a right angle: the bend of 1 mm spans a quarter circle of 2 mm, so its end lies 2 mm off the other
        // leg and the leg's end 3 mm further
        assertThat(FoldReadings.apart(1, 3, Math.PI / 2)).isCloseTo(5, within(1e-9));
        assertThat(FoldReadings.apart(1, 3, 0)).isCloseTo(2, within(1e-9));
        // 30 degrees: r' = pi / (5 pi / 6) = 1.2; 1.2 (1 + cos 30) + 3 sin 30
        assertThat(FoldReadings.apart(1, 3, Math.PI / 6)).isCloseTo(1.2 * (1 + Math.sqrt(3) / 2) + 1.5, within(1e-9));
    }

    /** The opening that a visit records is the one that the two readings differ by, whatever the wire. */
    @Test
    void theOpeningIsTheReadingAtTheFreeEndLessTheOneAtTheBend() {
        Case c = SampleCase.full()
                .set("/wire/beakRadius", 0.75)
                .set("/wire/size", 0.5)
                .set("/hardware/right/length", 3)
                .build();
        FoldOpening f = WireGeometry.of(c).plannedRight();
        double a = Math.toRadians(f.angle().value());
        double atItsBend = Math.PI / (Math.PI - a) * (1 + Math.cos(a)) - 0.5;
        FoldReadings read = FoldReadings.of(f, c.wire().size());
        assertThat(read.openInside().value() - atItsBend).isCloseTo(f.gap().value(), within(1e-9));
        assertThat(read.openOutside().value() - read.openInside().value()).isCloseTo(1, within(1e-9));
    }

    /** Bends of 1 mm at the middle: runs 2 mm and 4 mm apart there, half a wire less or more at each edge. */
    @Test
    void edgesLieHalfAWireFromTheMiddle() {
        Case c = BaseCase.of().build();
        FoldOpening f = WireGeometry.of(c).plannedLeft();
        FoldReadings read = FoldReadings.of(f, c.wire().size());
        assertThat(read.gapInside().value()).isCloseTo(2 - 0.508, within(1e-9));
        assertThat(read.gapOutside().value()).isCloseTo(2 + 0.508, within(1e-9));
        assertThat(read.heightInside().value()).isCloseTo(4 - 0.508, within(1e-9));
        assertThat(read.heightOutside().value()).isCloseTo(4 + 0.508, within(1e-9));
    }
}
