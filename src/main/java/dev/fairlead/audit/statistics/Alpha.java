package dev.fairlead.audit.statistics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Agreement of any number of judges beyond chance (Krippendorff's alpha; Hayes & Krippendorff 2007, doi
 * 10.1080/19312450709336664, from memory): 1 for full agreement, 0 for as much as chance gives.
 */
public final class Alpha {
    private Alpha() {}

    /** How far two answers lie apart, given how often each answer was given. */
    public interface Distance {
        double of(int a, int b, double[] counts);
    }

    public static final Distance NOMINAL = (a, b, n) -> a == b ? 0 : 1;

    /** Answers in order, as far apart as answers lie between them. */
    public static final Distance ORDINAL = (a, b, n) -> {
        double between = -(n[a] + n[b]) / 2;
        for (int g = Math.min(a, b); g <= Math.max(a, b); g++) {
            between += n[g];
        }
        return a == b ? 0 : between * between;
    };

    /** Collects answers case by case. */
    public static final class Answers {
        private final int categories;
        private final List<double[][]> byCase = new ArrayList<>();
        private double @Nullable [][] open;

        public Answers(int categories) {
            this.categories = categories;
        }

        /** What follows belongs to another case. */
        public void nextCase() {
            open = null;
        }

        /** How often each answer was given to one question of the case; a question with one answer says nothing. */
        public void question(int... given) {
            int m = 0;
            for (int g : given) {
                m += g;
            }
            if (m < 2) {
                return;
            }
            if (open == null) {
                open = new double[categories][categories];
                byCase.add(open);
            }
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    open[a][b] += given[a] * (double) (given[b] - (a == b ? 1 : 0)) / (m - 1);
                }
            }
        }

        public Jackknife alpha(Distance distance) {
            return Jackknife.of(byCase, o -> value(o, distance));
        }

        /** NaN where only one answer was ever given. */
        private double value(double[][] o, Distance distance) {
            double[] counts = new double[categories];
            double n = 0;
            int given = 0;
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    counts[a] += o[a][b];
                }
                n += counts[a];
                given += counts[a] > 1e-9 ? 1 : 0;
            }
            if (given < 2) {
                return Double.NaN;
            }
            double seen = 0;
            double chance = 0;
            for (int a = 0; a < categories; a++) {
                for (int b = 0; b < categories; b++) {
                    double d = distance.of(a, b, counts);
                    seen += o[a][b] * d;
                    chance += counts[a] * counts[b] * d;
                }
            }
            return 1 - (n - 1) * seen / chance;
        }
    }
}
