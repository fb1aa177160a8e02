package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Comparisons of groups, held to worked examples. */
class ComparisonsTest {
    /** Worked by hand: all 75 draws of two of six and one of five cases; one of them reaches a sum of 6. */
    @Test
    void casesShuffledWithinStagesGiveTheCountOfAllDraws() {
        double[] scores = {3, 1, -1, 0, -2, -1, 2, -.5, -1, .5, -1};
        int[] stage = {0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1};
        int[] group = {0, 0, 1, 1, 1, -1, 0, 1, 1, -1, 1};
        StageShuffle.Result r = StageShuffle.of(new double[][] {scores}, stage, group, 2, 1)[0][0];
        assertThat(r.cases()).isEqualTo(3);
        assertThat(r.sum()).isEqualTo(6);
        assertThat(r.mean()).isCloseTo(0, within(1e-12));
        assertThat(r.variance()).isCloseTo(5.566667, within(1e-6));
        assertThat(r.z()).isCloseTo(2.543043, within(1e-6));
        assertThat(r.normal()).isCloseTo(0.005495, within(1e-6));
        assertThat(r.p()).isCloseTo(1 / 75.0, within(4 * Math.sqrt(1 / 75.0 / 9999)));
        assertThat(StageShuffle.score(6, 3.2)).isCloseTo(1.268218, within(1e-6));
    }

    /** What every case of a stage has in common tells nothing of a group: it moves sums and nothing else. */
    @Test
    void whatAWholeStageScoresIsNobodysDoing() {
        double[] scores = {3, 1, -1, 0, -2, -1, 2, -.5, -1, .5, -1, .5, 2, 1};
        int[] stage = {0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 2, 2, 3};
        int[] group = {0, 0, 1, 1, 1, -1, 0, 1, 1, -1, 1, 0, 1, 0};
        double[] every = {2, -3, 4, 5};
        double[] more = new double[scores.length];
        double[] added = new double[2];
        for (int i = 0; i < scores.length; i++) {
            more[i] = scores[i] + every[stage[i]];
            if (group[i] >= 0) {
                added[group[i]] += every[stage[i]];
            }
        }
        StageShuffle.Result[][] r = StageShuffle.of(new double[][] {scores, more}, stage, group, 2, 3);
        // by hand, stage by stage: nothing of the first two, 1.25 of the third, 1 of the fourth; a stage of two deals
        // either of its scores, a stage of one always the same
        assertThat(r[0][0].mean()).isCloseTo(2.25, within(1e-12));
        assertThat(r[0][0].variance()).isCloseTo(5.566667 + 0.5625, within(1e-6));
        assertThat(r[0][0].z()).isCloseTo((7.5 - 2.25) / Math.sqrt(5.566667 + 0.5625), within(1e-6));
        for (int g = 0; g < 2; g++) {
            assertThat(r[1][g].sum()).isCloseTo(r[0][g].sum() + added[g], within(1e-12));
            assertThat(r[1][g].mean()).isCloseTo(r[0][g].mean() + added[g], within(1e-12));
            assertThat(r[1][g].variance()).isCloseTo(r[0][g].variance(), within(1e-12));
            assertThat(r[1][g].z()).isCloseTo(r[0][g].z(), within(1e-12));
            assertThat(r[1][g].p()).isEqualTo(r[0][g].p());
        }
    }

    @Test
    void whereAllAreAlikeNobodyStandsOut() {
        StageShuffle.Result r =
                StageShuffle.of(new double[][] {{.5, .5, .5, .5}}, new int[4], new int[] {0, 0, 1, 1}, 2, 1)[0][0];
        assertThat(r.z()).isZero();
        assertThat(r.normal()).isEqualTo(1);
        assertThat(r.p()).isEqualTo(1);
    }

    @Test
    void theSameSeedGivesTheSameShuffles() {
        double[][] scores = {{1, 2, 3, 4, 5, 6, 7, 8}, {8, 1, 7, 2, 6, 3, 5, 4}};
        int[] stage = {0, 0, 0, 0, 1, 1, 1, 1};
        int[] group = {0, 1, 0, 1, 0, 1, 0, 1};
        assertThat(StageShuffle.of(scores, stage, group, 2, 5))
                .isDeepEqualTo(StageShuffle.of(scores, stage, group, 2, 5));
    }

    /** Worked by hand: the own side's variance lies above that of a Poisson count, the others' at it. */
    @Test
    void ratioOfOneGroupToTheOthersAllowsForClustering() {
        Ratio.Side own = side(new double[] {12, 1, 3, 9, 1}, new double[] {3, 3, 4, 4, 3});
        Ratio.Side others = side(new double[] {2, 3, 4, 1, 5, 3, 6, 2}, new double[] {3, 4, 3, 3, 4, 3, 4, 3});
        Ratio r = Ratio.of(own, others);
        assertThat(r.value()).isCloseTo(1.588235, within(1e-6));
        assertThat(r.low()).isCloseTo(0.495818, within(1e-6));
        assertThat(r.high()).isCloseTo(5.087539, within(1e-5));
        assertThat(r.df()).isCloseTo(5.7182, within(1e-4));
        assertThat(Ratio.of(new Ratio.Side(), others).none()).isTrue();
    }

    private static Ratio.Side side(double[] o, double[] e) {
        Ratio.Side s = new Ratio.Side();
        for (int i = 0; i < o.length; i++) {
            s.add(o[i], e[i]);
        }
        return s;
    }

    /** Vaccine trials against tuberculosis, log risk ratios (Colditz 1994; estimates as in the metafor handbook). */
    @Test
    void varianceBetweenGroupsIsThatOfThePublishedTrials() {
        double[] logs = {
            -0.8893, -1.5854, -1.3481, -1.4416, -0.2175, -0.7861, -1.6209, 0.0120, -0.4694, -1.3713, -0.3394, 0.4459,
            -0.0173
        };
        double[] variances = {
            0.3256, 0.1946, 0.4154, 0.0200, 0.0512, 0.0069, 0.2230, 0.0040, 0.0564, 0.0730, 0.0124, 0.5325, 0.0714
        };
        assertThat(Ratio.between(logs, variances)).isCloseTo(0.3088, within(0.003));
    }

    /**
     * Penicillin and rabbits (Agresti, Categorical Data Analysis; R, {@code mantelhaen.test(exact = TRUE)}): two-sided
     * p 0.03994.
     */
    @Test
    void exactTestOverStrataIsThePublishedOne() {
        int[][] abcd = {{0, 0, 6, 5}, {3, 0, 3, 6}, {6, 2, 0, 4}, {5, 6, 1, 0}, {2, 5, 0, 0}};
        int[] own = new int[5];
        int[] all = new int[5];
        int[] warned = new int[5];
        int seen = 0;
        for (int s = 0; s < 5; s++) {
            int[] t = abcd[s];
            own[s] = t[0] + t[2];
            warned[s] = t[0] + t[1];
            all[s] = t[0] + t[1] + t[2] + t[3];
            seen += t[0];
        }
        assertThat(seen).isEqualTo(16);
        assertThat(ExactStrata.of(own, all, warned).p(16)).isCloseTo(0.0199725, within(1e-7));
        assertThat(ExactStrata.of(own, all, warned).p(16) * 2).isCloseTo(0.03994, within(1e-5));
        assertThat(two(10, 30, 6, 166).p(10)).isCloseTo(7.0629e-6, within(1e-9));
    }

    private static ExactStrata two(int a, int n, int b, int m) {
        return ExactStrata.of(new int[] {n}, new int[] {n + m}, new int[] {a + b});
    }

    /** Worked by hand: of three comparisons a budget of 0.02 names the third alone. */
    @Test
    void thresholdForWholeCountsSpendsItsBudget() {
        List<ExactStrata> three = List.of(two(3, 5, 3, 20), two(2, 10, 2, 40), two(6, 20, 8, 100));
        double[] p = {three.get(0).p(3), three.get(1).p(2), three.get(2).p(6)};
        assertThat(p).usingComparatorWithPrecision(1e-6).containsExactly(0.069848, 0.174164, 0.012873);
        assertThat(new double[] {
                    Alarms.expected(three, p[0]), Alarms.expected(three, p[1]), Alarms.expected(three, p[2])
                })
                .usingComparatorWithPrecision(1e-6)
                .containsExactly(0.148531, 0.300941, 0.019262);
        double t = Alarms.threshold(three, 0.02);
        assertThat(p[2]).isLessThanOrEqualTo(t);
        assertThat(p[0]).isGreaterThan(t);
        assertThat(Alarms.threshold(List.of(two(0, 5, 0, 5)), 1)).isEqualTo(1);
    }

    /** Holm 1979 by hand: 0.01 <= 0.05/4, 0.013 <= 0.05/3, 0.03 > 0.05/2. */
    @Test
    void holmStepsDown() {
        assertThat(Alarms.holm(0.05, 0.03, 0.01, 0.04, 0.013)).containsExactly(false, true, false, true);
        assertThat(Alarms.holm(0.05)).isEmpty();
        assertThat(Alarms.holm(0.05, 0.05, 0.025)).as("at the limits").containsExactly(true, true);
    }

    /** With ten own cases against 200 at a base of 3 %, a count is told from k* on; its rate by the beta quantile. */
    @Test
    void detectableRateFallsWithCasesAndRisesWithTheBase() {
        double few = Alarms.detectable(10, 200, 0.03, 0.001);
        double many = Alarms.detectable(60, 200, 0.03, 0.001);
        assertThat(few).isBetween(0.4, 0.7);
        assertThat(many).isBetween(0.15, 0.3);
        assertThat(Alarms.detectable(30, 200, 0.10, 0.001)).isGreaterThan(Alarms.detectable(30, 200, 0.03, 0.001));
        assertThat(Alarms.detectable(2, 200, 0.10, 1e-9)).isEqualTo(1);
    }

    /** Newcombe 1998, Stat Med 17:873, table II, method 10: 56/70 less 48/80. */
    @Test
    void differenceOfSharesHasThePublishedInterval() {
        ShareDifference d = ShareDifference.of(new Rate(56, 70), new Rate(48, 80));
        assertThat(d.value()).isCloseTo(0.2, within(1e-12));
        assertThat(d.low()).isCloseTo(0.0524, within(5e-5));
        assertThat(d.high()).isCloseTo(0.3339, within(5e-5));
        assertThat(d.clear()).isTrue();
        assertThat(ShareDifference.of(new Rate(48, 80), new Rate(56, 70)).clear())
                .isTrue();
        assertThat(ShareDifference.of(new Rate(50, 80), new Rate(48, 80)).clear())
                .isFalse();
        assertThat(new ShareDifference(0.1, 0, 0.2).clear()).isFalse();
        assertThat(new ShareDifference(-0.1, -0.2, 0).clear()).isFalse();
    }

    /** Litters of Weil 1970, control group. */
    @Test
    void shareOfThingsInCasesAllowsForTheirLikeness() {
        int[] m = {13, 12, 9, 9, 8, 8, 13, 12, 10, 10, 9, 13, 5, 7, 10, 10};
        int[] g = {13, 12, 9, 9, 8, 8, 12, 11, 9, 9, 8, 11, 4, 5, 7, 7};
        ClusteredRate.Sums sums = new ClusteredRate.Sums();
        for (int i = 0; i < m.length; i++) {
            sums.add(g[i], m[i]);
        }
        ClusteredRate r = sums.rate();
        assertThat(r.effect()).isCloseTo(1.23250, within(1e-5));
        assertThat(r.low()).isCloseTo(0.8276, within(5e-5));
        assertThat(r.high()).isCloseTo(0.9425, within(5e-5));
        ClusteredRate.Sums all = new ClusteredRate.Sums();
        for (int i = 0; i < 10; i++) {
            all.add(20, 20);
        }
        assertThat(all.rate().low()).as("worth ten, not two hundred").isLessThan(0.75);
        // by the formula: of nothing out of n the interval ends at z²/(n + z²), z² = 3.8415
        ClusteredRate.Sums none = new ClusteredRate.Sums();
        none.add(0, 5);
        none.add(0, 7);
        assertThat(none.rate().effect()).isEqualTo(1);
        assertThat(none.rate().low()).isCloseTo(0, within(1e-12));
        assertThat(none.rate().high()).isCloseTo(3.8415 / 5.8415, within(1e-4));
        // what one case gives is worth one; 1.96 of its standard errors lie between either end and the share
        ClusteredRate.Sums single = new ClusteredRate.Sums();
        single.add(3, 4);
        for (double end : new double[] {single.rate().low(), single.rate().high()}) {
            assertThat(Math.abs(0.75 - end) / Math.sqrt(end * (1 - end))).isCloseTo(1.95996, within(1e-4));
        }
    }
}
