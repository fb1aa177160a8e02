package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ArchShapeTest {
    private static final ArchForm.CutOffs OWN = ArchForm.CutOffs.OWN_CONVENTION;

    /** Perimeter 69.288 mm of the beta function with W 44, D 24: independent computation. */
    @Test
    void classAndSizeInWords() {
        BetaArch arch = new BetaArch(44, 24);
        ArchShape shape = ArchShape.of(arch, 14.75 / 37.8 * arch.perimeter() / 2, OWN);
        assertThat(shape.words()).isEqualTo("ovoid, 44.0 mm wide, 24.0 mm deep, 69.3 mm along");
        assertThat(shape.index())
                .isEqualTo(
                        ArchDimensions.of(arch, 14.75 / 37.8 * arch.perimeter() / 2)
                                .formIndex(),
                        within(1e-12));
    }

    @Test
    void curvesFallIntoTheClassesTheyStandFor() {
        assertThat(ArchShape.of(ConicArch.halfEllipse(44, 24), 14, OWN).form()).isEqualTo(ArchForm.SQUARE);
        assertThat(ArchShape.of(ConicArch.parabola(44, 24), 14, OWN).form()).isEqualTo(ArchForm.TAPERED);
    }
}
