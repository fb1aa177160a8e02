package dev.fairlead.audit.statistics;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * How observed over expected changes with time: a log-linear fit whose spread is taken from the data (Wedderburn 1974,
 * doi 10.1093/biomet/61.3.439, from memory).
 *
 * @param level logarithm of observed over expected at time 0
 * @param slope change of that logarithm in a year
 * @param error standard error of the slope
 * @param spread variance over mean, at least 1
 * @param cases how many cases
 * @param p how often times shuffled within stages give as steep a slope, up or down; NaN before it is asked for
 */
public record Trend(double level, double slope, double error, double spread, int cases, double p) {
    /** Shuffles that reach what was seen, after which no more are made. */
    private static final int ENOUGH = 250;

    /** With less there is too little to fit. */
    public static final int FEWEST_WARNINGS = 10;

    public static final int FEWEST_CASES = 15;
    public static final double SHORTEST_YEARS = 0.5;

    /** Fits cases of observed and expected counts, none of 0, at times in years; null where the fit does not settle. */
    public static @Nullable Trend of(double[] observed, double[] expected, double[] years) {
        int n = observed.length;
        double b = 0;
        double sumO = 0;
        double sumE = 0;
        double middle = 0;
        for (int i = 0; i < n; i++) {
            sumO += observed[i];
            sumE += expected[i];
            middle += years[i] / n;
        }
        double a = Math.log(sumO / sumE);
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        for (int round = 0; round < 50; round++) {
            double u0 = 0;
            double u1 = 0;
            s0 = 0;
            s1 = 0;
            s2 = 0;
            for (int i = 0; i < n; i++) {
                double t = years[i] - middle;
                double mu = expected[i] * Math.exp(a + b * t);
                u0 += observed[i] - mu;
                u1 += t * (observed[i] - mu);
                s0 += mu;
                s1 += mu * t;
                s2 += mu * t * t;
            }
            double det = s0 * s2 - s1 * s1;
            if (!(det > 1e-12 * s0 * s0)) {
                return null;
            }
            double da = (s2 * u0 - s1 * u1) / det;
            double db = (s0 * u1 - s1 * u0) / det;
            double step = Math.min(1, 3 / Math.max(1e-9, Math.max(Math.abs(da), Math.abs(db))));
            a += step * da;
            b += step * db;
            if (Math.abs(da) + Math.abs(db) < 1e-10) {
                break;
            }
        }
        double x2 = 0;
        for (int i = 0; i < n; i++) {
            double mu = expected[i] * Math.exp(a + b * (years[i] - middle));
            x2 += (observed[i] - mu) * (observed[i] - mu) / mu;
        }
        double spread = Math.max(1, x2 / (n - 2));
        double error = Math.sqrt(spread * s0 / (s0 * s2 - s1 * s1));
        return Double.isFinite(error) && Double.isFinite(b)
                ? new Trend(a - b * middle, b, error, spread, n, Double.NaN)
                : null;
    }

    /**
     * The same with p from times shuffled within stages. Shuffles end once so many reached what was seen that p is
     * known well enough, and far from standing out (Besag & Clifford 1991, Biometrika 78:301, from memory).
     */
    public Trend tested(double[] observed, double[] expected, double[] years, int[] stage, long seed) {
        int n = observed.length;
        double rho = 0;
        double sumE = 0;
        int stages = 0;
        for (int i = 0; i < n; i++) {
            rho += observed[i];
            sumE += expected[i];
            stages = Math.max(stages, stage[i] + 1);
        }
        rho /= sumE;
        int[] from = new int[stages + 1];
        for (int s : stage) {
            from[s + 1]++;
        }
        for (int s = 0; s < stages; s++) {
            from[s + 1] += from[s];
        }
        // one order of the same cases, however they came: p is of these cases and not of their order
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(i -> stage[i])
                        .thenComparingDouble(i -> years[i])
                        .thenComparingDouble(i -> observed[i])
                        .thenComparingDouble(i -> expected[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] rest = new double[n];
        double[] time = new double[n];
        for (int at = 0; at < n; at++) {
            rest[at] = observed[order[at]] - rho * expected[order[at]];
            time[at] = years[order[at]];
        }
        double seen = 0;
        double usual = 0;
        for (int s = 0; s < stages; s++) {
            double r = 0;
            double t = 0;
            for (int i = from[s]; i < from[s + 1]; i++) {
                seen += rest[i] * time[i];
                r += rest[i];
                t += time[i];
            }
            usual += r * t / Math.max(1, from[s + 1] - from[s]);
        }
        SplittableRandom random = new SplittableRandom(seed);
        int reached = 0;
        int shuffled = 0;
        while (shuffled < StageShuffle.SHUFFLES && reached < ENOUGH) {
            shuffled++;
            double sum = 0;
            for (int s = 0; s < stages; s++) {
                for (int at = from[s + 1] - 1; at >= from[s]; at--) {
                    int with = from[s] + random.nextInt(at - from[s] + 1);
                    double t = time[with];
                    time[with] = time[at];
                    time[at] = t;
                    sum += rest[at] * t;
                }
            }
            reached += Math.abs(sum - usual) >= Math.abs(seen - usual) - 1e-9 ? 1 : 0;
        }
        double p = reached == ENOUGH ? (double) reached / shuffled : (1.0 + reached) / (shuffled + 1.0);
        return new Trend(level, slope, error, spread, cases, p);
    }

    /** The same with p from the fit, for many cases. */
    public Trend byFit() {
        double beyond = new TDistribution(cases - 2).cumulativeProbability(-Math.abs(slope / error));
        return new Trend(level, slope, error, spread, cases, 2 * beyond);
    }

    /** By what observed over expected is multiplied in a year. */
    public double ratio() {
        return Math.exp(slope);
    }

    /** Lower end of the 95 % interval of the ratio. */
    public double low() {
        return Math.exp(slope - reach());
    }

    /** Upper end. */
    public double high() {
        return Math.exp(slope + reach());
    }

    private double reach() {
        return error * new TDistribution(cases - 2).inverseCumulativeProbability(0.975);
    }
}
