package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Change with time, and values of a clinic drawn towards published ones. */
class TrendTest {
    /** Deaths from AIDS by quarter (Whyte 1987, in Dobson, An Introduction to Generalized Linear Models). */
    @Test
    void logLinearTrendIsThePublishedOne() {
        double[] deaths = {0, 1, 2, 3, 1, 4, 9, 18, 23, 31, 20, 25, 37, 45};
        double[] t = new double[14];
        double[] one = new double[14];
        Arrays.setAll(t, i -> i + 1);
        Arrays.fill(one, 1);
        Trend fit = Trend.of(deaths, one, t);
        assertThat(fit.level()).isCloseTo(0.339634, within(1e-6));
        assertThat(fit.slope()).isCloseTo(0.256524, within(1e-6));
        assertThat(fit.spread()).isCloseTo(2.403942, within(1e-5));
        assertThat(fit.error()).isCloseTo(0.034171, within(1e-6));
        assertThat(fit.ratio()).isCloseTo(1.2924, within(1e-4));
        assertThat(fit.low()).isCloseTo(1.1997, within(1e-4));
        assertThat(fit.high()).isCloseTo(1.3923, within(1e-4));
        assertThat(fit.tested(deaths, one, t, new int[14], 1).p()).isLessThan(0.001);
    }

    @Test
    void whatDoesNotChangeHasNoSmallP() {
        double[] same = {2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1};
        double[] one = new double[12];
        double[] t = new double[12];
        Arrays.fill(one, 1.5);
        Arrays.setAll(t, i -> i / 12.0);
        assertThat(Trend.of(same, one, t).tested(same, one, t, new int[12], 1).p())
                .isGreaterThan(0.3);
        assertThat(Trend.of(new double[12], one, t)).isNull();
        assertThat(Trend.of(same, one, new double[12])).as("no time passes").isNull();
    }

    /** Newcomb's 66 times of light (Stigler 1977); Gelman and others give 23.6 to 28.8. */
    @Test
    void withoutAnythingPublishedTheClinicsOwnValuesStand() {
        double[] x = {
            28, 26, 33, 24, 34, -44, 27, 16, 40, -2, 29, 22, 24, 21, 25, 30, 23, 29, 31, 19, 24, 20, 36, 32, 36, 28, 25,
            21, 28, 29, 37, 25, 28, 26, 30, 32, 36, 26, 30, 22, 36, 23, 27, 27, 28, 27, 31, 27, 26, 33, 26, 32, 32, 24,
            39, 28, 24, 25, 32, 25, 29, 27, 28, 29, 16, 23
        };
        double mean = Arrays.stream(x).average().orElseThrow();
        double sd = Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / 65);
        Shrunk s = Shrunk.of(new Shrunk.Published(0, 0, 0, -1), 66, mean, sd);
        assertThat(s.mean()).isCloseTo(26.2121, within(1e-4));
        assertThat(s.mean() - s.meanReach()).isCloseTo(23.57, within(0.005));
        assertThat(s.mean() + s.meanReach()).isCloseTo(28.85, within(0.005));
    }

    /** Worked by hand. */
    @Test
    void fewValuesAreDrawnTowardsPublishedOnes() {
        Shrunk s = Shrunk.of(new Shrunk.Published(0, 0.8, 10, 10), 20, 0.45, 1.10);
        assertThat(s.mean()).isCloseTo(0.3, within(1e-12));
        assertThat(s.sd()).isCloseTo(1.0123, within(5e-5));
        assertThat(s.mean() - s.meanReach()).isCloseTo(-0.0774, within(5e-5));
        assertThat(s.mean() + s.meanReach()).isCloseTo(0.6774, within(5e-5));
        assertThat(s.nextReach()).isCloseTo(2.1015, within(5e-5));
        assertThat(s.share()).isCloseTo(2 / 3.0, within(1e-12));
    }
}
