package dev.fairlead.measure.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DuplicateErrorTest {

    /** Dahlberg's formula by hand: differences 0.1, -0.2, 0.0, 0.1, -0.1 give sqrt(0.07/10) = 0.0837 mm. */
    @Test
    void workedExample() {
        assertThat(DuplicateError.ofDifferences(0.1, -0.2, 0.0, 0.1, -0.1)).isEqualTo(0.0837, within(5e-5));
    }

    @Test
    void reliabilityFollowsFromErrorAndSpread() {
        // means 1, 2, 3 have variance 1; differences of 0.2 give an error of sqrt(0.04/2)
        DuplicateError e = DuplicateError.of(new double[] {0.9, 1.9, 2.9}, new double[] {1.1, 2.1, 3.1});
        assertThat(e.dahlberg()).isEqualTo(Math.sqrt(0.02), within(1e-12));
        assertThat(e.reliability()).isEqualTo(0.98, within(1e-12));
        assertThat(e.meanDifference()).isEqualTo(0.2, within(1e-12));
        assertThat(e.pairs()).isEqualTo(3);
        // means 1 and 5 have variance 8
        DuplicateError two = DuplicateError.of(new double[] {0.9, 4.9}, new double[] {1.1, 5.1});
        assertThat(two.reliability()).isEqualTo(1 - 0.02 / 8, within(1e-12));
    }

    @Test
    void recoversTheErrorThatWasPutIn() {
        Random random = new Random(61);
        double[] first = new double[4000];
        double[] second = new double[4000];
        for (int i = 0; i < first.length; i++) {
            double truth = 6 + random.nextGaussian();
            first[i] = truth + 0.3 * random.nextGaussian();
            second[i] = truth + 0.3 * random.nextGaussian();
        }
        DuplicateError e = DuplicateError.of(first, second);
        assertThat(e.dahlberg()).isEqualTo(0.3, within(0.012));
        assertThat(DuplicateError.systematic(first, second)).isGreaterThan(1e-4);
        for (int i = 0; i < second.length; i++) {
            second[i] += 0.1;
        }
        assertThat(DuplicateError.systematic(first, second)).isLessThan(1e-6);
    }

    @Test
    void refusesTooLittle() {
        assertThatIllegalArgumentException().isThrownBy(() -> DuplicateError.ofDifferences());
        assertThatIllegalArgumentException().isThrownBy(() -> DuplicateError.ofDifferences(0.1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> DuplicateError.of(new double[] {1}, new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DuplicateError.of(new double[] {1, 2}, new double[] {1, 2, 3}))
                .withMessageContaining("2 and 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DuplicateError.systematic(new double[] {1, 2}, new double[] {1, 2, 3}))
                .withMessageContaining("2 and 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DuplicateError.of(new double[] {1, 1}, new double[] {1, 1}));
    }
}
