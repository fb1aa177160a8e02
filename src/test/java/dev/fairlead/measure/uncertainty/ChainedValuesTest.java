package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several values of one criterion: together by shared measurements, apart without, against areas known in full. */
class ChainedValuesTest {
    private static final Limit TEN = new Limit("c.most", 10, Unit.MM, true);

    private static Measured part(String source, double sd) {
        return Measured.of(0, Unit.MM, source, sd);
    }

    private static Measured at(double value, Measured... parts) {
        return Measured.sum(Arrays.asList(parts)).plus(value);
    }

    /** Probability that at least one crosses 10; values in this order. */
    private static double flip(Measured... values) {
        return flips(values).of("c");
    }

    private static Flips flips(Measured... values) {
        List<Compared> all = new ArrayList<>();
        for (Measured v : values) {
            all.add(new Compared("c", "/x", "v" + all.size(), v, TEN, true));
        }
        return new Flips(all);
    }

    /** Sheppard 1899: both of correlation r lie on one side of their means with 1/4 + asin(r) / 2 pi. */
    private static double both(double r) {
        return 0.25 + Math.asin(r) / (2 * Math.PI);
    }

    @Test
    void ofSeveralValuesOfOneMeasurementTheNearestDecides() {
        // 2, 0.5 and 1 standard deviations away: whoever crosses at all has crossed at 0.5; table 26.1 gives 1 - P(0.5)
        List<Measured> values = new ArrayList<>();
        for (double away : new double[] {2, 0.5, 1}) {
            values.add(at(10 - away, part("/a", 1)));
        }
        for (int i = 0; i < 3; i++) {
            assertThat(flip(values.toArray(Measured[]::new))).isEqualTo(0.308537539, within(1e-5));
            Collections.rotate(values, 1);
        }
    }

    /** The third shares a measurement with each of two that share none: all three belong together. */
    @Test
    void aValueJoinsTheGroupsThatItSharesWith() {
        Measured x = at(10, part("/a", 1));
        Measured y = at(10, part("/b", 1));
        Measured z = at(10, part("/a", 0.6), part("/b", 0.8));
        // a tree by correlations of 0.6 and 0.8: P(x, z) P(z, y) / P(z)
        double tree = both(0.6) * both(0.8) / 0.5;
        assertThat(flip(x, y, z)).isEqualTo(1 - tree, within(1e-6));
        assertThat(flip(z, y, x)).isEqualTo(1 - tree, within(1e-6));
        // another that shares nothing stays apart
        assertThat(flip(x, part("/w", 1).plus(10), y, z)).isEqualTo(1 - tree / 2, within(1e-6));
    }

    /** Correlations of 0.8, 0.6 and 0.48: the weakest is left out, whatever the order. */
    @Test
    void theStrongestCorrelationsAreChained() {
        Measured middle = at(10, part("/a", 1));
        Measured near = at(10, part("/a", 0.8), part("/b", 0.6));
        Measured far = at(10, part("/a", 0.6), part("/c", 0.8));
        double tree = both(0.8) * both(0.6) / 0.5;
        assertThat(flip(middle, near, far)).isEqualTo(1 - tree, within(1e-6));
        assertThat(flip(far, near, middle)).isEqualTo(1 - tree, within(1e-6));
        assertThat(flip(near, middle, far)).isEqualTo(1 - tree, within(1e-6));
        // a correlation counts by its size: one of -0.8 binds before one of 0.6
        Measured against = at(10, part("/a", 0.8).times(-1), part("/b", 0.6));
        assertThat(flip(middle, against, far)).isEqualTo(1 - both(-0.8) * both(0.6) / 0.5, within(1e-6));
    }

    /** x stays over 10 from 11, y under 10 from 9, with correlation 1/2: by Owen 1956 with -1/2 for -x and y. */
    @Test
    void oneValueOverItsLimitAndOneUnderIt() {
        Measured x = at(11, part("/a", 1));
        Measured y = at(9, part("/a", 0.5), part("/b", Math.sqrt(0.75)));
        assertThat(flip(x, y)).isEqualTo(1 - TwoNormals.below(1, 1, -0.5), within(1e-6));
        // both over: the same as both under with the signs changed
        Measured z = at(11, part("/a", 0.5), part("/b", Math.sqrt(0.75)));
        assertThat(flip(x, z)).isEqualTo(1 - TwoNormals.below(1, 1, 0.5), within(1e-6));
        assertThat(flip(y, x)).isEqualTo(flip(x, y), within(1e-9));
    }

    @Test
    void repeatingAMeasurementHelpsItsOwnGroupAlone() {
        Measured x = at(9, part("/a", 1));
        Measured y = at(9, part("/b", 1));
        double stays = 1 - 0.158655254;
        double repeated = 1 - NormalTail.beyond(1, Math.sqrt(0.5));
        List<Repeat> ranking = Repeat.ranking(flips(x, y));
        assertThat(ranking).extracting(Repeat::pointer).as("alike: by name").containsExactly("/a", "/b");
        for (Repeat r : ranking) {
            assertThat(r.drop()).isEqualTo(repeated * stays - stays * stays, within(1e-8));
        }
    }

    /** Repeating what two values share makes both surer: with one error of 1 and one of 0.6 beside 0.8. */
    @Test
    void repeatingWhatTwoValuesShare() {
        Measured x = at(9, part("/a", 1));
        Measured y = at(9, part("/a", 0.6), part("/b", 0.8));
        double before = TwoNormals.below(1, 1, 0.6);
        // variances of 0.5 and 0.18 + 0.64, covariance of 0.3
        double sx = Math.sqrt(0.5);
        double sy = Math.sqrt(0.82);
        double after = TwoNormals.below(1 / sx, 1 / sy, 0.3 / (sx * sy));
        Repeat a = Repeat.ranking(flips(x, y)).get(0);
        assertThat(a.pointer()).isEqualTo("/a");
        assertThat(a.drop()).isEqualTo(after - before, within(1e-6));
    }

    @Test
    void theCriterionThatGainsMostIsNamedFirst() {
        Measured little = at(7, part("/a", 1));
        Measured much = at(9, part("/a", 1));
        List<Repeat> ranking = Repeat.ranking(new Flips(List.of(
                new Compared("little", "/x", "v", little, TEN, true),
                new Compared("much", "/x", "v", much, TEN, true),
                // 6 standard deviations: no reason to measure again
                new Compared("none", "/x", "v", at(4, part("/z", 1)), TEN, true))));
        assertThat(ranking).hasSize(1);
        assertThat(ranking.get(0).criteria()).containsExactly("much", "little");
        double root = Math.sqrt(0.5);
        assertThat(ranking.get(0).drop())
                .isEqualTo(
                        0.001349898 + 0.158655254 - NormalTail.beyond(3, root) - NormalTail.beyond(1, root),
                        within(1e-8));
    }
}
