package dev.fairlead.audit.statistics;

import java.util.Arrays;
import org.hipparchus.util.CombinatoricsUtils.FactorialLog;

/**
 * How many of a group's cases warn when chance alone deals the warnings of each stage to its cases: hypergeometric
 * within a stage, summed over stages exactly (Mehta, Patel & Gray 1985, doi 10.1080/01621459.1985.10478212, from
 * memory).
 */
public final class ExactStrata {
    /** Terms below are dropped: smaller than the last digit of a sum of one. */
    private static final double LEAST = Math.exp(-37);

    private static final FactorialLog LOG_FACTORIAL = FactorialLog.create();

    private final int first;
    private final double[] tail;

    private ExactStrata(int first, double[] tail) {
        this.first = first;
        this.tail = tail;
    }

    /**
     * The chances of a group.
     *
     * @param own cases of the group by stage
     * @param all cases of everybody by stage
     * @param warned warnings of everybody by stage
     */
    public static ExactStrata of(int[] own, int[] all, int[] warned) {
        int first = 0;
        double[] sum = {1};
        for (int s = 0; s < own.length; s++) {
            if (own[s] > 0 && warned[s] > 0) {
                Terms term = Terms.of(own[s], all[s], warned[s]);
                sum = convolved(sum, term.p());
                first += term.low();
            }
        }
        double[] tail = new double[sum.length + 1];
        for (int k = sum.length - 1; k >= 0; k--) {
            tail[k] = tail[k + 1] + sum[k];
        }
        return new ExactStrata(first, tail);
    }

    /**
     * The chances of one stage, from the count {@code low} on, that matter.
     *
     * @param p from the likeliest count outwards until they are too small
     */
    private record Terms(int low, double[] p) {
        static Terms of(int own, int all, int warned) {
            int least = Math.max(0, own + warned - all);
            int most = Math.min(own, warned);
            int mode = (int) Math.min(most, Math.max(least, (own + 1.0) * (warned + 1.0) / (all + 2.0)));
            double top = Math.exp(choose(warned, mode) + choose(all - warned, own - mode) - choose(all, own));
            double[] p = new double[most - least + 1];
            p[mode - least] = top;
            int high = mode;
            for (double q = top; high < most; high++) {
                q *= (double) (warned - high) * (own - high) / ((high + 1.0) * (all - warned - own + high + 1.0));
                if (q < LEAST) {
                    break;
                }
                p[high + 1 - least] = q;
            }
            int low = mode;
            for (double q = top; low > least; low--) {
                q *= (double) low * (all - warned - own + low) / ((warned - low + 1.0) * (own - low + 1.0));
                if (q < LEAST) {
                    break;
                }
                p[low - 1 - least] = q;
            }
            return new Terms(low, Arrays.copyOfRange(p, low - least, high - least + 1));
        }
    }

    private static double[] convolved(double[] a, double[] b) {
        double[] c = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) {
            if (a[i] > 0) {
                for (int j = 0; j < b.length; j++) {
                    c[i + j] += a[i] * b[j];
                }
            }
        }
        return c;
    }

    private static double choose(int n, int k) {
        return LOG_FACTORIAL.value(n) - LOG_FACTORIAL.value(k) - LOG_FACTORIAL.value(n - k);
    }

    /** Chance of so many warnings or more. */
    public double p(int warned) {
        int k = warned - first;
        return k <= 0 ? 1 : k >= tail.length ? 0 : Math.min(1, tail[k]);
    }

    /** The largest chance at or below {@code t} that any count has; 0 where none is so rare. */
    double attainable(double t) {
        if (t >= 1) {
            return 1;
        }
        int low = 0;
        int high = tail.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (tail[middle] <= t) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return tail[low];
    }
}
