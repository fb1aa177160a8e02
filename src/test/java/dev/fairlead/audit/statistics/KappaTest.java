package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class KappaTest {
    /**
     * Proportions of 200 patients, Cohen 1960, Educational and Psychological Measurement 20:37, reused in Cohen 1968.
     */
    private static final long[][] COHEN = {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}};

    @Test
    void kappaOfCohen1960() {
        assertThat(Kappa.of(COHEN, Kappa.NONE).value()).isCloseTo(0.492, within(5e-4));
    }

    /** Cohen 1968, Psychological Bulletin 70:213: weights of disagreement 1, 3 and 6; kappa 0.348. */
    @Test
    void weightedKappaOfCohen1968() {
        double[][] disagreement = {{0, 1, 3}, {1, 0, 6}, {3, 6, 0}};
        assertThat(Kappa.of(COHEN, (a, b, k) -> 1 - disagreement[a][b] / 6).value())
                .isCloseTo(0.348, within(5e-4));
    }

    /** Fleiss, Cohen & Everitt 1969, Psychological Bulletin 72:323: kappa 0.429, weighted 0.507. */
    @Test
    void kappaOfFleissCohenAndEveritt1969() {
        long[][] counts = {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}};
        double[][] w = {{1, 0, 0.4444}, {0, 1, 0.6667}, {0.4444, 0.6667, 1}};
        assertThat(Kappa.of(counts, Kappa.NONE).value()).isCloseTo(0.429, within(5e-4));
        assertThat(Kappa.of(counts, (a, b, k) -> w[a][b]).value()).isCloseTo(0.507, within(5e-4));
    }

    /**
     * Fleiss 1981, Statistical Methods for Rates and Proportions, table 13.1; its standard errors are also held by
     * {@link KappaErrorTest}.
     */
    @Test
    void errorsOfFleiss1981() {
        long[][] counts = {{75, 1, 4}, {5, 4, 1}, {0, 0, 10}};
        Kappa plain = Kappa.of(counts, Kappa.NONE);
        assertThat(plain.value()).isCloseTo(0.6765, within(5e-5));
        assertThat(plain.error()).isCloseTo(0.0877, within(5e-5));
        assertThat(plain.low()).isCloseTo(0.5046, within(1e-4));
        assertThat(plain.high()).isCloseTo(0.8484, within(1e-4));
        Kappa linear = Kappa.of(counts, Kappa.LINEAR);
        assertThat(linear.value()).isCloseTo(0.7222, within(5e-5));
        assertThat(linear.error()).isCloseTo(0.0843, within(5e-5));
    }

    /**
     * Landis & Koch 1977, Biometrics 33:159, New Orleans patients; {@link KappaErrorTest} holds the same errors by the
     * delta method.
     */
    @Test
    void weightedKappaOfLandisAndKoch1977() {
        long[][] counts = {{5, 3, 0, 0}, {3, 11, 4, 0}, {2, 13, 3, 4}, {1, 2, 4, 14}};
        assertThat(Kappa.of(counts, Kappa.NONE).value()).isCloseTo(0.2965, within(5e-5));
        assertThat(Kappa.of(counts, Kappa.NONE).error()).isCloseTo(0.0785, within(5e-5));
        assertThat(Kappa.of(counts, Kappa.LINEAR).value()).isCloseTo(0.4773, within(5e-5));
        assertThat(Kappa.of(counts, Kappa.LINEAR).error()).isCloseTo(0.0730, within(5e-5));
    }

    @Test
    void endsOfTheScale() {
        assertThat(Kappa.of(new long[][] {{7, 0}, {0, 5}}, Kappa.NONE).value()).isEqualTo(1);
        assertThat(Kappa.of(new long[][] {{4, 4}, {4, 4}}, Kappa.NONE).value()).isZero();
        assertThat(Kappa.of(new long[][] {{9, 0}, {0, 0}}, Kappa.NONE).value())
                .as("one answer throughout")
                .isNaN();
        assertThat(Kappa.of(new long[][] {{0, 0, 0}, {0, 7, 0}, {0, 0, 0}}, Kappa.LINEAR)
                        .error())
                .isNaN();
        Kappa none = Kappa.of(new long[2][2], Kappa.NONE);
        assertThat(none.n()).isZero();
        assertThat(new double[] {none.value(), none.error(), none.observed(), none.expected()})
                .containsOnly(Double.NaN);
    }
}
