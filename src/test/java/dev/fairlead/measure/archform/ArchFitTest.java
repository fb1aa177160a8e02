package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ArchFitTest {

    private static ArchCurve sample(ArchFamily family, double w, double d, double shape) {
        return switch (family) {
            case CONIC -> new ConicArch(w, d, shape);
            case SIXTH_DEGREE -> SixthDegreeArch.ofShare(w, d, shape);
            default -> family.of(w, d);
        };
    }

    @ParameterizedTest
    @EnumSource(value = ArchFamily.class, names = "SPLINE", mode = EnumSource.Mode.EXCLUDE)
    void exactLandmarksGiveTheCurveBack(ArchFamily family) {
        Random random = new Random(5);
        for (int n = 0; n < 20; n++) {
            ArchCurve made = sample(
                    family,
                    Arches.between(random, 38, 58),
                    Arches.between(random, 18, 40),
                    Arches.between(random, 0, 0.7));
            ArchFit fit = ArchFit.of(family, Landmarks.of(Arches.on(made, 0, random)));
            assertThat(fit.goodness().rms()).isLessThan(1e-5);
            assertThat(fit.curve().width()).isEqualTo(made.width(), within(1e-4));
            assertThat(fit.curve().depth()).isEqualTo(made.depth(), within(1e-4));
            assertThat(fit.curve().perimeter()).isEqualTo(made.perimeter(), within(1e-4));
            assertThat(fit.goodness().r()).isEqualTo(1, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(value = ArchFamily.class, names = "SPLINE", mode = EnumSource.Mode.EXCLUDE)
    void noisyLandmarksGiveTheCurveBackOnAverage(ArchFamily family) {
        Random random = new Random(6);
        int sets = 40;
        double width = 0;
        double depth = 0;
        double rms = 0;
        for (int n = 0; n < sets; n++) {
            ArchFit fit = ArchFit.of(family, Landmarks.of(Arches.on(sample(family, 46, 25, 0.4), 0.3, random)));
            width += fit.curve().width() / sets;
            depth += fit.curve().depth() / sets;
            rms += fit.goodness().rms() / sets;
        }
        // noise of 0.3 mm on each of twelve points: means of 40 sets lie within a few times 0.3/sqrt(40) mm
        assertThat(width).isEqualTo(46, within(0.25));
        assertThat(depth).isEqualTo(25, within(0.25));
        assertThat(rms).isBetween(0.15, 0.4);
    }

    @Test
    void nothingOfTheFamilyFitsBetter() {
        Random random = new Random(7);
        for (int n = 0; n < 10; n++) {
            Landmarks arch = Landmarks.of(Arches.crowded(random));
            ArchFit fit = ArchFit.of(ArchFamily.CONIC, arch);
            ConicArch best = (ConicArch) fit.curve();
            for (double[] d : new double[][] {
                {0.05, 0, 0}, {-0.05, 0, 0}, {0, 0.05, 0}, {0, -0.05, 0}, {0, 0, 0.01}, {0, 0, -0.01}
            }) {
                ConicArch other = new ConicArch(best.width() + d[0], best.depth() + d[1], best.weight() + d[2]);
                assertThat(Goodness.of(other, arch).rms())
                        .isGreaterThanOrEqualTo(fit.goodness().rms());
            }
            assertThat(fit.goodness().rms())
                    .isLessThanOrEqualTo(
                            ArchFit.of(ArchFamily.PARABOLA, arch).goodness().rms() + 1e-9);
            assertThat(fit.goodness().rms())
                    .isLessThanOrEqualTo(
                            ArchFit.of(ArchFamily.HALF_ELLIPSE, arch).goodness().rms() + 1e-9);
        }
    }

    @Test
    void goodnessNamesTheToothThatStandsOut() {
        List<DigitisedPoint> given = Arches.on(new BetaArch(46, 25), 0, new Random(1)).stream()
                .map(l -> l.tooth() == 32 ? DigitisedPoint.flat(32, l.x() + 0.6, l.y() + 1.2) : l)
                .toList();
        Goodness goodness = ArchFit.of(ArchFamily.BETA, Landmarks.of(given)).goodness();
        assertThat(goodness.worst().tooth()).isEqualTo(32);
        assertThat(goodness.worst().outside()).isBetween(0.8, 1.4);
        assertThat(goodness.residuals()).hasSize(12);
    }

    @Test
    void mirroredLandmarksGiveMirroredFits() {
        Random random = new Random(8);
        for (int n = 0; n < 10; n++) {
            List<DigitisedPoint> given = Arches.crowded(random);
            List<ArchFit> plain = ArchFit.all(Landmarks.of(given));
            List<ArchFit> other = ArchFit.all(Landmarks.of(Arches.mirrored(given)));
            assertThat(plain).hasSameSizeAs(ArchFamily.values());
            for (int f = 0; f < plain.size(); f++) {
                ArchFit a = plain.get(f);
                ArchFit b = other.get(f);
                assertThat(b.goodness().rms()).isEqualTo(a.goodness().rms(), within(1e-6));
                assertThat(b.curve().perimeter()).isEqualTo(a.curve().perimeter(), within(1e-4));
                assertThat(b.curve().mirrored().at(0.3).distance(a.curve().at(0.3)))
                        .isLessThan(1e-4);
                List<Goodness.Residual> there = b.goodness().residuals();
                for (int i = 0; i < there.size(); i++) {
                    Goodness.Residual here = a.goodness().residuals().get(there.size() - 1 - i);
                    assertThat(there.get(i).tooth()).isEqualTo(Teeth.antimere(here.tooth()));
                    assertThat(there.get(i).outside()).isEqualTo(here.outside(), within(1e-4));
                }
            }
        }
    }

    @Test
    void splineRunsThroughEveryLandmark() {
        Landmarks arch = Landmarks.of(Arches.crowded(new Random(9)));
        ArchFit fit = ArchFit.of(ArchFamily.SPLINE, arch);
        assertThat(fit.goodness().rms()).isLessThan(1e-9);
        ArchCurve spline = fit.curve();
        assertThat(spline.at(spline.midline()).x()).isEqualTo(0, within(1e-9));
        // on points of a smooth curve the spline's length is that of the curve, but for the free ends
        ArchCurve half = ConicArch.parabola(46, 25);
        assertThat(new SplineArch(half.points(41)).perimeter()).isEqualTo(half.perimeter(), within(1e-3));
    }

    @Test
    void lengthsAddUpAlongEveryCurve() {
        Random random = new Random(10);
        Landmarks arch = Landmarks.of(Arches.crowded(random));
        for (ArchFit fit : ArchFit.all(arch)) {
            ArcRuler ruler = fit.curve().ruler();
            for (int n = 0; n < 20; n++) {
                double a = Arches.between(random, -1, 1);
                double b = Arches.between(random, -1, 1);
                double c = Arches.between(random, -1, 1);
                assertThat(ruler.between(a, b) + ruler.between(b, c)).isEqualTo(ruler.between(a, c), within(1e-9));
                assertThat(ruler.parameterAt(ruler.fromMidline(a))).isEqualTo(a, within(1e-6));
                assertThat(ruler.between(a, b)).isEqualTo(-ruler.between(b, a), within(1e-12));
                assertThat(Math.abs(ruler.between(a, b)))
                        .isGreaterThanOrEqualTo(
                                fit.curve().at(a).distance(fit.curve().at(b)) - 1e-9);
            }
            assertThat(ruler.end() - ruler.start()).isEqualTo(fit.curve().perimeter(), within(1e-9));
            assertThat(fit.curve().points(21)).hasSize(21);
        }
    }

    @Test
    void tooFewLandmarksAreRefused() {
        Landmarks three = Landmarks.of(List.of(
                DigitisedPoint.flat(46, -22, 0), DigitisedPoint.flat(36, 22, 0), DigitisedPoint.flat(31, 0, 24)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ArchFit.of(ArchFamily.CONIC, three))
                .withMessageContaining("3");
        assertThatIllegalArgumentException().isThrownBy(() -> ArchFamily.CONIC.of(44, 24));
        assertThat(ArchFit.all(three))
                .extracting(ArchFit::family)
                .doesNotContain(ArchFamily.CONIC, ArchFamily.SIXTH_DEGREE);
    }

    /** Residual SD: sum of squares over points less fitted numbers, 12 - 2 and 12 - 3. */
    @Test
    void theFormThatLeavesTheSmallerResidualIsTaken() {
        Random random = new Random(12);
        for (ArchCurve made : List.of(new BetaArch(46, 25), SixthDegreeArch.ofShare(46, 25, 0.5))) {
            Landmarks arch = Landmarks.of(Arches.on(made, 0.1, random));
            ArchFit best = ArchFit.best(arch);
            assertThat(best.curve()).hasSameClassAs(made);
            double squares = best.goodness().residuals().stream()
                    .mapToDouble(r -> r.outside() * r.outside())
                    .sum();
            int left = best.family() == ArchFamily.BETA ? 10 : 9;
            assertThat(best.residual(arch)).isEqualTo(Math.sqrt(squares / left), within(1e-12));
        }
    }

    /**
     * Two straight lines are a hyperbola of endless weight: the fit ends at e^3 - 1, where none can be told from them.
     */
    @Test
    void aPointedArchGetsAConicAndNoSearchWithoutEnd() {
        int[] teeth = {46, 45, 44, 43, 41, 33, 34, 35, 36};
        List<DigitisedPoint> pointed = IntStream.range(0, teeth.length)
                .mapToObj(i -> DigitisedPoint.flat(teeth[i], -22 + 5.5 * i, 24 - 6 * Math.abs(i - 4)))
                .toList();
        ArchFit fit = ArchFit.of(ArchFamily.CONIC, Landmarks.of(pointed));
        assertThat(((ConicArch) fit.curve()).weight()).isEqualTo(Math.exp(3) - 1, within(1e-6));
        assertThat(fit.goodness().rms()).isLessThan(0.5);
    }
}
