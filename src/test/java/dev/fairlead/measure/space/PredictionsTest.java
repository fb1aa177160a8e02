package dev.fairlead.measure.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Predictions of canine and premolar widths against published examples and equations. */
class PredictionsTest {
    private static final double TINY = 1e-9;

    private static Measured mm(double value) {
        return Measured.exact(value, Unit.MM);
    }

    private static SpaceResult space(CaseBuilder b) {
        return SpaceAnalysis.of(new Readings(b.build()), true);
    }

    /** Four incisors that sum to {@code sum} mm. */
    private static CaseBuilder incisors(double sum) {
        return new CaseBuilder().incisors(sum / 4 + 0.25, sum / 4 - 0.25, sum / 4 - 0.25, sum / 4 + 0.25);
    }

    @Test
    void simpleRuleGivesThePublishedExample() {
        // examination question on an 8-year-old (questions.collegedunia.com): incisors 19.5 mm, 20.25 mm a side
        assertThat(Predictions.tanakaJohnston(mm(19.5)).value()).isEqualTo(20.25);
        assertThat(space(incisors(19.5)).left().required().value()).isCloseTo(20.25, within(TINY));
    }

    @Test
    void wholeArchNeedsTheIncisorsTwiceAndTwentyOne() {
        // Tanaka & Johnston 1974 in its arithmetic form, LI + (LI + 21): LI 23 gives 67.0 mm
        assertThat(space(incisors(23)).required().value()).isCloseTo(67.0, within(TINY));
    }

    @Test
    void tableAndSimpleRuleCrossAtTwentyOne() {
        // LI / 2 + 10.5 against 8.4 + 0.6 LI (75 % row): equal at 21.0 only
        ProbabilityTable table = ProbabilityTable.table();
        assertThat(table.predict(mm(21), 75).value()).isCloseTo(21, within(TINY));
        assertThat(Predictions.tanakaJohnston(mm(21)).value()).isCloseTo(21, within(TINY));
        assertThat(table.predict(mm(20.9), 75).value())
                .isLessThan(Predictions.tanakaJohnston(mm(20.9)).value());
        assertThat(table.predict(mm(21.1), 75).value())
                .isGreaterThan(Predictions.tanakaJohnston(mm(21.1)).value());
        assertThat(space(incisors(21).set("/plan/percentile", 75))
                        .left()
                        .spread()
                        .value())
                .isCloseTo(0, within(TINY));
    }

    @ParameterizedTest
    @CsvSource({"95, 9.4", "85, 8.8", "75, 8.4", "65, 8.1", "50, 7.7", "35, 7.3", "25, 7.0", "5, 6.0"})
    void rowsOfTheTableAreLinesOfSlopeSixTenths(double percentile, double intercept) {
        // own finding on the recalled table of 1973: every row is k + 0.6 LI, to the printed tenth
        for (double li = 19.5; li <= 25.0; li += 0.25) {
            assertThat(ProbabilityTable.table().predict(mm(li), percentile).value())
                    .as("LI " + li)
                    .isCloseTo(intercept + 0.6 * li, within(0.0501));
        }
    }

    @Test
    void tableRisesWithIncisorsAndWithPercentile() {
        ProbabilityTable table = ProbabilityTable.table();
        for (double p = 5; p <= 95; p += 2.5) {
            for (double li = 19.5; li <= 24.9; li += 0.1) {
                assertThat(table.predict(mm(li + 0.1), p).value())
                        .isGreaterThan(table.predict(mm(li), p).value());
                if (p < 95) {
                    assertThat(table.predict(mm(li), p + 2.5).value())
                            .isGreaterThan(table.predict(mm(li), p).value());
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"19.4, 75", "29.1, 75", "25.1, 50", "25.1, 85", "22, 4", "22, 96", "26, 70"})
    void nothingIsReadOutsideTheTable(double li, double percentile) {
        assertThat(ProbabilityTable.table().reaches(li, percentile)).isFalse();
        Prediction p =
                space(incisors(li).set("/plan/percentile", percentile)).left().by(Method.PROBABILITY_TABLE);
        assertThat(p.value().applies()).isFalse();
        assertThat(p.remark()).contains("not extrapolated");
    }

    /** A percentile between two rows lies between them by its distance to each. */
    @ParameterizedTest
    @CsvSource({"70, 65, 75, 0.5", "83, 75, 85, 0.8", "57.5, 50, 65, 0.5", "8, 5, 15, 0.3"})
    void betweenRowsThePercentileTellsTheShare(double percentile, double low, double high, double share) {
        ProbabilityTable table = ProbabilityTable.table();
        for (double li : new double[] {19.5, 21.0, 22.3, 25.0}) {
            double under = table.predict(mm(li), low).value();
            double over = table.predict(mm(li), high).value();
            assertThat(table.predict(mm(li), percentile).value())
                    .isCloseTo(under + share * (over - under), within(TINY));
        }
    }

    /** The row of 75 % goes from 21.0 to 21.3 mm between incisors of 21.0 and 21.5 mm: 0.6 mm a millimetre. */
    @Test
    void anErrorOfTheIncisorsIsCarriedByTheSlopeOfItsColumn() {
        ProbabilityTable table = ProbabilityTable.table();
        assertThat(table.predict(mm(21.5), 75).value()).isCloseTo(21.3, within(TINY));
        for (double percentile : new double[] {50, 68, 75}) {
            for (double li : new double[] {19.5, 21.2, 24.9, 25.0}) {
                double from = Math.min(24.5, Math.floor(li * 2) / 2);
                double slope = (table.predict(mm(from + 0.5), percentile).value()
                                - table.predict(mm(from), percentile).value())
                        / 0.5;
                assertThat(slope).isBetween(0.4, 0.8);
                assertThat(table.predict(Measured.of(li, Unit.MM, "li", 0.2), percentile)
                                .sd())
                        .isCloseTo(0.2 * slope, within(1e-9));
            }
        }
    }

    @Test
    void theTableTellsHowFarItReaches() {
        ProbabilityTable table = ProbabilityTable.table();
        assertThat(table.range(75)).isEqualTo("19.5 to 29.0 mm at 75 %");
        assertThat(table.range(70)).isEqualTo("19.5 to 25.0 mm at 70 %");
        assertThat(table.range(96)).isEqualTo("the 5 to 95 % rows");
        assertThat(table.range(4)).isEqualTo("the 5 to 95 % rows");
        assertThat(table.reaches(19.5, 5)).isTrue();
        assertThat(table.reaches(25, 95)).isTrue();
        assertThat(table.reaches(29, 75)).isTrue();
        assertThatThrownBy(() -> table.predict(mm(29.5), 75))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("29.5 mm at 75.0 %");
    }

    @ParameterizedTest
    @CsvSource({"25.5, 23.7", "27.0, 24.6", "27.5, 24.8", "29.0, 25.7"})
    void usualRowGoesOnToTwentyNine(double li, double expected) {
        // the longer 75 % row of textbooks; its step drops between 27.0 and 27.5 (recalled)
        assertThat(ProbabilityTable.table().predict(mm(li), 75).value()).isCloseTo(expected, within(TINY));
    }

    @ParameterizedTest
    @CsvSource({
        "india-punjab, male, 20, 19.75", "india-punjab, female, 20, 19.55", "spain, male, 20, 20.51",
                "spain, female, 20, 19.91",
        "india-punjab, male, 22, 21.17", "india-punjab, female, 22, 20.89", "spain, male, 22, 21.39",
                "spain, female, 22, 20.83",
        "india-punjab, male, 23, 21.88", "india-punjab, female, 23, 21.56", "spain, male, 23, 21.83",
                "spain, female, 23, 21.29",
        "india-punjab, male, 26, 24.01", "india-punjab, female, 26, 23.57", "spain, male, 26, 23.15",
                "spain, female, 26, 22.67"
    })
    void populationsHaveTheirPublishedEquations(String population, String sex, double li, double expected) {
        // Philip et al. 2010 (5.55 + 0.71 X, 6.15 + 0.67 X); Tarazona-Alvarez et al. 2015 (11.71 + 0.44 X, 10.71 + 0.46
        // X)
        CaseBuilder b = incisors(li).set("/child/population", population).set("/child/sex", sex);
        assertThat(space(b).left().by(Method.REGRESSION).value().value()).isCloseTo(expected, within(TINY));
    }

    @Test
    void filmIsCorrectedByItsReference() {
        // 8.0 mm on a film that shows a molar of 11.0 mm as 12.1 mm: magnified by 1.1
        assertThat(ImageWidths.corrected(mm(8.0), mm(11.0), mm(12.1)).value()).isCloseTo(8.0 / 1.1, within(TINY));
        Measured two = ImageWidths.corrected(
                Measured.of(8, Unit.MM, "a", 0.1),
                Measured.of(11, Unit.MM, "b", 0.1),
                Measured.of(12.1, Unit.MM, "c", 0.1));
        // relative errors of a product and quotient add in squares (GUM 5.1.6)
        assertThat(two.sd() / two.value())
                .isCloseTo(Math.sqrt(sq(0.1 / 8) + sq(0.1 / 11) + sq(0.1 / 12.1)), within(1e-9));
    }

    @Test
    void anErrorThatImageAndReferenceShareCancels() {
        Measured both = Measured.of(8, Unit.MM, "film", 0.1);
        assertThat(ImageWidths.corrected(both, mm(11), both).value()).isCloseTo(11, within(TINY));
        assertThat(ImageWidths.corrected(both, mm(11), both).sd()).isCloseTo(0, within(TINY));
        assertThat(ImageWidths.corrected(Measured.unknown("/a"), Measured.unknown("/b"), mm(12))
                        .missing())
                .containsExactly("/a", "/b");
    }

    @Test
    void theFirstImageThatCanBeUsedCounts() {
        CaseBuilder b = incisors(22).set("/teeth/36/width", 11.0);
        b.set("/images/0/tooth", 33).set("/images/0/imageWidth", 7.7).set("/images/0/reference", 36);
        assertThat(ImageWidths.of(new Readings(b.build()), Tooth.of(33)).missing())
                .containsExactly("/images/0/referenceImageWidth");
        b.set("/images/1/tooth", 33).set("/images/1/imageWidth", 7.5).set("/images/1/reference", 36);
        assertThat(ImageWidths.of(new Readings(b.build()), Tooth.of(33)).missing())
                .as("the first of two that cannot be used")
                .containsExactly("/images/0/referenceImageWidth");
        b.set("/images/1/referenceImageWidth", 11.0);
        assertThat(ImageWidths.of(new Readings(b.build()), Tooth.of(33)).value())
                .isCloseTo(7.5, within(TINY));
        assertThat(ImageWidths.of(new Readings(b.build()), Tooth.of(34)).missing())
                .containsExactly("/teeth/34/width");
    }

    private static double sq(double x) {
        return x * x;
    }

    @Test
    void measuredTeethComeBeforeFilmAndFilmBeforeRule() {
        CaseBuilder b = incisors(22).set("/teeth/36/width", 11.0);
        assertThat(space(b).left().chosen().method()).isEqualTo(Method.TANAKA_JOHNSTON);
        for (int i = 0; i < 3; i++) {
            b.set("/images/" + i + "/tooth", 33 + i)
                    .set("/images/" + i + "/imageWidth", 7.7)
                    .set("/images/" + i + "/reference", 36)
                    .set("/images/" + i + "/referenceImageWidth", 12.1);
        }
        assertThat(space(b).left().chosen().method()).isEqualTo(Method.RADIOGRAPH);
        assertThat(space(b).left().required().value()).isCloseTo(3 * 7.0, within(TINY));
        assertThat(space(b).right().chosen().method()).isEqualTo(Method.TANAKA_JOHNSTON);
        b.set("/teeth/33/width", 6.9);
        assertThat(space(b).left().required().value()).isCloseTo(6.9 + 2 * 7.0, within(TINY));
        b.set("/teeth/34/width", 6.9).set("/teeth/35/width", 7.1);
        assertThat(space(b).left().chosen().method()).isEqualTo(Method.MEASURED);
        assertThat(space(b).left().required().value()).isCloseTo(20.9, within(TINY));
        assertThat(space(b).left().spread().applies()).isFalse();
    }

    @Test
    void errorsPropagate() {
        // four teeth of 0.10 mm each: LI 0.20 mm; from LI 0.10 mm a side; with the standard error 0.85: 0.86 mm
        // (first-order propagation)
        SpaceResult r = space(incisors(23));
        assertThat(r.incisors().sd()).isCloseTo(0.20, within(1e-9));
        assertThat(Predictions.tanakaJohnston(r.incisors()).sd()).isCloseTo(0.10, within(1e-9));
        assertThat(r.left().required().sd())
                .isCloseTo(Math.sqrt(0.85 * 0.85 + 0.01), within(1e-9))
                .isCloseTo(0.86, within(0.005));
        // 0.88 of 0.10 mm by Spain's slope of 0.44; 1.2 of 0.10 mm by the table's slope of 0.6
        SpaceResult other = space(incisors(23)
                .set("/child/population", "spain")
                .set("/child/sex", "male")
                .set("/plan/percentile", 75));
        assertThat(other.left().by(Method.REGRESSION).value().sd()).isCloseTo(Math.hypot(0.85, 0.088), within(1e-9));
        assertThat(other.left().by(Method.PROBABILITY_TABLE).value().sd())
                .isCloseTo(Math.hypot(0.85, 0.12), within(1e-9));
        // both sides rise and fall together: twice one side, 1.7 mm, not 1.2
        assertThat(r.left().required().plus(r.right().required()).sd()).isCloseTo(1.7, within(0.02));
    }
}
