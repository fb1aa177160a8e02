package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.ConicArch;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn of an arch from widths and depths, and how far its incisors have to go, by plane geometry. */
class ArchAnalysisTest {

    private static ArchResult.Drawn drawn(CaseBuilder b) {
        return FrontTest.front(b).arch().drawn().orElseThrow();
    }

    private static CaseBuilder widthsOnly() {
        return SampleCase.full().without("/arch/canineWidth").without("/arch/canineDepth");
    }

    /**
     * Molars (22, 0), canines (13, 18) and front (0, 24): some families run through all five, others miss the canines.
     */
    @Test
    void curvesOfThreeNumbersRunThroughCaninesAndMolars() {
        List<ArchFit> fits = drawn(SampleCase.full()).fits();
        assertThat(fits).extracting(ArchFit::family).containsExactly(ArchFamily.values());
        for (ArchFit fit : fits) {
            boolean all = List.of(ArchFamily.CONIC, ArchFamily.SIXTH_DEGREE, ArchFamily.SPLINE)
                    .contains(fit.family());
            assertThat(fit.goodness().residuals()).extracting(r -> r.tooth()).containsExactly(46, 43, 41, 33, 36);
            for (var r : fit.goodness().residuals()) {
                if (all || r.tooth() != 43 && r.tooth() != 33) {
                    assertThat(r.outside())
                            .as(fit.family() + " at " + r.tooth())
                            .isEqualTo(0, within(1e-6));
                }
            }
            assertThat(fit.goodness().worst().outside() == 0
                            || all
                            || Math.abs(fit.goodness().worst().outside()) > 0.05)
                    .as(fit.family().name())
                    .isTrue();
        }
        // the parabola through front and molars, y = 24 - 24 x^2 / 484, passes the canine points on their inner side
        ArchFit parabola = fits.get(ArchFamily.PARABOLA.ordinal());
        double least = Double.MAX_VALUE;
        for (int i = 0; i <= 220_000; i++) {
            double x = i * 1e-4;
            least = Math.min(least, Math.hypot(x - 13, 24 - 24 * x * x / 484 - 18));
        }
        assertThat(parabola.goodness().worst().outside()).isEqualTo(least, within(1e-5));
    }

    @Test
    void withoutCaninesFiveFamiliesAreFixed() {
        List<ArchFit> fits = drawn(widthsOnly()).fits();
        assertThat(fits)
                .extracting(ArchFit::family)
                .containsExactly(
                        ArchFamily.BETA,
                        ArchFamily.CATENARY,
                        ArchFamily.PARABOLA,
                        ArchFamily.HALF_ELLIPSE,
                        ArchFamily.CIRCLE);
        for (ArchFit fit : fits) {
            assertThat(fit.goodness().residuals()).extracting(r -> r.tooth()).containsExactly(46, 41, 36);
            assertThat(fit.goodness().rms()).as(fit.family().name()).isEqualTo(0, within(1e-6));
        }
    }

    /** Canines that do not lie in front of and between the molars are no points of an arch. */
    @ParameterizedTest
    @CsvSource({"44, 6", "26, 24", "45, 25"})
    void impossibleCaninesAreNotDrawnThrough(double width, double depth) {
        CaseBuilder b = SampleCase.full().set("/arch/canineWidth", width).set("/arch/canineDepth", depth);
        assertThat(drawn(b).fits()).hasSize(5);
    }

    /** No conic or polynomial arch runs through canines nearly at the front: only the spline does. */
    @Test
    void aFamilyWithoutAMemberThroughThePointsIsLeftOut() {
        CaseBuilder b = SampleCase.full().set("/arch/canineWidth", 10).set("/arch/canineDepth", 20);
        assertThat(drawn(b).fits())
                .extracting(ArchFit::family)
                .contains(ArchFamily.SPLINE)
                .doesNotContain(ArchFamily.SIXTH_DEGREE, ArchFamily.CONIC);
    }

    /** The laterals end 11.6 and 11.4 mm along the curve from the midline, each on its side. */
    @Test
    void segmentsRunFromTheLateralsToTheMolarsOfTheirSides() {
        ArchResult.Drawn drawn = drawn(SampleCase.full());
        ArchResult.Segment left = drawn.sides().get(0);
        ArchResult.Segment right = drawn.sides().get(1);
        assertThat(left.molar().x()).isEqualTo(22, within(1e-9));
        assertThat(right.molar().x()).isEqualTo(-22, within(1e-9));
        Point l = left.lateral().orElseThrow();
        Point r = right.lateral().orElseThrow();
        assertThat(l.distance(drawn.curve().atArcLength(5.55 + 6.05))).isLessThan(1e-9);
        assertThat(r.distance(drawn.curve().atArcLength(-(5.45 + 5.95)))).isLessThan(1e-9);
        assertThat(l.x()).isBetween(9.0, 11.6);
        assertThat(r.x()).isBetween(-11.6, -9.0);
        // incisors wider than half the arch is long have no place on it
        CaseBuilder wide = SampleCase.full().incisors(18, 18, 18, 18);
        assertThat(drawn(wide).sides()).allMatch(s -> s.lateral().isEmpty());
        assertThat(drawn(SampleCase.full().without("/teeth/31/width")).sides())
                .extracting(s -> s.lateral().isPresent())
                .containsExactly(false, true);
    }

    /**
     * A wire of the same form but smaller lacks half the difference of the lengths at each end, and its note says so.
     */
    @Test
    void aWireThatIsTooShortIsToldWithItsMisfit() {
        CaseBuilder b = SampleCase.full()
                .set("/wire/formMolarWidth", 40)
                .set("/wire/formCanineWidth", 25.5)
                .set("/wire/formDepth", 20);
        ArchResult.Drawn drawn = drawn(b);
        ArchResult.Wire wire = drawn.wire().orElseThrow();
        double lacking = (drawn.curve().perimeter() - wire.curve().perimeter()) / 2;
        assertThat(lacking).isPositive();
        assertThat(wire.misfit().shortBy()).isEqualTo(lacking, within(1e-9));
        assertThat(misfit(b).note()).endsWith("It is " + Say.num(lacking) + " mm too short at one end of the arch.");
        assertThat(misfit(SampleCase.full()).note()).doesNotContain("short");
    }

    private static Working misfit(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept()).workings().stream()
                .filter(w -> w.id().equals("arch.wire-misfit-rms"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutWidthOrDepthThereIsNoCurve() {
        CaseBuilder b = SampleCase.full().without("/arch/molarDepth");
        PatientArch arch = PatientArch.of(b.build());
        assertThat(arch.basis()).isEqualTo(Basis.NONE);
        assertThat(arch.known()).isFalse();
        assertThatIllegalStateException().isThrownBy(arch::curve).withMessage("the arch is not known");
        ArchResult result = FrontTest.front(b).arch();
        assertThat(result.drawn()).isEmpty();
        assertThat(result.perimeter().missing()).containsExactly("/arch/molarDepth");
        assertThat(result.width().value()).isEqualTo(44);
        assertThat(result.formIndex().missing()).containsExactly("/arch/molarDepth");
    }

    /** One canine measure without the other tells no form. */
    @ParameterizedTest
    @CsvSource({"/arch/canineWidth", "/arch/canineDepth"})
    void halfOfTheCaninesIsNone(String without) {
        PatientArch arch = PatientArch.of(SampleCase.full().without(without).build());
        assertThat(arch.basis()).isEqualTo(Basis.WIDTHS);
        assertThat(arch.curve()).isEqualTo(new BetaArch(44, 24));
        assertThat(arch.inputs()).hasSize(2);
        assertThat(arch.formKnown()).isFalse();
    }

    /** |molar - (lateral + a)| = |molar - lateral| + more, a straight forward. */
    @ParameterizedTest
    @CsvSource({"true, 11.6, 1.5", "false, 11.6, 1.5", "true, 6, 3", "true, 11.6, 0", "true, 11.6, -1"})
    void theNeedOpensTheStraightDistanceByWhatIsLacking(boolean left, double lateral, double more) {
        ConicArch arch = ConicArch.circle(44, 22);
        double a = AdvanceSolver.chord(arch, left, lateral, more);
        // a half circle of radius 22: the lateral stands at an angle of lateral / 22 from the front
        double across = 22 - 22 * Math.sin(lateral / 22);
        double along = 22 * Math.cos(lateral / 22);
        assertThat(Math.hypot(across, along + a)).isEqualTo(Math.hypot(across, along) + more, within(1e-9));
    }

    /**
     * Given back at most until the lateral stands level with the molar, there being nothing shorter than straight
     * across.
     */
    @Test
    void noMoreThanFlatAcrossIsGivenBack() {
        ConicArch arch = ConicArch.circle(44, 22);
        assertThat(AdvanceSolver.chord(arch, true, 11.6, -100)).isEqualTo(-22 * Math.cos(11.6 / 22), within(1e-9));
        // laterals that reach to the molars are taken at nine tenths of the way, 81 degrees
        double behind = 22 * Math.cos(Math.toRadians(81));
        assertThat(AdvanceSolver.chord(arch, false, 60, -100)).isEqualTo(-behind, within(1e-9));
    }
}
