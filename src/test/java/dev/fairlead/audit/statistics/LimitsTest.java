package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LimitsTest {
    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2: 30 wafers of 50 chips, mean 0.2313, limits 0.0524 and
     * 0.4102.
     */
    @Test
    void chartOfSharesHasTheHandbooksLimits() {
        Band b = ControlChart.share(50, 0.2313);
        assertThat(b.low()).isCloseTo(0.0524, within(1e-4));
        assertThat(b.high()).isCloseTo(0.4102, within(1e-4));
        // the handbook's wafer 15 (22 of 50) and 23 (21 of 50) lie above, wafer 1 (12 of 50) does not
        assertThat(b.holds(0.44)).isFalse();
        assertThat(b.holds(0.42)).isFalse();
        assertThat(b.holds(0.24)).isTrue();
        assertThat(ControlChart.share(5, 0.02).low()).isZero();
    }

    /** Exact tails of Bin(10, 0.5) in 1024ths: P(R <= 1) = 11, P(R <= 2) = 56; P(R <= 8) = 1013, P(R <= 7) = 968. */
    @Test
    void binomialLimitsLieBetweenTheWholeCountsAsSpiegelhalterInterpolates() {
        Band b = Funnel.share(10, 0.5, 0.95);
        assertThat(b.low()).isCloseTo((2 - (56 / 1024.0 - 0.025) / (45 / 1024.0)) / 10, within(1e-9));
        assertThat(b.high()).isCloseTo((8 - (1013 / 1024.0 - 0.975) / (45 / 1024.0)) / 10, within(1e-9));
    }

    /**
     * Counting on a coin of one in five: where the limits end, exact tails on both sides of them hold the stated
     * chance.
     */
    @Test
    void exactTailsEncloseTheLimitsOfEveryGroup() {
        for (int n : new int[] {7, 20, 60, 150}) {
            for (double level : new double[] {Funnel.INNER, Funnel.OUTER}) {
                Band b = Funnel.share(n, 0.2, level);
                int high = (int) Math.ceil(b.high() * n - 1e-9);
                assertThat(upTo(n, high)).isGreaterThanOrEqualTo(1 - (1 - level) / 2);
                assertThat(upTo(n, high - 1)).isLessThan(1 - (1 - level) / 2);
            }
        }
    }

    /** P(R <= r) of Bin(n, 0.2), summed by the ratio of one term to the next. */
    private static double upTo(int n, int r) {
        double term = Math.pow(0.8, n);
        double sum = term;
        for (int i = 1; i <= r; i++) {
            term *= (n - i + 1.0) / i * 0.25;
            sum += term;
        }
        return sum;
    }

    /** Poisson of mean 5: P(R <= 0) = e^-5, P(R <= 1) = 6 e^-5. */
    @Test
    void poissonLimitsLikewise() {
        Band b = Funnel.ratio(5, 0.95);
        double e = Math.exp(-5);
        assertThat(b.low()).isCloseTo((1 - (6 * e - 0.025) / (5 * e)) / 5, within(1e-9));
    }

    @Test
    void ofManyCasesLimitsAreThoseOfTheNormalDistribution() {
        Band b = Funnel.share(1_000_000, 0.1, 0.95);
        double se = Math.sqrt(0.09 / 1e6);
        assertThat(b.low()).isCloseTo(0.1 - 1.959964 * se, within(0.01 * se));
        assertThat(b.high()).isCloseTo(0.1 + 1.959964 * se, within(0.01 * se));
        Band outer = Funnel.share(1_000_000, 0.1, 0.998);
        assertThat(outer.high()).isCloseTo(0.1 + 3.090232 * se, within(0.01 * se));
    }

    /**
     * Benjamini & Hochberg 1995, JRSS B 57:289, section 4: fifteen comparisons after myocardial infarction, four
     * rejected at 0.05.
     */
    @Test
    void discoveriesAreThoseOfThePublishedTrial() {
        double[] p = {
            0.0344, 0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528,
            0.7590, 1.0000
        };
        boolean[] found = Discoveries.at(0.05, p);
        for (int i = 0; i < p.length; i++) {
            assertThat(found[i]).as("p " + p[i]).isEqualTo(p[i] <= 0.0095);
        }
        assertThat(Discoveries.at(0.05)).isEmpty();
    }

    @Test
    void exactTestsAgreeWithCountingByHand() {
        // ten of ten by a fair coin: 2 / 1024
        assertThat(Discoveries.ofShare(10, 10, 0.5)).isCloseTo(2 / 1024.0, within(1e-12));
        assertThat(Discoveries.ofShare(5, 10, 0.5)).isEqualTo(1);
        assertThat(Discoveries.ofCount(0, 5)).isCloseTo(2 * Math.exp(-5), within(1e-12));
        assertThat(Discoveries.ofCount(0, 0)).isEqualTo(1);
    }
}
