package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;

/**
 * Standard errors of kappa against three ways that do not know their formula: a published package, the delta method by
 * differences, and resampling.
 */
class KappaErrorTest {
    private static final List<Kappa.Weights> WEIGHTS = List.of(Kappa.NONE, Kappa.LINEAR, Kappa.QUADRATIC);
    private static final long[][] COHEN = {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}};
    private static final long[][] LANDIS_KOCH = {{5, 3, 0, 0}, {3, 11, 4, 0}, {2, 13, 3, 4}, {1, 2, 4, 14}};

    /**
     * Answers of 91 couples (Hout, Duncan & Sobel 1987) as the R package vcd prints them in its reference page of
     * Kappa: value, ASE, ends of the interval.
     */
    @Test
    void errorsAreThoseThatAnotherPackagePrints() {
        long[][] couples = {{7, 7, 2, 3}, {2, 8, 3, 7}, {1, 5, 4, 9}, {2, 8, 9, 14}};
        Kappa plain = Kappa.of(couples, Kappa.NONE);
        assertThat(plain.value()).isCloseTo(0.1293, within(5e-5));
        assertThat(plain.error()).isCloseTo(0.06860, within(5e-6));
        assertThat(plain.low()).isCloseTo(-0.005120399, within(5e-8));
        assertThat(plain.high()).isCloseTo(0.2637809, within(5e-8));
        Kappa linear = Kappa.of(couples, Kappa.LINEAR);
        assertThat(linear.value()).isCloseTo(0.2374, within(5e-5));
        assertThat(linear.error()).isCloseTo(0.07832, within(5e-6));
        assertThat(linear.low()).isCloseTo(0.083883432, within(5e-8));
        assertThat(linear.high()).isCloseTo(0.3908778, within(5e-8));
    }

    /**
     * Variance of a smooth function of multinomial shares p: (sum p g² - (sum p g)²) / n with its gradient g, here by
     * central differences of the definition.
     */
    @Test
    void errorsAreThoseOfTheDeltaMethod() {
        SplittableRandom random = new SplittableRandom(3);
        for (int table = 0; table < 40; table++) {
            int k = 2 + table % 4;
            long[][] counts = new long[k][k];
            for (long[] row : counts) {
                for (int j = 0; j < k; j++) {
                    row[j] = 1L + random.nextInt(30);
                }
            }
            for (Kappa.Weights w : WEIGHTS) {
                assertThat(Kappa.of(counts, w).error()).isCloseTo(delta(counts, w), within(1e-7));
            }
        }
        for (Kappa.Weights w : WEIGHTS) {
            assertThat(Kappa.of(COHEN, w).error()).isCloseTo(delta(COHEN, w), within(1e-7));
            assertThat(Kappa.of(LANDIS_KOCH, w).error()).isCloseTo(delta(LANDIS_KOCH, w), within(1e-7));
        }
    }

    /**
     * Patients drawn again with replacement, 4,000 times: the spread of kappa has a standard error of its own of 1.1 %;
     * the rest is what a large sample leaves out.
     */
    @Test
    void errorsAreTheSpreadOfResampledPatients() {
        SplittableRandom random = new SplittableRandom(17);
        for (Kappa.Weights w : WEIGHTS) {
            StreamingStatistics values = new StreamingStatistics();
            for (int draw = 0; draw < 4000; draw++) {
                values.addValue(Kappa.of(resampled(COHEN, 200, random), w).value());
            }
            double error = Kappa.of(COHEN, w).error();
            assertThat(values.getStandardDeviation()).isCloseTo(error, within(0.06 * error));
        }
    }

    private static double delta(long[][] counts, Kappa.Weights w) {
        int k = counts.length;
        double n = 0;
        for (long[] row : counts) {
            for (long c : row) {
                n += c;
            }
        }
        double[][] p = new double[k][k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                p[i][j] = counts[i][j] / n;
            }
        }
        double squares = 0;
        double mean = 0;
        double h = 1e-5;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double at = p[i][j];
                p[i][j] = at + h;
                double up = definition(p, w);
                p[i][j] = at - h;
                double down = definition(p, w);
                p[i][j] = at;
                double g = (up - down) / (2 * h);
                squares += at * g * g;
                mean += at * g;
            }
        }
        return Math.sqrt((squares - mean * mean) / n);
    }

    /** Cohen 1968: observed less expected credit, over what is left above the expected. */
    private static double definition(double[][] p, Kappa.Weights w) {
        int k = p.length;
        double observed = 0;
        double expected = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double row = 0;
                double column = 0;
                for (int m = 0; m < k; m++) {
                    row += p[i][m];
                    column += p[m][j];
                }
                observed += w.of(i, j, k) * p[i][j];
                expected += w.of(i, j, k) * row * column;
            }
        }
        return (observed - expected) / (1 - expected);
    }

    private static long[][] resampled(long[][] counts, int n, SplittableRandom random) {
        int k = counts.length;
        long[][] drawn = new long[k][k];
        for (int patient = 0; patient < n; patient++) {
            long at = random.nextInt(n);
            for (int cell = 0; cell < k * k; cell++) {
                at -= counts[cell / k][cell % k];
                if (at < 0) {
                    drawn[cell / k][cell % k]++;
                    break;
                }
            }
        }
        return drawn;
    }
}
