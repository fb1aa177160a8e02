package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.special.Erf;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/** Chances against the areas of the normal distribution, and rankings by hand. */
class FlipsTest {
    private static final Limit TEN = new Limit("c.most", 10, Unit.MM, true);

    private static Measured value(double v, double a, double b) {
        return Measured.of(v, Unit.MM, "/a", a).plus(Measured.of(0, Unit.MM, "/b", b));
    }

    private static Compared compared(String criterion, String component, Measured v, Limit limit) {
        return new Compared(criterion, "/x", component, v, limit, true);
    }

    /** Abramowitz &amp; Stegun, Handbook of Mathematical Functions, table 26.1: 1 - P(x). */
    @Test
    void areasOfTheNormalDistribution() {
        assertThat(NormalTail.beyond(0, 1)).isEqualTo(0.5, within(1e-12));
        assertThat(NormalTail.beyond(1, 1)).isEqualTo(0.158655254, within(1e-9));
        assertThat(NormalTail.beyond(2, 1)).isEqualTo(0.022750132, within(1e-9));
        assertThat(NormalTail.beyond(3, 1)).isEqualTo(0.001349898, within(1e-9));
        assertThat(NormalTail.beyond(0.98, 0.5)).isEqualTo(0.0249979, within(1e-7));
        assertThat(NormalTail.beyond(1, 0)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> NormalTail.beyond(-1, 1));
    }

    /** The tail against Hipparchus, which works it out by continued fractions. */
    @Test
    void tailsAreThoseOfTheErrorFunction() {
        for (double x = 0; x < 28; x += 0.01) {
            assertThat(NormalTail.erfc(x)).as("x " + x).isCloseTo(Erf.erfc(x), withinPercentage(x < 6 ? 1e-12 : 1e-10));
        }
        assertThat(NormalTail.erfc(Double.POSITIVE_INFINITY)).isZero();
        assertThat(NormalTail.below(-1.5)).isEqualTo(1 - NormalTail.below(1.5), within(1e-15));
    }

    @Test
    void nodesAndWeightsOfTheRule() {
        Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(2 * TwoNormals.NODES.length);
        for (int i = 0; i < TwoNormals.NODES.length; i++) {
            int upper = TwoNormals.NODES.length + i;
            int lower = TwoNormals.NODES.length - 1 - i;
            assertThat(TwoNormals.NODES[i]).isEqualTo(rule.getFirst()[upper]).isEqualTo(-rule.getFirst()[lower]);
            assertThat(TwoNormals.WEIGHTS[i]).isEqualTo(rule.getSecond()[upper]).isEqualTo(rule.getSecond()[lower]);
        }
    }

    @Test
    void onlyErrorsOfMeasurementFlipOnMeasuringAgain() {
        Compared c = compared("c", "v", Measured.of(9, Unit.MM, "/a", 0.6).withError("an equation", 0.8), TEN);
        assertThat(c.measuredSd()).isEqualTo(0.6, within(1e-12));
        assertThat(c.flip()).isEqualTo(NormalTail.beyond(1, 0.6), within(1e-12));
        // 0.6 and 0.8 make 1: one standard deviation away
        assertThat(Compared.flipWithModels(c.value(), c.limit())).isEqualTo(0.158655254, within(1e-9));
    }

    @Test
    void severalLimitsAndValues() {
        Limit eight = new Limit("c.least", 8, Unit.MM, true);
        Limit twelve = new Limit("c.stop", 12, Unit.MM, true);
        Measured nine = value(9, 0.6, 0.8);
        // 8 and 10 are each one SD away; 12 lies behind 10 and adds nothing
        Flips one = new Flips(List.of(
                compared("c", "v", nine, eight), compared("c", "v", nine, TEN), compared("c", "v", nine, twelve)));
        assertThat(one.of("c")).isEqualTo(2 * 0.158655254, within(1e-8));
        // two independent values, 15.87 % each
        Measured other = Measured.of(9, Unit.MM, "/z", 1);
        Flips two = new Flips(List.of(compared("c", "v", nine, TEN), compared("c", "w", other, TEN)));
        assertThat(two.of("c")).isEqualTo(1 - Math.pow(1 - 0.158655254, 2), within(1e-8));
        // two that rest on the same measurements cross together
        Flips same = new Flips(List.of(compared("c", "v", nine, TEN), compared("c", "w", nine, TEN)));
        assertThat(same.of("c")).isEqualTo(0.158655254, within(1e-5));
        assertThat(two.of("other")).isZero();
        assertThat(new Flips(List.of(new Compared("c", "/x", "v", nine, TEN, false))).expected())
                .isZero();
    }

    /**
     * Sheppard 1899: two standard normal variables of correlation r are both below zero with probability 1/4 + asin(r)
     * / 2 pi.
     */
    @Test
    void valuesThatShareAMeasurement() {
        for (double r : new double[] {-0.99, -0.6, 0, 0.36, 0.8, 0.999}) {
            double both = 0.25 + Math.asin(r) / (2 * Math.PI);
            assertThat(TwoNormals.below(0, 0, r)).as("r " + r).isEqualTo(both, within(1e-9));
            double far = Double.POSITIVE_INFINITY;
            assertThat(TwoNormals.inside(0, far, -far, 0, r)).as("r " + r).isEqualTo(0.5 - both, within(1e-9));
            // at the limit each stays in one half of all cases
            Measured x = Measured.of(10, Unit.MM, "/a", 1);
            Measured y = x.times(r)
                    .plus(Measured.of(0, Unit.MM, "/b", Math.sqrt(1 - r * r)))
                    .plus(10 - 10 * r);
            Flips f = new Flips(List.of(compared("c", "v", x, TEN), compared("c", "w", y, TEN)));
            assertThat(f.of("c")).as("r " + r).isEqualTo(1 - both, within(1e-6));
        }
        // Owen 1956: the case of h = k and r = 1/2 gives P = Phi(h) - 2 T(h, 1/sqrt(3))
        assertThat(TwoNormals.below(1, 1, 0.5))
                .isEqualTo(NormalTail.below(1) - 2 * owen(1, 1 / Math.sqrt(3)), within(1e-9));
    }

    /**
     * Two values with errors of 0.5 and 3 mm that share a measurement, each between two limits: the area between all
     * four, by Simpson's rule over the first and the second's distribution given the first.
     */
    @Test
    void valuesOfUnlikeErrorsBetweenTwoLimitsEach() {
        Measured v = value(9, 0.3, 0.4);
        Measured w = Measured.of(5, Unit.MM, "/a", 1.8).plus(Measured.of(0, Unit.MM, "/c", 2.4));
        Flips f = new Flips(List.of(
                compared("c", "v", v, new Limit("c.v1", 8.6, Unit.MM, true)),
                compared("c", "v", v, new Limit("c.v2", 9.7, Unit.MM, true)),
                compared("c", "w", w, new Limit("c.w1", 2, Unit.MM, true)),
                compared("c", "w", w, new Limit("c.w2", 9.5, Unit.MM, true))));
        double r = 0.3 * 1.8 / (0.5 * 3);
        double rest = Math.sqrt(1 - r * r);
        int n = 2000;
        double step = (1.4 + 0.8) / n;
        double both = 0;
        for (int i = 0; i <= n; i++) {
            double z = -0.8 + i * step;
            double inside = phi((1.5 - r * z) / rest) - phi((-1 - r * z) / rest);
            both += (i == 0 || i == n ? 1 : i % 2 == 0 ? 2 : 4) * Math.exp(-z * z / 2) * inside;
        }
        both *= step / 3 / Math.sqrt(2 * Math.PI);
        assertThat(f.of("c")).isEqualTo(1 - both, within(1e-9));
    }

    private static double phi(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }

    /** Owen's T by the trapezoid rule on its defining integral. */
    private static double owen(double h, double a) {
        int n = 20000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double x = a * i / n;
            double f = Math.exp(-h * h * (1 + x * x) / 2) / (1 + x * x);
            sum += i == 0 || i == n ? f / 2 : f;
        }
        return sum * a / n / (2 * Math.PI);
    }

    @Test
    void theLargestErrorIsRepeatedFirst() {
        List<Repeat> ranking = Repeat.ranking(new Flips(List.of(compared("c", "v", value(9, 0.6, 0.8), TEN))));
        assertThat(ranking).extracting(Repeat::pointer).containsExactly("/b", "/a");
        // error of b halved in variance: sqrt(0.36 + 0.32)
        assertThat(ranking.get(0).drop())
                .isEqualTo(NormalTail.beyond(1, 1) - NormalTail.beyond(1, Math.sqrt(0.68)), within(1e-12));
        assertThat(ranking.get(1).drop())
                .isEqualTo(NormalTail.beyond(1, 1) - NormalTail.beyond(1, Math.sqrt(0.82)), within(1e-12));
    }

    @Test
    void whatDecidesMoreFindingsComesFirst() {
        List<Compared> all = List.of(
                compared("c", "v", value(9, 0.7, 0.8), TEN),
                compared("d", "v", Measured.of(9.5, Unit.MM, "/a", 0.7), TEN),
                compared("e", "v", Measured.of(1, Unit.MM, "an equation", 9), TEN));
        List<Repeat> ranking = Repeat.ranking(new Flips(all));
        assertThat(ranking).extracting(Repeat::pointer).containsExactly("/a", "/b");
        assertThat(ranking.get(0).criteria()).containsExactlyInAnyOrder("c", "d");
    }

    private static final Limit EIGHT = new Limit("c.least", 8, Unit.MM, true);

    /** A value of 9 with 0.6 for one standard deviation of /a and 0.8 for one of /b crosses 10 once they make 1. */
    @Test
    void drawsToFirstOrderAreAStraightLine() {
        Flips f = new Flips(List.of(compared("c", "v", value(9, 0.6, 0.8), TEN)));
        Simulation.FirstOrder line = f.over(List.of("other", "c"), List.of("/b", "/a"));
        assertThat(line.flips(1, new double[] {1, 0.4})).as("0.8 + 0.24").isTrue();
        assertThat(line.flips(1, new double[] {1, 0.3})).as("0.8 + 0.18").isFalse();
        assertThat(line.flips(1, new double[] {0, 2})).as("1.2").isTrue();
        assertThat(line.flips(1, new double[] {2, -1.5})).as("1.6 - 0.9").isFalse();
        assertThat(line.flips(1, new double[] {-3, -3}))
                .as("nothing lies below")
                .isFalse();
        assertThat(line.flips(0, new double[] {9, 9})).as("no value").isFalse();
        Simulation.FirstOrder onlyB = f.over(List.of("c"), List.of("/b"));
        assertThat(onlyB.flips(0, new double[] {1.3})).isTrue();
        assertThat(onlyB.flips(0, new double[] {1.2})).isFalse();
    }

    @Test
    void eachLimitIsCrossedOnlyOnItsOwnSide() {
        Measured half = Measured.of(9.5, Unit.MM, "/a", 1);
        Flips f = new Flips(List.of(compared("c", "v", half, EIGHT), compared("c", "v", half, TEN)));
        Simulation.FirstOrder line = f.over(List.of("c"), List.of("/a"));
        assertThat(line.flips(0, new double[] {0.4})).isFalse();
        assertThat(line.flips(0, new double[] {0.5})).as("at the limit itself").isFalse();
        assertThat(line.flips(0, new double[] {0.6})).isTrue();
        assertThat(line.flips(0, new double[] {-1.4})).isFalse();
        assertThat(line.flips(0, new double[] {-1.5})).as("at the limit itself").isFalse();
        assertThat(line.flips(0, new double[] {-1.6})).isTrue();
        // 1 - P(0.5) and 1 - P(1.5) of table 26.1
        assertThat(f.of("c")).isEqualTo(0.308537539 + 0.066807201, within(1e-8));
    }

    @Test
    void whatDecidesNothingAndWhatHasNoErrorCannotFlip() {
        Compared open = new Compared("c", "/x", "v", value(9, 0.6, 0.8), TEN, false);
        assertThat(new Flips(List.of(open)).criteria()).isEmpty();
        assertThat(new Flips(List.of(open.deciding(true))).of("c")).isEqualTo(0.158655254, within(1e-8));
        assertThat(open.deciding(true).deciding(false)).isEqualTo(open);
        Flips exact = new Flips(List.of(compared("c", "v", Measured.exact(9, Unit.MM), TEN)));
        assertThat(exact.of("c")).isZero();
        assertThat(Repeat.ranking(exact)).isEmpty();
    }

    /** P(X &lt; h, Y &lt; k; r) + P(X &lt; h, Y &lt; -k; -r) = P(X &lt; h), for Y and -Y are alike. */
    @Test
    void whatLiesBelowAndWhatLiesAboveMakeAll() {
        for (double[] p : new double[][] {{0.3, 1.2, 0.5}, {-1, 2, -0.7}, {1.5, 0.1, 0.95}, {2, -0.4, 0.2}}) {
            assertThat(TwoNormals.below(p[0], p[1], p[2]) + TwoNormals.below(p[0], -p[1], -p[2]))
                    .isEqualTo(NormalTail.below(p[0]), within(1e-9));
        }
        assertThat(TwoNormals.below(0.7, 30, 0.6)).isEqualTo(NormalTail.below(0.7), within(1e-15));
        assertThat(TwoNormals.below(30, 0.7, 0.6)).isEqualTo(NormalTail.below(0.7), within(1e-15));
        assertThat(TwoNormals.below(-30, 0.7, 0.6)).isZero();
        assertThat(TwoNormals.below(0.7, -30, 0.6)).isZero();
        // wholly dependent: the narrower of both, or nothing in between
        assertThat(TwoNormals.below(0.5, 1, 1)).isEqualTo(NormalTail.below(0.5), within(1e-6));
        assertThat(TwoNormals.below(0.5, -1, -1)).isEqualTo(0, within(1e-6));
    }

    @Test
    void distancesAndErrorsAreNeverNegative() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NormalTail.beyond(1, -1))
                .withMessageContaining("not 1.0 and -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> NormalTail.beyond(Double.NaN, 1));
        assertThat(NormalTail.beyond(0, 0)).isZero();
    }
}
