package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
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

    @Test
    void onlyErrorsOfMeasurementFlipOnMeasuringAgain() {
        Compared c = compared("c", "v", Measured.of(9, Unit.MM, "/a", 0.6).withError("an equation", 0.8), TEN);
        assertThat(c.measuredSd()).isEqualTo(0.6, within(1e-12));
        assertThat(c.flip()).isEqualTo(NormalTail.beyond(1, 0.6), within(1e-12));
        // 0.6 and 0.8 make 1: one standard deviation away
        assertThat(c.flipWithModels()).isEqualTo(0.158655254, within(1e-9));
    }

    @Test
    void severalLimitsAndValues() {
        Limit eight = new Limit("c.least", 8, Unit.MM, true);
        Limit twelve = new Limit("c.stop", 12, Unit.MM, true);
        Measured nine = value(9, 0.6, 0.8);
        // 8 and 10 are each one SD away; 12 lies behind 10 and adds nothing
        Flips one = new Flips(List.of(compared("c", "v", nine, eight), compared("c", "v", nine, TEN), compared("c", "v", nine, twelve)));
        assertThat(one.of("c")).isEqualTo(2 * 0.158655254, within(1e-8));
        // two independent values, 15.87 % each
        Flips two = new Flips(List.of(compared("c", "v", nine, TEN), compared("c", "w", nine, TEN)));
        assertThat(two.of("c")).isEqualTo(1 - Math.pow(1 - 0.158655254, 2), within(1e-8));
        assertThat(two.of("other")).isZero();
        assertThat(new Flips(List.of(new Compared("c", "/x", "v", nine, TEN, false))).expected()).isZero();
    }

    @Test
    void theLargestErrorIsRepeatedFirst() {
        List<Repeat> ranking = Repeat.ranking(List.of(compared("c", "v", value(9, 0.6, 0.8), TEN)));
        assertThat(ranking).extracting(Repeat::pointer).containsExactly("/b", "/a");
        // error of b halved in variance: sqrt(0.36 + 0.32)
        assertThat(ranking.get(0).drop()).isEqualTo(NormalTail.beyond(1, 1) - NormalTail.beyond(1, Math.sqrt(0.68)), within(1e-12));
        assertThat(ranking.get(1).drop()).isEqualTo(NormalTail.beyond(1, 1) - NormalTail.beyond(1, Math.sqrt(0.82)), within(1e-12));
    }

    @Test
    void whatDecidesMoreFindingsComesFirst() {
        List<Compared> all = List.of(compared("c", "v", value(9, 0.7, 0.8), TEN), compared("d", "v", Measured.of(9.5, Unit.MM, "/a", 0.7), TEN),
                compared("e", "v", Measured.of(1, Unit.MM, "an equation", 9), TEN));
        List<Repeat> ranking = Repeat.ranking(all);
        assertThat(ranking).extracting(Repeat::pointer).containsExactly("/a", "/b");
        assertThat(ranking.get(0).criteria()).containsExactlyInAnyOrder("c", "d");
    }
}
