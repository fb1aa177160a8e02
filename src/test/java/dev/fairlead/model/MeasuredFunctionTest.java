package dev.fairlead.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** First-order propagation through a function: JCGM 100:2008, 5.1.3, note 2 (slopes by differences). */
class MeasuredFunctionTest {
    private static Measured length(double mm, double sd) {
        return Measured.exact(mm, Unit.MM).withError("reading", sd);
    }

    @Test
    void aLengthIsNeverTriedAtNoughtOrBelow() {
        Measured root = Measured.function(
                Unit.MM,
                x -> {
                    assertThat(x[0]).isPositive();
                    return 2 * x[0];
                },
                length(1, 9));
        assertThat(root.value()).isEqualTo(2);
        assertThat(root.sd()).isCloseTo(18, within(1e-9));
    }

    @Test
    void slopesAreTakenOverOneStandardDeviation() {
        assertThat(Measured.function(Unit.MM, x -> x[0] * x[0], length(3, 0.1)).sd())
                .isCloseTo(0.6, within(1e-9));
        assertThat(Measured.function(Unit.MM, x -> -x[0], length(-1, 2)).sd()).isCloseTo(2, within(1e-9));
    }
}
