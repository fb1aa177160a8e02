package dev.fairlead.audit.cohort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.hipparchus.random.Well19937c;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;

/**
 * Widths of the children of a cohort against an independent sample: a multivariate normal distribution of Hipparchus
 * with the means and standard deviations of Moyers et al. 1976 and the correlations that are stated (both from memory),
 * cut as the cohort states that it cuts.
 */
class CohortWidthsTest {
    private static final int CHILDREN = 12_000;
    // lower I1, I2, C, P1, P2, M1: mean and standard deviation, mm (Moyers et al. 1976)
    private static final double[][] MALE = {{5.5, 0.3}, {6.0, 0.4}, {7.0, 0.4}, {7.1, 0.4}, {7.3, 0.5}, {10.8, 0.7}};
    private static final double[][] FEMALE = {{5.5, 0.3}, {5.9, 0.4}, {6.6, 0.4}, {6.9, 0.4}, {7.1, 0.4}, {10.5, 0.6}};
    private static final double BETWEEN_TEETH = 0.42;
    private static final double BETWEEN_ANTIMERES = 0.92;

    @Test
    void childrenAreDrawnFromThePublishedDistributionAndCutAsStated() {
        List<double[]> girls = new ArrayList<>();
        List<double[]> boys = new ArrayList<>();
        for (int i = 0; i < CHILDREN; i++) {
            InventedChild s = InventedChild.draw(Draws.of(9, i));
            double[] both = new double[12];
            for (int p = 0; p < 6; p++) {
                both[p] = s.teeth().width(Side.LEFT, p + 1);
                both[6 + p] = s.teeth().width(Side.RIGHT, p + 1);
            }
            (s.male() ? boys : girls).add(both);
        }
        assertThat(boys.size()).as("boys and girls alike").isCloseTo(CHILDREN / 2, within((int)
                (4.5 * Math.sqrt(CHILDREN / 4.0))));
        compare(boys, MALE);
        compare(girls, FEMALE);
    }

    private static void compare(List<double[]> ours, double[][] published) {
        List<double[]> reference = reference(published, ours.size());
        for (int p = 0; p < 12; p++) {
            StreamingStatistics a = column(ours, p);
            StreamingStatistics b = column(reference, p);
            double sd = published[p % 6][1];
            // four and a half standard errors of a difference of two means and of two standard deviations
            assertThat(a.getMean())
                    .as("mean of " + p)
                    .isCloseTo(b.getMean(), within(4.5 * sd * Math.sqrt(2.0 / ours.size())));
            assertThat(a.getStandardDeviation())
                    .as("spread of " + p)
                    .isCloseTo(b.getStandardDeviation(), within(4.5 * sd / Math.sqrt(ours.size())));
            // what the cuts take away from the published figures
            assertThat(a.getMean()).isCloseTo(published[p % 6][0], within(0.25 * sd));
            assertThat(a.getStandardDeviation() / sd).isBetween(0.8, 1.0);
        }
        double se = Math.sqrt(2.0 / ours.size());
        assertThat(correlation(ours)).isCloseTo(correlation(reference), within(4.5 * se));
    }

    /** Of the incisor sum with canine and premolars of one side. */
    private static double correlation(List<double[]> children) {
        return new PearsonsCorrelation()
                .correlation(
                        children.stream()
                                .mapToDouble(c -> c[0] + c[1] + c[6] + c[7])
                                .toArray(),
                        children.stream().mapToDouble(c -> c[2] + c[3] + c[4]).toArray());
    }

    private static List<double[]> reference(double[][] published, int n) {
        double[] means = new double[12];
        double[][] covariance = new double[12][12];
        for (int i = 0; i < 12; i++) {
            means[i] = published[i % 6][0];
            for (int j = 0; j < 12; j++) {
                double r = i == j ? 1 : i % 6 == j % 6 ? BETWEEN_ANTIMERES : BETWEEN_TEETH;
                covariance[i][j] = r * (published[i % 6][1] * published[j % 6][1]);
            }
        }
        MultivariateNormalDistribution normal =
                new MultivariateNormalDistribution(new Well19937c(4), means, covariance);
        List<double[]> kept = new ArrayList<>();
        while (kept.size() < n) {
            double[] c = normal.sample();
            double farthest = 0;
            for (int p = 0; p < 6; p++) {
                c[6 + p] = c[p] + Math.max(-0.25, Math.min(0.25, c[6 + p] - c[p]));
            }
            for (int p = 0; p < 12; p++) {
                farthest = Math.max(farthest, Math.abs(c[p] - means[p]) / published[p % 6][1]);
            }
            double sum = c[0] + c[1] + c[6] + c[7];
            if (sum >= 20.5 && sum <= 25 && farthest <= 2.3) {
                kept.add(c);
            }
        }
        return kept;
    }

    private static StreamingStatistics column(List<double[]> children, int p) {
        StreamingStatistics s = new StreamingStatistics();
        children.forEach(c -> s.addValue(c[p]));
        return s;
    }
}
