package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Choices.Sex;
import org.junit.jupiter.api.Test;

/** Ages at shedding against the printed table and against the areas of the normal distribution. */
class ExfoliationTest {
    private static final Exfoliation BOY = Exfoliation.of(PrimaryTooth.SECOND_MOLAR, Sex.MALE);
    private static final Exfoliation GIRL = Exfoliation.of(PrimaryTooth.SECOND_MOLAR, Sex.FEMALE);

    /** Printed: second molar 11.1 (1.15) for girls, 11.6 (1.20) for boys; canine 9.5 (1.00) and 10.6 (1.10). */
    @Test
    void tableAsPrinted() {
        assertThat(Exfoliation.table()).hasSize(6).allMatch(e -> e.source().equals("moorrees-exfoliation"));
        assertThat(new double[] {GIRL.mean(), GIRL.sd(), BOY.mean(), BOY.sd()}).containsExactly(11.1, 1.15, 11.6, 1.20);
        Exfoliation canine = Exfoliation.of(PrimaryTooth.CANINE, Sex.FEMALE);
        assertThat(new double[] {canine.mean(), canine.sd()}).containsExactly(9.5, 1.0);
    }

    @Test
    void aYoungChildSeesTheWholeDistribution() {
        // 5 % of a normal distribution lie below mean - 1.645 SD
        assertThat(BOY.age(0.05, 5)).isEqualTo(11.6 - 1.644854 * 1.2, within(1e-4));
        assertThat(BOY.age(0.5, 5)).isEqualTo(11.6, within(1e-5));
        assertThat(BOY.shedBy(11.6 - 1.2, 5)).isEqualTo(0.158655, within(1e-5));
    }

    @Test
    void aToothThatStillStandsGoesLater() {
        // standing at the mean: of the upper half, 68.27 % lie within one SD
        assertThat(BOY.shedBy(12.8, 11.6)).isEqualTo(0.682689, within(1e-5));
        // half of the upper half lies below the upper quartile, 0.67449 SD
        assertThat(BOY.age(0.5, 11.6)).isEqualTo(11.6 + 0.674490 * 1.2, within(1e-5));
        assertThat(BOY.shedBy(11, 11.6)).isZero();
        assertThat(BOY.age(0.5, 30)).isEqualTo(30);
        assertThat(BOY.shedBy(31, 60)).isZero();
        assertThat(BOY.shedBy(61, 60)).isEqualTo(1);
    }

    @Test
    void anAgeAndItsProbabilityAreInverse() {
        for (double seen : new double[] {7, 9.5, 11, 12.5}) {
            for (double p : new double[] {0.05, 0.3, 0.5, 0.95}) {
                assertThat(GIRL.shedBy(GIRL.age(p, seen), seen)).isEqualTo(p, within(1e-9));
            }
        }
    }
}
