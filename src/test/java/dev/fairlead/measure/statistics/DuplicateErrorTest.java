package dev.fairlead.measure.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DuplicateErrorTest {

    /** Dahlberg's formula by hand: differences 0.1, -0.2, 0.0, 0.1, -0.1 give sqrt(0.07/10) = 0.0837 mm. */
    @Test
    void workedExample() {
        assertThat(DuplicateError.ofDifferences(0.1, -0.2, 0.0, 0.1, -0.1)).isEqualTo(0.0837, within(5e-5));
    }

    @Test
    void refusesTooLittle() {
        assertThatIllegalArgumentException().isThrownBy(() -> DuplicateError.ofDifferences());
        assertThatIllegalArgumentException().isThrownBy(() -> DuplicateError.ofDifferences(0.1, Double.NaN));
    }
}
