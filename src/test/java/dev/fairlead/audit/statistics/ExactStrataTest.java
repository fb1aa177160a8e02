package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Chances of counts within stages against all draws counted in whole numbers. */
class ExactStrataTest {
    private static final List<BigInteger> FACTORIALS = new ArrayList<>(List.of(BigInteger.ONE));

    private static BigInteger factorial(int n) {
        for (int i = FACTORIALS.size(); i <= n; i++) {
            FACTORIALS.add(FACTORIALS.get(i - 1).multiply(BigInteger.valueOf(i)));
        }
        return FACTORIALS.get(n);
    }

    private static BigInteger choose(int n, int k) {
        return k < 0 || k > n
                ? BigInteger.ZERO
                : factorial(n).divide(factorial(k).multiply(factorial(n - k)));
    }

    /** Chance of each count or more, from none on: draws with each count, stage after stage, over all draws. */
    private static double[] counted(int[] own, int[] all, int[] warned) {
        BigInteger[] ways = {BigInteger.ONE};
        BigInteger draws = BigInteger.ONE;
        for (int s = 0; s < own.length; s++) {
            BigInteger[] next = new BigInteger[ways.length + own[s]];
            Arrays.fill(next, BigInteger.ZERO);
            for (int k = 0; k <= own[s]; k++) {
                BigInteger with = choose(warned[s], k).multiply(choose(all[s] - warned[s], own[s] - k));
                for (int before = 0; before < ways.length; before++) {
                    next[before + k] = next[before + k].add(ways[before].multiply(with));
                }
            }
            ways = next;
            draws = draws.multiply(choose(all[s], own[s]));
        }
        double[] chances = new double[ways.length + 1];
        BigInteger reached = BigInteger.ZERO;
        for (int sum = ways.length - 1; sum >= 0; sum--) {
            reached = reached.add(ways[sum]);
            chances[sum] = new BigDecimal(reached)
                    .divide(new BigDecimal(draws), MathContext.DECIMAL64)
                    .doubleValue();
        }
        return chances;
    }

    @Test
    void everyChanceIsTheShareOfDrawsThatReachTheCount() {
        SplittableRandom random = new SplittableRandom(5);
        for (int table = 0; table < 150; table++) {
            int stages = 1 + table % 3;
            int[] own = new int[stages];
            int[] all = new int[stages];
            int[] warned = new int[stages];
            int most = 0;
            for (int s = 0; s < stages; s++) {
                all[s] = 1 + random.nextInt(table % 10 == 9 ? 200 : 25);
                own[s] = random.nextInt(all[s] + 1);
                warned[s] = random.nextInt(all[s] + 1);
                most += own[s];
            }
            ExactStrata found = ExactStrata.of(own, all, warned);
            double[] chances = counted(own, all, warned);
            assertThat(found.p(-1)).isEqualTo(1);
            for (int seen = 0; seen <= most + 1; seen++) {
                assertThat(found.p(seen)).isCloseTo(chances[seen], within(1e-9 * chances[seen] + 1e-15));
            }
        }
    }

    /** Far from the likeliest count too, where a chance is smaller than any that a sum of one would notice. */
    @Test
    void aLargeGroupsChancesHoldInTheMiddleAndInTheTail() {
        int[] own = {600};
        int[] all = {1_500};
        int[] warned = {300};
        ExactStrata found = ExactStrata.of(own, all, warned);
        double[] chances = counted(own, all, warned);
        for (int seen : new int[] {90, 115, 120, 125, 135, 145}) {
            assertThat(found.p(seen)).isCloseTo(chances[seen], within(1e-10));
        }
        assertThat(found.p(145)).isPositive();
        assertThat(found.p(0)).isEqualTo(1);
        assertThat(found.p(300)).isZero();
    }

    /** What can be reached at or below a threshold is one of the chances themselves. */
    @Test
    void attainableIsTheLargestChanceThatAThresholdAllows() {
        ExactStrata one = ExactStrata.of(new int[] {4}, new int[] {10}, new int[] {5});
        // by hand: of 210 draws 5, 50, 100, 50 and 5 have 0 to 4 warnings
        double[] tail = {1, 205 / 210.0, 155 / 210.0, 55 / 210.0, 5 / 210.0};
        for (int k = 0; k < tail.length; k++) {
            assertThat(one.attainable(tail[k] + 1e-9)).isCloseTo(tail[k], within(1e-12));
            assertThat(one.attainable(tail[k] - 1e-9)).isCloseTo(k == 4 ? 0 : tail[k + 1], within(1e-12));
        }
    }

    /**
     * The rate that is told in four of five groups: with it, so many warnings or more as the threshold asks for have a
     * binomial chance of 0.8.
     */
    @Test
    void aDetectableRateReachesTheThresholdInFourOfFiveGroups() {
        int own = 6;
        int others = 30;
        int theirs = 3;
        for (int told = 1; told <= own; told++) {
            double at = counted(new int[] {own}, new int[] {own + others}, new int[] {told + theirs})[told];
            double rate = Alarms.detectable(own, others, 0.1, at * (1 + 1e-9));
            double reached = 0;
            for (int k = told; k <= own; k++) {
                reached += choose(own, k).doubleValue() * Math.pow(rate, k) * Math.pow(1 - rate, own - k);
            }
            assertThat(reached).isCloseTo(0.8, within(1e-9));
            assertThat(Alarms.detectable(own, others, 0.1, at * (1 - 1e-9))).isGreaterThan(rate + 0.01);
        }
    }

    @Test
    void aBudgetForEveryComparisonTellsEveryComparison() {
        ExactStrata one = ExactStrata.of(new int[] {4}, new int[] {10}, new int[] {5});
        assertThat(Alarms.threshold(List.of(one, one), 2)).isEqualTo(1);
        // 5 of 210 is all that two may spend of a twentieth; with half of that they may spend nothing
        assertThat(one.attainable(Alarms.threshold(List.of(one, one), 0.05))).isCloseTo(5 / 210.0, within(1e-12));
        assertThat(one.attainable(Alarms.threshold(List.of(one, one), 0.025))).isZero();
    }
}
