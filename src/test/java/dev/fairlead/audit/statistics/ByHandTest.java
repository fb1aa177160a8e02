package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Kappa, ratios and shares of clusters against other forms of their formulas, worked by hand. */
class ByHandTest {
    /** One case in a cell of a table of two answers. */
    private static double[][] cell(int a, int b) {
        double[][] one = new double[2][2];
        one[a][b] = 1;
        return one;
    }

    /** Kappa of a table of two by two in one fraction. */
    private static double kappa(double a, double b, double c, double d) {
        return 2 * (a * d - b * c) / ((a + b) * (b + d) + (a + c) * (c + d));
    }

    @Test
    void kappaAndItsJackknife() {
        List<double[][]> cases = new ArrayList<>();
        int[] counts = {20, 5, 10, 15};
        for (int cell = 0; cell < 4; cell++) {
            for (int i = 0; i < counts[cell]; i++) {
                cases.add(cell(cell / 2, cell % 2));
            }
        }
        Jackknife found = Jackknife.kappa(cases);
        assertThat(found.value()).isEqualTo(0.4, within(1e-12));
        double[] without = {kappa(19, 5, 10, 15), kappa(20, 4, 10, 15), kappa(20, 5, 9, 15), kappa(20, 5, 10, 14)};
        double mean = 0;
        for (int i = 0; i < 4; i++) {
            mean += counts[i] * without[i] / 50;
        }
        double squares = 0;
        for (int i = 0; i < 4; i++) {
            squares += counts[i] * (without[i] - mean) * (without[i] - mean);
        }
        double error = Math.sqrt(49.0 / 50 * squares);
        double t = new TDistribution(49).inverseCumulativeProbability(0.975);
        assertThat(found.error()).isEqualTo(error, within(1e-10));
        assertThat(found.low()).isEqualTo(0.4 - t * error, within(1e-9));
        assertThat(found.high()).isEqualTo(0.4 + t * error, within(1e-9));
        assertThat(found.cases()).isEqualTo(50);
        assertThat(found.estimable()).isTrue();
    }

    @Test
    void noKappaWhereOneJudgeGaveASingleAnswerOrCasesAreFew() {
        List<double[][]> single = new ArrayList<>();
        List<double[][]> turned = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            single.add(cell(0, i % 2));
            turned.add(cell(i % 2, 0));
        }
        assertThat(Jackknife.kappa(single).estimable()).isFalse();
        assertThat(Jackknife.kappa(turned).estimable()).isFalse();
        List<double[][]> both = List.of(cell(0, 0), cell(0, 0), cell(1, 1), cell(1, 1), cell(0, 1));
        assertThat(Jackknife.kappa(both.subList(0, 4)).estimable()).isFalse();
        assertThat(Jackknife.kappa(both).estimable()).isTrue();
    }

    @Test
    void aRatioByTheSumOfItsResiduals() {
        double[][] own = {{3, 1.5}, {1, 1}, {4, 2}, {0, 0.5}};
        double[][] others = {{1, 1.2}, {2, 1.8}, {0, 1}};
        Ratio found = Ratio.of(side(own), side(others));
        double v1 = variance(own);
        double v2 = variance(others);
        double error = Math.sqrt(v1 + v2);
        double df = Math.pow(v1 + v2, 2) / (v1 * v1 / 3 + v2 * v2 / 2);
        double reach = new TDistribution(df).inverseCumulativeProbability(0.975) * error;
        assertThat(found.value()).isEqualTo(8 / 5.0 / (3 / 4.0), within(1e-12));
        assertThat(found.error()).isEqualTo(error, within(1e-12));
        assertThat(found.low()).isEqualTo(Math.exp(Math.log(found.value()) - reach), within(1e-9));
        assertThat(found.high()).isEqualTo(Math.exp(Math.log(found.value()) + reach), within(1e-9));
        assertThat(found.none()).isFalse();
        assertThat(Ratio.NONE.none()).isTrue();
        assertThat(Ratio.of(side(new double[][] {{3, 1.5}, {1, 1}}), side(new double[][] {{1, 1.2}, {2, 1.8}}))
                        .value())
                .as("two cases on either side are enough")
                .isCloseTo(1.6, within(1e-12));
        assertThat(Ratio.of(side(own), side(new double[][] {{1, 1}})).none()).isTrue();
        assertThat(Ratio.of(side(new double[][] {{0, 1}, {0, 1}}), side(others)).none())
                .isTrue();
    }

    private static Ratio.Side side(double[][] cases) {
        Ratio.Side side = new Ratio.Side();
        for (double[] c : cases) {
            side.add(c[0], c[1]);
        }
        return side;
    }

    private static double variance(double[][] cases) {
        double o = 0;
        double e = 0;
        for (double[] c : cases) {
            o += c[0];
            e += c[1];
        }
        double sum = 0;
        for (double[] c : cases) {
            sum += Math.pow(c[0] - o / e * c[1], 2);
        }
        return Math.max(o, sum * cases.length / (cases.length - 1)) / (o * o);
    }

    @Test
    void aSideWithoutAnotherIsWhatWasThereBefore() {
        double[][] before = {{1, 1.2}, {2, 1.8}, {5, 1}};
        Ratio.Side all = side(before);
        double[][] more = {{3, 1.5}, {1, 0.25}};
        Ratio.Side added = side(more);
        for (double[] c : more) {
            all.add(c[0], c[1]);
        }
        Ratio.Side rest = all.without(added);
        assertThat(rest.cases).isEqualTo(3);
        assertThat(rest.observed()).isEqualTo(8, within(1e-12));
        assertThat(rest.expected()).isEqualTo(4, within(1e-12));
        assertThat(rest.variance()).isEqualTo(variance(before), within(1e-12));
    }

    @Test
    void whatIsBetweenGroups() {
        // of equal variances it is the variance of the logarithms less theirs
        assertThat(Ratio.between(new double[] {0, 1, 2}, new double[] {0.1, 0.1, 0.1}))
                .isEqualTo(0.9, within(1e-12));
        // weights 10 and 10/3, mean 0.25, Q 2.5
        assertThat(Ratio.between(new double[] {0, 1}, new double[] {0.1, 0.3})).isEqualTo(0.3, within(1e-12));
        assertThat(Ratio.between(new double[] {0, 0.1}, new double[] {1, 1})).isZero();
    }

    @Test
    void oneSidedChancesOfARatio() {
        Ratio ratio = new Ratio(Math.exp(1.959963984540054 * 0.4), 1, 9, 0.4, 30);
        assertThat(ratio.exceeds(0)).isEqualTo(0.025, within(1e-9));
        // three times the variance beside its own doubles the error: z is 0.98
        assertThat(ratio.exceeds(3 * 0.4 * 0.4)).isEqualTo(0.16354, within(1e-4));
        assertThat(Ratio.NONE.exceeds(0)).isEqualTo(1);
        assertThat(Ratio.detectable(0.5, 0.05)).isEqualTo(Math.exp(0.5 * (1.6448536 + 0.8416212)), within(1e-6));
    }

    @Test
    void sharesOfClustersMayBeAddedUp() {
        long[][] cases = {{3, 4}, {1, 5}, {2, 2}, {0, 3}, {6, 9}, {0, 0}};
        ClusteredRate.Sums all = new ClusteredRate.Sums();
        ClusteredRate.Sums first = new ClusteredRate.Sums();
        ClusteredRate.Sums rest = new ClusteredRate.Sums();
        for (int i = 0; i < cases.length; i++) {
            all.add(cases[i][0], cases[i][1]);
            (i < 2 ? first : rest).add(cases[i][0], cases[i][1]);
        }
        first.add(rest);
        assertThat(first.rate()).isEqualTo(all.rate());
        ClusteredRate rate = all.rate();
        assertThat(rate.cases()).isEqualTo(5);
        assertThat(rate.share()).isEqualTo(12 / 23.0, within(1e-15));
        assertThat(rate.none()).isFalse();
        double sum = 0;
        for (long[] c : cases) {
            sum += Math.pow(c[0] - 12 / 23.0 * c[1], 2);
        }
        double p = 12 / 23.0;
        double variance = 5 / 4.0 * sum / (23.0 * 23);
        assertThat(rate.effect()).isEqualTo(Math.max(1, variance * 23 / (p * (1 - p))), within(1e-9));
        ClusteredRate nothing = new ClusteredRate.Sums().rate();
        assertThat(nothing.none()).isTrue();
        assertThat(nothing.share()).isNaN();
        assertThat(nothing.low()).isZero();
        assertThat(nothing.high()).isEqualTo(1);
    }
}
