package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
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
        // of 14! orders next to none is as steep: no shuffle of 9,999 reaches what was seen
        assertThat(fit.tested(deaths, one, t, new int[14], 1).p()).isEqualTo(1 / 10_000.0);
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
        assertThat(Trend.of(new double[] {2, 7}, new double[] {1, 1}, new double[] {0, 1}))
                .as("two cases lie on every line")
                .isNull();
        assertThat(Trend.of(same, one, new double[12])).as("no time passes").isNull();
    }

    /**
     * A fit of largest likelihood leaves nothing over, neither in sum nor with time; its error is that of the
     * information times the spread of Pearson's residuals.
     */
    @Test
    void theFitLeavesNothingOver() {
        SplittableRandom random = new SplittableRandom(4);
        for (int round = 0; round < 50; round++) {
            int n = 4 + random.nextInt(20);
            double[] o = new double[n];
            double[] e = new double[n];
            double[] t = new double[n];
            for (int i = 0; i < n; i++) {
                e[i] = 0.2 + 3 * random.nextDouble();
                t[i] = 3 + 4 * random.nextDouble();
                o[i] = 1 + random.nextInt(6);
            }
            Trend fit = Trend.of(o, e, t);
            double[] s = new double[6];
            for (int i = 0; i < n; i++) {
                double mu = e[i] * Math.exp(fit.level() + fit.slope() * t[i]);
                s[0] += mu;
                s[1] += mu * t[i];
                s[2] += mu * t[i] * t[i];
                s[3] += o[i] - mu;
                s[4] += (o[i] - mu) * t[i];
                s[5] += Math.pow(o[i] - mu, 2) / mu / (n - 2);
            }
            assertThat(s[3]).isCloseTo(0, within(1e-8));
            assertThat(s[4]).isCloseTo(0, within(1e-7));
            assertThat(fit.spread()).isCloseTo(Math.max(1, s[5]), within(1e-9));
            double variance = fit.spread() * s[0] / (s[0] * s[2] - s[1] * s[1]);
            assertThat(fit.error()).isCloseTo(Math.sqrt(variance), within(1e-6));
            assertThat(fit.cases()).isEqualTo(n);
        }
    }

    /** Of four cases: Student's t of 2 degrees of freedom is a root alone, 1 - t/√(2 + t²) beyond on both sides. */
    @Test
    void chancesOfASlopeByTheFitAreThoseOfStudent() {
        for (double[] o : new double[][] {{2, 9, 4, 8}, {8, 2, 5, 1}}) {
            Trend fit = Trend.of(o, new double[] {2, 3, 2, 2}, new double[] {0, 1, 2, 3});
            double t = Math.abs(fit.slope() / fit.error());
            assertThat(fit.byFit().p()).isCloseTo(1 - t / Math.sqrt(2 + t * t), within(1e-9));
            assertThat(fit.byFit().slope()).isEqualTo(fit.slope());
        }
    }

    /**
     * Times dealt within stages in every way, 3,456 in all, against shuffles: as far from the middle of all as what was
     * seen. Of a chance as small as the first all shuffles are made; the second ends after the 250th that reaches it.
     */
    @Test
    void timesShuffledWithinStagesGiveTheCountOfAllDeals() {
        double[] expected = {1, 2, 1.5, 1, 3, 1, 2.5, 2, 0.5, 1, 0.5};
        double[] years = {0, 1.1, 2.3, 3.7, 0.2, 1.5, 2.1, 4.4, 1, 2.2, 3.1};
        int[] stage = {0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2};
        double[] rising = {0, 2, 3, 9, 1, 1, 4, 12, 1, 2, 3};
        double[] mixed = {3, 1, 2, 1, 5, 1, 4, 2, 4, 0, 1};
        for (double[] o : new double[][] {rising, mixed}) {
            double exact = dealt(o, expected, years, stage);
            double p = Trend.of(o, expected, years)
                    .tested(o, expected, years, stage, 7)
                    .p();
            boolean all = o == rising;
            assertThat(exact).isBetween(all ? 0.002 : 0.1, all ? 0.02 : 0.9);
            assertThat(p)
                    .isCloseTo(exact, within(4 * Math.sqrt(all ? exact / 9_999 : exact * exact * (1 - exact) / 250)));
            double whole = all ? p * 10_000 : 250 / p;
            assertThat(whole).isCloseTo(Math.rint(whole), within(1e-9));
            assertThat(Trend.of(o, expected, years)
                            .tested(
                                    o,
                                    expected,
                                    Arrays.stream(years).map(y -> y + 11).toArray(),
                                    stage,
                                    7)
                            .p())
                    .as("whatever the years are counted from")
                    .isEqualTo(p);
        }
    }

    /** The share of all deals of times within stages whose sum of rest by time is as far from the mean of all. */
    private static double dealt(double[] observed, double[] expected, double[] years, int[] stage) {
        double rho = Arrays.stream(observed).sum() / Arrays.stream(expected).sum();
        List<Double> sums = new ArrayList<>(List.of(0.0));
        double seen = 0;
        for (int s = 0; s <= 2; s++) {
            int at = s;
            int[] own =
                    IntStream.range(0, stage.length).filter(i -> stage[i] == at).toArray();
            List<Double> next = new ArrayList<>();
            permutations(own, 0, order -> {
                double sum = 0;
                for (int i = 0; i < own.length; i++) {
                    sum += (observed[own[i]] - rho * expected[own[i]]) * years[order[i]];
                }
                for (double before : sums) {
                    next.add(before + sum);
                }
            });
            sums.clear();
            sums.addAll(next);
            for (int i : own) {
                seen += (observed[i] - rho * expected[i]) * years[i];
            }
        }
        double middle = sums.stream().mapToDouble(d -> d).average().orElseThrow();
        double far = Math.abs(seen - middle) - 1e-9;
        return sums.stream().filter(d -> Math.abs(d - middle) >= far).count() / (double) sums.size();
    }

    private static void permutations(int[] of, int from, Consumer<int[]> each) {
        if (from == of.length) {
            each.accept(of);
        }
        for (int i = from; i < of.length; i++) {
            int[] next = of.clone();
            next[from] = of[i];
            next[i] = of[from];
            permutations(next, from + 1, each);
        }
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
        Shrunk s = Shrunk.of(new Shrunk.Published(0, 0, 0, -1), 66, mean, sd, 66);
        assertThat(s.mean()).isCloseTo(26.2121, within(1e-4));
        assertThat(s.mean() - s.meanReach()).isCloseTo(23.57, within(0.005));
        assertThat(s.mean() + s.meanReach()).isCloseTo(28.85, within(0.005));
    }

    /** Worked by hand. */
    @Test
    void fewValuesAreDrawnTowardsPublishedOnes() {
        Shrunk s = Shrunk.of(new Shrunk.Published(0, 0.8, 10, 10), 20, 0.45, 1.10, 20);
        assertThat(s.mean()).isCloseTo(0.3, within(1e-12));
        assertThat(s.sd()).isCloseTo(1.0123, within(5e-5));
        assertThat(s.mean() - s.meanReach()).isCloseTo(-0.0774, within(5e-5));
        assertThat(s.mean() + s.meanReach()).isCloseTo(0.6774, within(5e-5));
        assertThat(s.nextReach()).isCloseTo(2.1015, within(5e-5));
        assertThat(s.share()).isCloseTo(2 / 3.0, within(1e-12));
        // what is published may lie anywhere: all moves with it
        Shrunk moved = Shrunk.of(new Shrunk.Published(5, 0.8, 10, 10), 20, 5.45, 1.10, 20);
        assertThat(moved.mean()).isCloseTo(5.3, within(1e-12));
        assertThat(moved.sd()).isCloseTo(s.sd(), within(1e-12));
    }
}
