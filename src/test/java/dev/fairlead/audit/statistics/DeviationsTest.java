package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class DeviationsTest {
    private static Deviations.Sums sums(double... values) {
        Deviations.Sums s = new Deviations.Sums();
        DoubleStream.of(values).forEach(s::addStandardised);
        return s;
    }

    /**
     * Newcomb's 66 times of light (Stigler 1977): Gelman and others, Bayesian Data Analysis, give 26.2 (23.6 to 28.8).
     */
    @Test
    void biasHasTheIntervalOfStudent() {
        Deviations d = sums(
                        28, 26, 33, 24, 34, -44, 27, 16, 40, -2, 29, 22, 24, 21, 25, 30, 23, 29, 31, 19, 24, 20, 36, 32,
                        36, 28, 25, 21, 28, 29, 37, 25, 28, 26, 30, 32, 36, 26, 30, 22, 36, 23, 27, 27, 28, 27, 31, 27,
                        26, 33, 26, 32, 32, 24, 39, 28, 24, 25, 32, 25, 29, 27, 28, 29, 16, 23)
                .deviations();
        assertThat(d.bias()).isCloseTo(26.2121, within(1e-4));
        assertThat(d.biasLow()).isCloseTo(23.57, within(0.01));
        assertThat(d.biasHigh()).isCloseTo(28.85, within(0.01));
    }

    /**
     * Spread of 0, 0, 1, 1 and so on: n values with variance n/(4 (n - 1)); chi-square quantiles with 9 degrees of
     * freedom are 2.700 and 19.023 in every table.
     */
    @Test
    void spreadHasTheIntervalOfChiSquare() {
        Deviations d = sums(0, 0, 0, 0, 0, 1, 1, 1, 1, 1).deviations();
        assertThat(d.spread()).isCloseTo(Math.sqrt(2.5 / 9), within(1e-12));
        // Student's t with 9 degrees of freedom: 2.262
        assertThat(d.biasLow()).isCloseTo(0.5 - 2.262 * Math.sqrt(2.5 / 90), within(1e-4));
        assertThat(d.spreadLow()).isCloseTo(Math.sqrt(2.5 / 19.023), within(1e-4));
        assertThat(d.spreadHigh()).isCloseTo(Math.sqrt(2.5 / 2.700), within(1e-3));
    }

    /** Newcombe 1998, Statistics in Medicine 17:857, table I, method 5 (Clopper-Pearson). */
    @Test
    void coverageHasTheExactInterval() {
        assertThat(new Deviations.Covered(81, 263).low()).isCloseTo(0.2527, within(5e-5));
        assertThat(new Deviations.Covered(81, 263).high()).isCloseTo(0.3676, within(5e-5));
        assertThat(new Deviations.Covered(15, 148).low()).isCloseTo(0.0578, within(5e-5));
        assertThat(new Deviations.Covered(15, 148).high()).isCloseTo(0.1617, within(5e-5));
        assertThat(new Deviations.Covered(0, 20).low()).isZero();
        assertThat(new Deviations.Covered(0, 20).high()).isCloseTo(0.1684, within(5e-5));
        assertThat(new Deviations.Covered(1, 29).low()).isCloseTo(0.0009, within(5e-5));
        assertThat(new Deviations.Covered(1, 29).high()).isCloseTo(0.1776, within(5e-5));
    }

    @Test
    void standardisedDifferencesFallIntoTenthsAndIntervals() {
        // the ends of the intervals are quantiles of every table of the normal distribution, and lie within
        Deviations.Sums s = sums(-3, -0.5, 0.1, 0.6, 1.9, 2.5, 1.959963984540054, -0.6744897501960817);
        assertThat(s.covered(50)).isEqualTo(new Deviations.Covered(4, 8));
        assertThat(s.covered(95)).isEqualTo(new Deviations.Covered(6, 8));
        assertThat(s.tenths()).containsExactly(1, 0, 1, 1, 0, 1, 0, 1, 0, 3);
        s.addStandardised(-9);
        assertThat(s.covered(50).count()).isEqualTo(4);
        assertThat(s.covered(95).share()).isEqualTo(6 / 9.0);
        assertThat(sums().covered(95).share()).isNaN();
    }

    @Test
    void oneAloneHasNoInterval() {
        assertThat(sums(2, 4).deviations().spread()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(sums(2).deviations().bias()).isEqualTo(2);
        assertThat(sums(2).deviations().biasLow()).isNaN();
        assertThat(sums().deviations().bias()).isNaN();
    }
}
