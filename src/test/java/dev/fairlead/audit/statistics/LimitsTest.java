package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.audit.statistics.ControlChart.Band;
import org.junit.jupiter.api.Test;

class LimitsTest {
    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2: 30 wafers of 50 chips, mean 0.2313, limits 0.0524 and
     * 0.4102.
     */
    @Test
    void chartOfSharesHasTheHandbooksLimits() {
        Band b = ControlChart.share(50, 0.2313);
        assertThat(b.low()).isCloseTo(0.0524, within(1e-4));
        assertThat(b.high()).isCloseTo(0.4102, within(1e-4));
        // the handbook's wafer 15 (22 of 50) and 23 (21 of 50) lie above, wafer 1 (12 of 50) does not
        assertThat(b.holds(0.44)).isFalse();
        assertThat(b.holds(0.42)).isFalse();
        assertThat(b.holds(0.24)).isTrue();
        assertThat(ControlChart.share(5, 0.02).low()).isZero();
        assertThat(b.holds(b.low())).as("a limit is still held").isTrue();
        assertThat(b.holds(b.high())).isTrue();
        assertThat(b.holds(0.05)).isFalse();
    }

    /** The same handbook, 6.3.3.1: 25 wafers, mean 16 defects, limits 4 and 28. */
    @Test
    void chartOfCountsHasTheHandbooksLimits() {
        Band b = ControlChart.ratio(16, 1);
        assertThat(16 * b.low()).isCloseTo(4, within(1e-9));
        assertThat(16 * b.high()).isCloseTo(28, within(1e-9));
    }
}
