package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.ArchPlaces;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Arches read off landmarks of a known curve, the beta function of Braun, Hnat, Fender &amp; Legan (Angle Orthod 1998),
 * written down here anew: y = D (1 - (2 x / W)^2)^0.8.
 */
class LandmarkedArchTest {
    private static final double W = 45;
    private static final double D = 25;
    private static final int[] TEETH = {46, 45, 44, 43, 42, 41, 31, 32, 33, 34, 35, 36};
    private static final double[] X = {-22.5, -21, -18.5, -14, -8.5, -3, 3, 8.5, 14, 18.5, 21, 22.5};

    private static double height(double x) {
        return D * Math.pow(1 - Math.pow(2 * x / W, 2), 0.8);
    }

    /** The landmarks turned about the origin by so many degrees and shifted by (100, -40). */
    private static CaseBuilder landmarks(double turned) {
        CaseBuilder b = SampleCase.full();
        for (int i = 0; i < TEETH.length; i++) {
            place(b, i, TEETH[i], X[i], height(X[i]), turned);
        }
        return b;
    }

    private static void place(CaseBuilder b, int i, int tooth, double x, double y, double turned) {
        double a = Math.toRadians(turned);
        b.set("/landmarks/" + i + "/tooth", tooth)
                .set("/landmarks/" + i + "/x", 100 + Math.cos(a) * x - Math.sin(a) * y)
                .set("/landmarks/" + i + "/y", -40 + Math.sin(a) * x + Math.cos(a) * y);
    }

    private static PatientArch arch(CaseBuilder b) {
        return PatientArch.of(b.build());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 90, -35})
    void widthDepthAndFormAreThoseOfTheCurveHoweverTheModelWasTurned(double turned) {
        CaseBuilder b = landmarks(turned);
        PatientArch arch = arch(b);
        assertThat(arch.basis()).isEqualTo(Basis.LANDMARKS);
        assertThat(arch.remark()).isEmpty();
        assertThat(arch.formKnown()).isTrue();
        assertThat(arch.width().value()).isEqualTo(W, within(1e-4));
        assertThat(arch.depth().value()).isEqualTo(D, within(1e-4));
        // the curve lies on the formula
        assertThat(arch.curve().at(0.4).y())
                .isEqualTo(height(arch.curve().at(0.4).x()), within(1e-4));
        ArchResult result = FrontTest.front(b).arch();
        ArchResult.Drawn drawn = result.drawn().orElseThrow();
        // (Dc / Dm) / (Wc / Wm) with the canines at x = 14
        double index = (D - height(14)) / D / (28 / W);
        assertThat(result.formIndex().value()).isEqualTo(index, within(1e-4));
        assertThat(drawn.shape().index()).isEqualTo(index, within(1e-4));
        assertThat(drawn.fits()).extracting(ArchFit::family).containsExactly(ArchFamily.values());
        assertThat(drawn.places().places()).extracting(ArchPlaces.Place::tooth).contains(46, 45, 44, 43);
        double canine = drawn.places().position(3).orElseThrow();
        assertThat(drawn.curve().atArcLength(canine).x()).isEqualTo(14, within(1e-4));
        assertThat(drawn.canines()).isTrue();
    }

    /** Each coordinate adds its own error: change of the fitted number per mm that it moves, times its SD. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 70})
    void everyCoordinateHasItsPartInTheErrorOfWidthAndDepth(double turned) {
        CaseBuilder b = landmarks(turned);
        PatientArch here = arch(b);
        double sd = b.build().landmarks().get(0).x().sd();
        assertThat(sd).isPositive();
        double h = 0.05;
        for (int i = 0; i < TEETH.length; i++) {
            for (String axis : List.of("/x", "/y")) {
                String at = "/landmarks/" + i + axis;
                double value = ((Number) b.values().get(at)).doubleValue();
                PatientArch more = arch(b.copy().set(at, value + h));
                PatientArch less = arch(b.copy().set(at, value - h));
                double width = (more.width().value() - less.width().value()) / (2 * h);
                double depth = (more.depth().value() - less.depth().value()) / (2 * h);
                assertThat(here.width().part(at)).as(at).isEqualTo(width * sd, within(0.01 * sd));
                assertThat(here.depth().part(at)).as(at).isEqualTo(depth * sd, within(0.01 * sd));
            }
        }
    }

    @Test
    void pointsBesideTheFormBehindTheMolarsOrIncompleteArePassedOver() {
        CaseBuilder b = landmarks(0);
        // an incisal edge inside of the form, a second molar, a tooth above, a point without y, and one of no tooth
        place(b, 12, 83, -10, 10, 0);
        b.set("/landmarks/12/point", "incisal");
        place(b, 13, 37, 24, -9, 0);
        place(b, 14, 11, 0, 20, 0);
        place(b, 15, 73, 10, 10, 0);
        b.without("/landmarks/15/y");
        place(b, 16, 84, -10, 10, 0);
        b.without("/landmarks/16/tooth");
        PatientArch arch = arch(b);
        assertThat(arch.basis()).isEqualTo(Basis.LANDMARKS);
        assertThat(arch.landmarks().orElseThrow().teeth()).hasSize(12);
        assertThat(arch.width().value()).isEqualTo(W, within(1e-4));
        // a labial point or a tube lies on the form and is used
        b.set("/landmarks/4/point", "labial").set("/landmarks/0/point", "tube");
        assertThat(arch(b).landmarks().orElseThrow().teeth()).hasSize(12);
        b.set("/landmarks/4/point", "bracket");
        assertThat(arch(b).landmarks().orElseThrow().teeth()).hasSize(11);
    }

    /** 46 and 36 and an incisor, five points in all: one less, and widths are used with a remark. */
    @ParameterizedTest
    @CsvSource({
        "46 43 41 33 36, true",
        "46 43 42 33 36, true",
        "46 43 33 34 36, false",
        "46 41 33 36, false",
        "45 43 41 33 35, false",
        "45 43 41 33 36, false",
        "46 43 41 33 35, false"
    })
    void landmarksHaveToReachFromMolarOverAnIncisorToMolar(String teeth, boolean used) {
        CaseBuilder b = SampleCase.full();
        int i = 0;
        for (String tooth : teeth.split(" ")) {
            int number = Integer.parseInt(tooth);
            for (int k = 0; k < TEETH.length; k++) {
                if (TEETH[k] == number) {
                    place(b, i++, number, X[k], height(X[k]), 0);
                }
            }
        }
        PatientArch arch = arch(b);
        assertThat(arch.basis()).isEqualTo(used ? Basis.LANDMARKS : Basis.WIDTHS_AND_CANINES);
        if (used) {
            assertThat(arch.remark()).isEmpty();
            assertThat(arch.width().value()).isEqualTo(W, within(1e-3));
        } else {
            assertThat(arch.remark())
                    .contains("do not reach from 46 over an incisor to 36")
                    .contains("at least 5");
            assertThat(arch.width().value()).isEqualTo(44);
        }
    }

    /** Tilted by 60 degrees about the x axis, what is seen from above is half as deep; heights give the rest back. */
    @Test
    void heightsCountWhereAllPointsHaveThem() {
        CaseBuilder flat = SampleCase.full();
        CaseBuilder tilted = SampleCase.full();
        for (int i = 0; i < TEETH.length; i++) {
            double y = height(X[i]) * Math.cos(Math.toRadians(60));
            place(flat, i, TEETH[i], X[i], y, 0);
            place(tilted, i, TEETH[i], X[i], y, 0);
            tilted.set("/landmarks/" + i + "/z", height(X[i]) * Math.sin(Math.toRadians(60)));
        }
        assertThat(arch(tilted).depth().value()).isEqualTo(D, within(1e-3));
        assertThat(arch(flat).depth().value()).isEqualTo(D / 2, within(1e-3));
        // one point without a height: the set is taken as a plane picture
        assertThat(arch(tilted.without("/landmarks/3/z")).depth().value()).isEqualTo(D / 2, within(1e-3));
    }

    @Test
    void twoPointsOfOneToothAreToldAndNotUsed() {
        CaseBuilder b = landmarks(0);
        place(b, 12, 33, 14.2, height(14.2), 0);
        PatientArch arch = arch(b);
        assertThat(arch.basis()).isEqualTo(Basis.WIDTHS_AND_CANINES);
        assertThat(arch.remark()).isEqualTo("The landmarks are not used: more than one landmark of the same tooth.");
        assertThat(arch.landmarks()).isEmpty();
    }

    /** Without canines among the landmarks they stand where average ones do, 14.75 of 37.8 of the way to the molar. */
    @Test
    void canineDepthIsReadOffTheCurve() {
        PatientArch arch = arch(landmarks(0));
        assertThat(arch.canineDepth(arch.values())).isEqualTo(D - height(14), within(1e-4));
        CaseBuilder none = landmarks(0);
        none.drop("/landmarks/3/");
        PatientArch average = arch(none);
        double canine = average.curve().perimeter() / 2 * 14.75 / 37.8;
        assertThat(average.canineDepth(average.values()))
                .isEqualTo(D - average.curve().atArcLength(canine).y(), within(1e-3));
        Point there = average.curve().atArcLength(canine);
        assertThat(FrontTest.front(none).arch().formIndex().value())
                .isEqualTo((D - there.y()) / D / (2 * there.x() / W), within(1e-3));
    }

    /** Landmarks of y = D (1 - q x^6 - (1 - q) x^2), x in halves of the width: the polynomial, and its share q. */
    @Test
    void aPolynomialIsFoundWithItsShareOfTheSixthDegree() {
        CaseBuilder b = SampleCase.full();
        for (int i = 0; i < TEETH.length; i++) {
            double x = 2 * X[i] / W;
            place(b, i, TEETH[i], X[i], D * (1 - 0.6 * Math.pow(x, 6) - 0.4 * x * x), 0);
        }
        Measured[] numbers = arch(b).inputs();
        assertThat(numbers).extracting(Measured::unit).containsExactly(Unit.MM, Unit.MM, Unit.RATIO);
        assertThat(numbers[0].value()).isEqualTo(W, within(1e-4));
        assertThat(numbers[1].value()).isEqualTo(D, within(1e-4));
        assertThat(numbers[2].value()).isEqualTo(0.6, within(1e-4));
    }
}
