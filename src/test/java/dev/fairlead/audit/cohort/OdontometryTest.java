package dev.fairlead.audit.cohort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Side;
import java.util.SplittableRandom;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawn widths against Moyers et al. 1976 (from memory) and Tanaka & Johnston 1974 (from memory). */
class OdontometryTest {
    private static final int CHILDREN = 20_000;
    // lower I1, I2, C, P1, P2, M1: mean and standard deviation, mm (Moyers et al. 1976)
    private static final double[][] MALE = {{5.5, 0.3}, {6.0, 0.4}, {7.0, 0.4}, {7.1, 0.4}, {7.3, 0.5}, {10.8, 0.7}};
    private static final double[][] FEMALE = {{5.5, 0.3}, {5.9, 0.4}, {6.6, 0.4}, {6.9, 0.4}, {7.1, 0.4}, {10.5, 0.6}};

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void meansSpreadsAndCorrelationsAreThePublishedOnes(boolean male) {
        SplittableRandom random = new SplittableRandom(1);
        StreamingStatistics[] widths = new StreamingStatistics[6];
        for (int i = 0; i < 6; i++) {
            widths[i] = new StreamingStatistics();
        }
        double[] incisors = new double[CHILDREN];
        double[] buccal = new double[CHILDREN];
        double[] left = new double[CHILDREN];
        double[] right = new double[CHILDREN];
        for (int n = 0; n < CHILDREN; n++) {
            Odontometry.Teeth t = Odontometry.draw(random, male);
            for (int i = 0; i < 6; i++) {
                widths[i].addValue(t.width(Side.LEFT, i + 1));
            }
            incisors[n] = t.incisors();
            buccal[n] = t.width(Side.RIGHT, 3) + t.width(Side.RIGHT, 4) + t.width(Side.RIGHT, 5);
            left[n] = t.width(Side.LEFT, 2);
            right[n] = t.width(Side.RIGHT, 2);
        }
        for (int i = 0; i < 6; i++) {
            double[] published = male ? MALE[i] : FEMALE[i];
            // four standard errors of a mean and of a standard deviation of that many children
            assertThat(widths[i].getMean()).isCloseTo(published[0], within(4 * published[1] / Math.sqrt(CHILDREN)));
            assertThat(widths[i].getStandardDeviation())
                    .isCloseTo(published[1], within(4 * published[1] / Math.sqrt(2.0 * CHILDREN)));
        }
        PearsonsCorrelation r = new PearsonsCorrelation();
        assertThat(r.correlation(incisors, buccal))
                .as("Tanaka & Johnston 1974: 0.65")
                .isCloseTo(0.65, within(0.02));
        assertThat(r.correlation(left, right)).isCloseTo(0.92, within(0.01));
    }
}
