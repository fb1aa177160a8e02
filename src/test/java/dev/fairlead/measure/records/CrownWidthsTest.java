package dev.fairlead.measure.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrownWidthsTest {
    @ParameterizedTest
    @CsvSource({
        "31, 4.0, 7.0",
        "32, 4.5, 7.5",
        "33, 5.5, 8.5",
        "34, 5.5, 9.0",
        "35, 5.5, 9.5",
        "36, 9.0, 13.0",
        "73, 4.5, 7.5",
        "74, 6.0, 9.5",
        "75, 8.0, 12.0"
    })
    void fourDeviationsReachTheLimitsOfPlausibility(int tooth, double low, double high) {
        // limits made from the means of Black 1902, Wheeler, Moyers et al. 1976 and Moorrees 1957, about four
        // deviations wide
        CrownWidths.Row row = CrownWidths.of(Tooth.of(tooth));
        assertThat(row.mean() - 4 * row.sd()).isCloseTo(low, within(0.15));
        assertThat(row.mean() + 4 * row.sd()).isCloseTo(high, within(0.15));
    }

    @ParameterizedTest
    @CsvSource({
        "41, 5.4",
        "42, 5.9",
        "43, 6.9",
        "44, 6.9",
        "45, 7.1",
        "46, 11.2",
        "47, 10.7",
        "11, 9.0",
        "12, 6.4",
        "13, 7.6",
        "14, 7.2",
        "15, 6.8",
        "16, 10.7",
        "83, 5.0",
        "84, 7.7",
        "85, 9.9",
        "53, 7.0",
        "54, 7.3",
        "55, 8.2"
    })
    void publishedMeansArePlausible(int tooth, double mean) {
        // Black 1902; his primary lower canine is much smaller than that of later authors
        assertThat(CrownWidths.deviation(Tooth.of(tooth), Measured.exact(mean, Unit.MM))
                        .value())
                .isLessThan(2.5);
    }

    @Test
    void everyToothButThirdMolarsHasARow() {
        for (int n = 11; n < 86; n++) {
            if (Tooth.exists(n)) {
                assertThat(CrownWidths.has(Tooth.of(n))).as("tooth " + n).isEqualTo(n % 10 != 8);
            }
        }
    }

    @Test
    void deviationIsNeverNegativeAndCarriesTheError() {
        CrownWidths.Row row = CrownWidths.of(Tooth.of(31));
        Measured narrow = Measured.of(row.mean() - 2 * row.sd(), Unit.MM, "w", 0.1);
        assertThat(CrownWidths.deviation(Tooth.of(31), narrow).value()).isCloseTo(2, within(1e-9));
        assertThat(CrownWidths.deviation(Tooth.of(31), narrow).sd()).isCloseTo(0.1 / row.sd(), within(1e-9));
        assertThat(CrownWidths.deviation(Tooth.of(31), narrow)
                        .plus(narrow.ratioTo(Measured.exact(row.sd(), Unit.MM), 1, Unit.RATIO))
                        .sd())
                .as("of a narrow tooth it falls as the width grows")
                .isCloseTo(0, within(1e-9));
    }
}
