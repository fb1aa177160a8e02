package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchFormTest {

    /**
     * Noroozi, Nik & Saeeda 2001: Y = A X^6 + B X^2 through (0,0), (Wc/2, Dc) and (Wm/2, Dm), so both equations must
     * hold.
     */
    @Test
    void sixthDegreePolynomialSolvesItsTwoEquations() {
        Random random = new Random(21);
        int solved = 0;
        for (int n = 0; n < 50; n++) {
            ArchDimensions m = measures(random);
            SixthDegreeArch arch;
            try {
                arch = SixthDegreeArch.through(m);
            } catch (IllegalArgumentException turnsBack) {
                assertThat(turnsBack).hasMessageContaining("turns back");
                continue;
            }
            solved++;
            double c = m.canineWidth() / 2;
            double w = m.molarWidth() / 2;
            assertThat(arch.a() * Math.pow(c, 6) + arch.b() * c * c).isEqualTo(m.canineDepth(), within(1e-9));
            assertThat(arch.a() * Math.pow(w, 6) + arch.b() * w * w).isEqualTo(m.molarDepth(), within(1e-9));
            assertThat(ArchFamily.SIXTH_DEGREE.of(m)).isEqualTo(arch);
        }
        assertThat(solved).isGreaterThan(25);
        // by hand: c = 1, m = 2, Dc = 3, Dm = 72: B = 3 - A, 64 A + 4 B = 72, so A = 1, B = 2
        assertThat(SixthDegreeArch.through(new ArchDimensions(4, 72, 2, 3))).isEqualTo(new SixthDegreeArch(4, 1, 2));
    }

    private static ArchDimensions measures(Random random) {
        double wm = Arches.between(random, 40, 56);
        double dm = Arches.between(random, 20, 40);
        return new ArchDimensions(
                wm, dm, wm * Arches.between(random, 0.45, 0.65), dm * Arches.between(random, 0.15, 0.35));
    }

    @Test
    void conicRunsThroughCaninesAndMolars() {
        Random random = new Random(22);
        for (int n = 0; n < 50; n++) {
            ArchDimensions m = measures(random);
            ConicArch conic = ConicArch.through(m);
            Point canine = new Point(m.canineWidth() / 2, m.molarDepth() - m.canineDepth());
            assertThat(Math.abs(new Projector(conic).nearest(canine).outside())).isLessThan(1e-8);
            assertThat(conic.at(1).x()).isEqualTo(m.molarWidth() / 2, within(1e-9));
        }
        // points of a circle of radius 5 and of the parabola x^2 = 4h
        assertThat(ConicArch.through(new ArchDimensions(10, 5, 8, 2)).weight()).isEqualTo(0, within(1e-12));
        assertThat(ConicArch.through(new ArchDimensions(8, 4, 4, 1)).weight()).isEqualTo(1, within(1e-12));
        assertThat(new ConicArch(8, 4, 1).name()).isEqualTo("parabola");
    }

    /** The index of a parabola is Wc/Wm; that of the other two curves follows from their formulas at Wc/Wm = 0.56. */
    @Test
    void limitsOfTheClassesLieBetweenThreeKnownCurves() {
        double k = 0.56;
        double ellipse = (1 - Math.sqrt(1 - k * k)) / k;
        double beta = (1 - Math.pow(1 - k * k, 0.8)) / k;
        ArchForm.CutOffs own = ArchForm.CutOffs.OWN_CONVENTION;
        assertThat((own.squareTo() + own.ovoidFrom()) / 2).isEqualTo((ellipse + beta) / 2, within(3e-3));
        assertThat((own.ovoidTo() + own.taperedFrom()) / 2).isEqualTo((beta + k) / 2, within(3e-3));
        assertThat(ArchForm.of(ellipse, own)).isEqualTo(ArchForm.SQUARE);
        assertThat(ArchForm.of(beta, own)).isEqualTo(ArchForm.OVOID);
        assertThat(ArchForm.of(k, own)).isEqualTo(ArchForm.TAPERED);
    }

    @ParameterizedTest
    @CsvSource({
        "0.20, SQUARE",
        "0.37, SQUARE",
        "0.371, BETWEEN_SQUARE_AND_OVOID",
        "0.399, BETWEEN_SQUARE_AND_OVOID",
        "0.40, OVOID",
        "0.495, OVOID",
        "0.51, BETWEEN_OVOID_AND_TAPERED",
        "0.524, BETWEEN_OVOID_AND_TAPERED",
        "0.525, TAPERED",
        "0.9, TAPERED"
    })
    void limitsBelongToTheClassTheyBound(double index, ArchForm form) {
        assertThat(ArchForm.of(index, ArchForm.CutOffs.OWN_CONVENTION)).isEqualTo(form);
    }

    @Test
    void indexIsThePublishedRatio() {
        // (6/24)/(26/44)
        assertThat(new ArchDimensions(44, 24, 26, 6).formIndex()).isEqualTo(0.4230769, within(1e-7));
        BetaArch beta = new BetaArch(44, 24);
        ArchDimensions m = ArchDimensions.of(beta, 14);
        // y = D (1 - (2x/W)^2)^0.8 (Braun 1998)
        assertThat(24 * Math.pow(1 - Math.pow(m.canineWidth() / 44, 2), 0.8))
                .isEqualTo(24 - m.canineDepth(), within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> ArchForm.of(0, ArchForm.CutOffs.OWN_CONVENTION));
        assertThatIllegalArgumentException().isThrownBy(() -> new ArchDimensions(44, 24, 45, 6));
        assertThatIllegalArgumentException().isThrownBy(() -> new ArchForm.CutOffs(0.4, 0.4, 0.5, 0.6));
    }

    @Test
    void reshapedCurvesHaveTheWantedSize() {
        Landmarks landmarks = Landmarks.of(Arches.crowded(new Random(23)));
        for (ArchFit fit : ArchFit.all(landmarks)) {
            ArchCurve other = fit.curve().reshaped(50, 27);
            assertThat(other.width()).isEqualTo(50, within(1e-9));
            assertThat(other.depth()).isEqualTo(27, within(1e-9));
        }
    }

    /** Y' = (6 A X^4 + 2 B) X falls all the way from the front where B >= 0 and B + 3 A (W/2)^4 >= 0. */
    @Test
    void aPolynomialThatTurnsBackIsRefused() {
        // W/2 = 2: the slope at the ends vanishes at B = -48 A, that at the front at B = 0
        assertThat(new SixthDegreeArch(4, -1, 48).slope(2)).isZero();
        assertThat(new SixthDegreeArch(4, -1, 48).depth()).isEqualTo(-64 + 48 * 4);
        assertThat(new SixthDegreeArch(4, 1, 0).depth()).isEqualTo(64);
        assertThat(new SixthDegreeArch(4, 0, 1).depth()).isEqualTo(4);
        turnsBack(4, -1, 47.99);
        turnsBack(4, 1, -0.01);
        turnsBack(4, 0, 0);
        turnsBack(4, Double.NaN, 1);
        turnsBack(4, 1, Double.NaN);
        turnsBack(4, Double.POSITIVE_INFINITY, 1);
        turnsBack(4, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static void turnsBack(double width, double a, double b) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SixthDegreeArch(width, a, b))
                .withMessageContaining("A " + a + " and B " + b + " turns back");
    }

    @Test
    void slopeAndBendAreTheDerivativesOfTheFall() {
        double h = 1e-4;
        for (SixthDegreeArch arch :
                List.of(SixthDegreeArch.ofShare(44, 24, 0.7), SixthDegreeArch.ofShare(44, 24, -0.4))) {
            for (double x = -24; x <= 24; x += 3) {
                // y falls where the distance behind the front grows
                assertThat(arch.slope(x)).isEqualTo(-(arch.fall(x + h) - arch.fall(x - h)) / (2 * h), within(1e-6));
                assertThat(arch.bend(x)).isEqualTo((arch.slope(x + h) - arch.slope(x - h)) / (2 * h), within(1e-6));
            }
        }
    }

    /** Of depth D the share q comes from A X^6: A (W/2)^6 = q D, B (W/2)^2 = (1 - q) D. */
    @Test
    void shareSplitsTheDepthBetweenTheTwoTerms() {
        SixthDegreeArch arch = SixthDegreeArch.ofShare(44, 24, 0.25);
        assertThat(arch.a() * Math.pow(22, 6)).isEqualTo(6, within(1e-12));
        assertThat(arch.b() * 22 * 22).isEqualTo(18, within(1e-12));
        assertThat(arch.share()).isEqualTo(0.25, within(1e-12));
        assertThat(SixthDegreeArch.ofShare(44, 24, 7).share()).isBetween(0.99, 1.0);
        assertThat(SixthDegreeArch.ofShare(44, 24, -7).share()).isBetween(-0.5, -0.49);
    }

    @Test
    void nearCaninesItRunsThroughThemOrAsNearAsAnArchCan() {
        SixthDegreeArch through = SixthDegreeArch.near(44, 24, 26, 6);
        assertThat(through.fall(13)).isEqualTo(6, within(1e-9));
        assertThat(through.depth()).isEqualTo(24, within(1e-9));
        assertThat(through.width()).isEqualTo(44);
        // canines nearly as far back as the molars, or nearly at the front: as rounded or as square as an arch can be
        assertThat(SixthDegreeArch.near(44, 24, 26, 30).share()).isBetween(-0.5, -0.49);
        assertThat(SixthDegreeArch.near(44, 24, 26, 0.5).share()).isBetween(0.99, 1.0);
        // wider apart than the molars and less far back: an arch all the same
        assertThat(SixthDegreeArch.near(44, 24, 50, 6).depth()).isEqualTo(24, within(1e-9));
        assertThat(SixthDegreeArch.near(44, 24, 50, 30).fall(22 * 0.98)).isEqualTo(24 * 0.98, within(1e-9));
    }

    /** Lengths are looked up by the curve: only the same numbers are the same curve. */
    @Test
    void curvesWithTheSameNumbersAreOne() {
        SixthDegreeArch arch = new SixthDegreeArch(44, 1e-8, 0.04);
        assertThat(arch)
                .isEqualTo(new SixthDegreeArch(44, 1e-8, 0.04))
                .hasSameHashCodeAs(new SixthDegreeArch(44, 1e-8, 0.04));
        for (SixthDegreeArch other : List.of(
                new SixthDegreeArch(45, 1e-8, 0.04),
                new SixthDegreeArch(44, 2e-8, 0.04),
                new SixthDegreeArch(44, 1e-8, 0.05))) {
            assertThat(other).isNotEqualTo(arch).doesNotHaveSameHashCodeAs(arch);
        }
        assertThat(arch).isNotEqualTo(new BetaArch(44, 24));
    }

    /** x^2 = 2 R h - K h^2 has ends at all only where K h^2 / x^2 > -1 at the molars. */
    @Test
    void noConicRunsThroughCaninesThatStandTooFarBack() {
        // h = 1 at x = 2 and h = 4 at x = 8: 4/1 - 64/4 = -12, over 3: K = -4, K 16/64 = -1
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ConicArch.through(new ArchDimensions(16, 4, 4, 1)))
                .withMessageContaining("no conic");
        ConicArch steep = ConicArch.through(new ArchDimensions(16, 4, 4.2, 1));
        assertThat(Math.abs(new Projector(steep).nearest(new Point(2.1, 3)).outside()))
                .isLessThan(1e-8);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConicArch(44, 24, -1))
                .withMessageContaining("above -1, not -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new ConicArch(44, 24, Double.POSITIVE_INFINITY));
    }

    @Test
    void measuresOfNoMouthAreRefused() {
        assertThat(new ArchDimensions(44, 24, 43.9, 23.9).formIndex())
                .isEqualTo(23.9 / 24 / (43.9 / 44), within(1e-12));
        for (double[] canines : new double[][] {{44, 6}, {26, 24}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ArchDimensions(44, 24, canines[0], canines[1]))
                    .withMessageContaining("in front of and between the molars");
        }
        for (double[] limits :
                new double[][] {{0, 0.4, 0.5, 0.6}, {0.4, 0.4, 0.5, 0.6}, {0.3, 0.5, 0.5, 0.6}, {0.3, 0.4, 0.6, 0.6}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ArchForm.CutOffs(limits[0], limits[1], limits[2], limits[3]))
                    .withMessageContaining("must rise");
        }
    }
}
