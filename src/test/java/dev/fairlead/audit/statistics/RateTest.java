package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateTest {
    /** Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (score, no continuity correction). */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void intervalsAreThePublishedOnes(long count, long of, double low, double high) {
        Rate rate = new Rate(count, of);
        assertThat(rate.low()).isCloseTo(low, within(5e-5));
        assertThat(rate.high()).isCloseTo(high, within(5e-5));
        assertThat(new Rate(of - count, of).low()).as("mirrored").isCloseTo(1 - high, within(5e-5));
    }

    /** Wilson 1927: at either end the share that was seen lies 1.96 standard errors of that end away. */
    @Test
    void endsAreWhereTheScoreTestEnds() {
        for (long of = 1; of < 400; of += 7) {
            for (long count = 1; count < of; count += 5) {
                Rate rate = new Rate(count, of);
                for (double end : new double[] {rate.low(), rate.high()}) {
                    assertThat(Math.abs(rate.share() - end) / Math.sqrt(end * (1 - end) / of))
                            .isCloseTo(1.959963984540054, within(1e-6));
                }
            }
        }
    }

    @Test
    void ofNothingEverythingIsPossible() {
        Rate none = new Rate(0, 0);
        assertThat(none.share()).isNaN();
        assertThat(none.low()).isZero();
        assertThat(none.high()).isEqualTo(1);
        assertThatThrownBy(() -> new Rate(3, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
