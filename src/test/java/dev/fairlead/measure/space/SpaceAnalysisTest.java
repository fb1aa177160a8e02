package dev.fairlead.measure.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Contacts;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Space analysis, leeway, ratio and index against published examples. */
class SpaceAnalysisTest {
    private static final double TINY = 1e-9;

    private static SpaceResult space(CaseBuilder b) {
        return SpaceAnalysis.of(new Readings(b.build()), false);
    }

    private static Measured mm(double value) {
        return Measured.exact(value, Unit.MM);
    }

    @ParameterizedTest
    @CsvSource({"25, 30, 5", "37, 27, -10"})
    void shortageIsNeedLessRoom(double room, double need, double shortage) {
        // slideshare.net/slideshow/cast-analysis-222070756: arch 25, teeth 30: -5 (crowding); 37 and 27: +10 (spacing);
        // here need less room.
        // Laid out as one arch of six measured teeth a side beside incisors of 3 mm.
        double tooth = (need - 12) / 6;
        CaseBuilder b = new CaseBuilder().incisors(3, 3, 3, 3).set("/space/perimeter", room);
        for (int n : new int[] {33, 34, 35, 43, 44, 45}) {
            b.set("/teeth/" + n + "/width", tooth);
        }
        assertThat(space(b).totalShortage().value()).isCloseTo(shortage, within(TINY));
    }

    @Test
    void wholePlanAddsUp() {
        // LI 23.0, simple rule 22.0 a side, room 64.0: need 67.0, lacking 3.0
        CaseBuilder b = new CaseBuilder()
                .incisors(6, 5.5, 5.5, 6)
                .set("/space/left", 20.5)
                .set("/space/right", 21.5)
                .set("/space/incisors", 22);
        SpaceResult r = space(b);
        assertThat(r.totalShortage().value()).isCloseTo(3, within(TINY));
        assertThat(r.left().shortage().value()).isCloseTo(22 - 20.5 + 0.5, within(TINY));
        assertThat(r.right().shortage().value()).isCloseTo(22 - 21.5 + 0.5, within(TINY));
        assertThat(r.left().shortage().plus(r.right().shortage()).value())
                .isCloseTo(r.totalShortage().value(), within(TINY));
        assertThat(r.largestShortage().value()).isCloseTo(2, within(TINY));
    }

    @Test
    void missingFactsAreNamed() {
        CaseBuilder b = new CaseBuilder()
                .incisors(6, 5.5, 5.5, 6)
                .without("/teeth/41/width")
                .set("/space/left", 20.5);
        SpaceResult r = space(b);
        assertThat(r.left().required().missing()).containsExactly("/teeth/41/width");
        assertThat(r.left().shortage().missing()).containsExactlyInAnyOrder("/teeth/41/width", "/space/incisors");
        assertThat(r.right().shortage().missing())
                .containsExactlyInAnyOrder("/teeth/41/width", "/space/incisors", "/space/right");
        assertThat(r.left().spread().missing()).containsExactly("/teeth/41/width");
    }

    @Test
    void aSingleMethodAsksForAnother() {
        // 19 mm lies outside the table, no population is named, no film was measured
        SpaceResult r = space(new CaseBuilder().incisors(5, 4.5, 4.5, 5));
        assertThat(r.left().spread().missing()).containsExactly("/child/population", "/child/sex", "/images");
    }

    /** The usual row must not stand in for one that somebody read: how far the methods lie apart waits for it. */
    @Test
    void theSpreadWaitsForTheRowOfTheTableThatWasRead() {
        CaseBuilder b = new CaseBuilder().incisors(6, 5.5, 5.5, 6);
        assertThat(space(b).left().spread().missing()).containsExactly("/plan/percentile");
        // the row of 75 % gives 22.2 mm for 23 mm, the simple rule 22.0 mm; the row of 50 % 21.5 mm
        assertThat(space(b.set("/plan/percentile", 75)).left().spread().value()).isCloseTo(0.2, within(TINY));
        assertThat(space(b.set("/plan/percentile", 50)).left().spread().value()).isCloseTo(0.5, within(TINY));
        assertThat(space(b.set("/plan/percentile", CaseBuilder.NOT_APPLICABLE))
                        .left()
                        .spread()
                        .value())
                .as("no row was read")
                .isCloseTo(0.2, within(TINY));
        // 19 mm lies outside the table, so no row matters: 20.00 by the rule, 11.71 + 0.44 x 19 = 20.07 for Spain
        CaseBuilder small = new CaseBuilder()
                .incisors(5, 4.5, 4.5, 5)
                .set("/child/population", "spain")
                .set("/child/sex", "male");
        assertThat(space(small).left().spread().value()).isCloseTo(0.07, within(TINY));
        // a single method beside an unread row asks for another way first
        assertThat(space(new CaseBuilder().incisors(5, 4.5, 4.5, 5))
                        .left()
                        .spread()
                        .missing())
                .doesNotContain("/plan/percentile");
    }

    @Test
    void aFrontToothThatHasNotEruptedLeavesNoRatioAndNothingToMeasure() {
        CaseBuilder b = new CaseBuilder();
        for (int n : new int[] {42, 41, 31, 32, 33, 13, 12, 11, 21, 22, 23}) {
            b.set("/teeth/" + n + "/width", 6.0);
        }
        assertThat(space(b).anterior().lower().missing()).containsExactly("/teeth/43/width");
        b.set("/teeth/43/state", "erupted");
        assertThat(space(b).anterior().lower().missing()).containsExactly("/teeth/43/width");
        b.set("/teeth/43/state", "unerupted");
        assertThat(space(b).anterior().lower().applies()).isFalse();
        assertThat(space(b).anterior().upper().value()).isCloseTo(36, within(TINY));
        b.set("/teeth/43/width", 6.5);
        assertThat(space(b).anterior().lower().value()).isCloseTo(36.5, within(TINY));
    }

    @Test
    void leewayOfTheMeanLowerTeeth() {
        // Nance 1947 from Black's widths: 5.0 + 7.7 + 9.9 against 6.9 + 6.9 + 7.1, 1.7 mm a side (pdfcoke.com,
        // lee-way-space)
        CaseBuilder b = new CaseBuilder()
                .set("/teeth/73/width", 5.0)
                .set("/teeth/74/width", 7.7)
                .set("/teeth/75/width", 9.9)
                .set("/teeth/33/width", 6.9)
                .set("/teeth/34/width", 6.9)
                .set("/teeth/35/width", 7.1);
        assertThat(space(b).side(Side.LEFT).leeway().value()).isCloseTo(1.7, within(TINY));
        assertThat(space(b).side(Side.RIGHT).leeway().known()).isFalse();
    }

    @Test
    void leewayOfTheMeanUpperTeeth() {
        // the same source: upper 7.0 + 7.3 + 8.2 against 7.6 + 7.2 + 6.8, 0.9 mm a side
        assertThat(Leeway.of(mm(7.0 + 7.3 + 8.2), mm(7.6 + 7.2 + 6.8)).value()).isCloseTo(0.9, within(TINY));
    }

    @ParameterizedTest
    @CsvSource({
        // Black's mean teeth: overall 90.985 % (upper excess 0.329 mm), anterior 79.130 % (lower excess 0.888 mm)
        "86.8, 95.4, 91.3, 90.985, -0.3002, 0.329", "36.4, 46.0, 77.2, 79.130, 0.888, -1.150",
        // Wheeler's mean teeth: overall 91.398 % (lower excess 0.091), anterior 77.778 % (lower excess 0.260)
        "85.0, 93.0, 91.3, 91.398, 0.091, -0.0997", "35.0, 45.0, 77.2, 77.778, 0.260, -0.3368"
    })
    void toothSizeRatioOfMeanTeeth(
            double lower, double upper, double mean, double percent, double lowerExcess, double upperExcess) {
        // Bolton 1958: lower excess = lower - upper x mean; upper excess = upper - lower / mean
        ToothSizeRatio r = new ToothSizeRatio(mm(lower), mm(upper), mean);
        assertThat(r.percent().value()).isCloseTo(percent, within(5e-4));
        assertThat(r.lowerExcess().value()).isCloseTo(lowerExcess, within(6e-4));
        assertThat(r.upperExcess().value()).isCloseTo(upperExcess, within(6e-4));
    }

    @Test
    void halfAMillimetreChangesTheAnteriorRatioByAboutOnePerCent() {
        // review slides on the analysis: 0.5 mm in a sum is roughly 1 % of the ratio
        Measured with =
                new ToothSizeRatio(Measured.of(36, Unit.MM, "lower", 0.5), mm(46), ToothSizeRatio.ANTERIOR).percent();
        assertThat(with.sd()).isCloseTo(1.1, within(0.05));
    }

    @Test
    void irregularityIsTheSumOfFiveDisplacements() {
        // rule of Little 1975: 0.5 + 1.2 + 0.8 + 1.5 + 0.5 = 4.5, moderate
        CaseBuilder b = new CaseBuilder();
        List<String> keys = List.of("43-42", "42-41", "41-31", "31-32", "32-33");
        double[] d = {0.5, 1.2, 0.8, 1.5, 0.5};
        for (int i = 0; i < 5; i++) {
            b.set("/contacts/" + keys.get(i), d[i]);
        }
        double index = space(b).irregularity().value();
        assertThat(index).isCloseTo(4.5, within(TINY));
        assertThat(Irregularity.Grade.of(index)).isEqualTo(Irregularity.Grade.MODERATE);
        Contacts whole = b.build().contacts();
        assertThat(Irregularity.largest(whole).value()).isCloseTo(1.5, within(TINY));
        assertThat(Irregularity.largestSoFar(whole).value()).isCloseTo(1.5, within(TINY));
        assertThat(Irregularity.indexSoFar(whole).value()).isCloseTo(4.5, within(TINY));
        assertThat(space(b.without("/contacts/41-31")).irregularity().missing()).containsExactly("/contacts/41-31");
        Contacts open = b.build().contacts();
        assertThat(Irregularity.largest(open).known()).isFalse();
        assertThat(Irregularity.largestSoFar(open).value()).isCloseTo(1.5, within(TINY));
        assertThat(Irregularity.indexSoFar(open).value()).isCloseTo(3.7, within(TINY));
        Contacts none = new CaseBuilder().build().contacts();
        assertThat(Irregularity.indexSoFar(none).missing()).hasSize(5);
        assertThat(Irregularity.largestSoFar(none).missing()).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource({
        "0, PERFECT",
        "0.1, MINIMAL",
        "1, MINIMAL",
        "3, MINIMAL",
        "3.99, MINIMAL",
        "4, MODERATE",
        "6, MODERATE",
        "6.99, MODERATE",
        "7, SEVERE",
        "9, SEVERE",
        "9.99, SEVERE",
        "10, VERY_SEVERE",
        "14, VERY_SEVERE"
    })
    void classesHaveNoGaps(double index, Irregularity.Grade grade) {
        // published whole numbers 0 | 1-3 | 4-6 | 7-9 | 10 and more lie in their class
        assertThat(Irregularity.Grade.of(index)).isEqualTo(grade);
    }

    @ParameterizedTest
    @CsvSource({"-1, NONE", "0, NONE", "0.1, UP_TO_2_5", "2.5, UP_TO_2_5", "2.6, UP_TO_5", "5, UP_TO_5", "5.1, ABOVE_5"
    })
    void perimeterClasses(double shortage, PerimeterClass expected) {
        // Carey 1949 as cited: 0-2.5, 2.5-5, above; a shortage of exactly 5 is counted with the class of second
        // premolars
        assertThat(PerimeterClass.of(shortage)).isEqualTo(expected);
    }
}
