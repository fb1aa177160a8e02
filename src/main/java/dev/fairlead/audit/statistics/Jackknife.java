package dev.fairlead.audit.statistics;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A coefficient of a table of counts with an interval that leaves out one case at a time (Hughes 2022, arXiv
 * 2210.13265).
 *
 * @param value NaN where it cannot be estimated: fewer than five cases, or undefined with or without one of them
 * @param low lower end of the 95 % interval; NaN likewise
 * @param high upper end, at most 1
 * @param error standard error
 * @param cases how many cases the table is made of
 */
public record Jackknife(double value, double low, double high, double error, int cases) {
    private static final int FEWEST_CASES = 5;

    /** The coefficient of the sum of the cases' tables. */
    static Jackknife of(List<double[][]> byCase, ToDoubleFunction<double[][]> coefficient) {
        int k = byCase.size();
        if (k < FEWEST_CASES) {
            return none(k);
        }
        int n = byCase.get(0).length;
        double[][] all = new double[n][n];
        byCase.forEach(c -> add(all, c, 1));
        double value = coefficient.applyAsDouble(all);
        double sum = 0;
        double squares = 0;
        for (double[][] c : byCase) {
            add(all, c, -1);
            double without = coefficient.applyAsDouble(all);
            add(all, c, 1);
            sum += without;
            squares += without * without;
        }
        if (Double.isNaN(value) || Double.isNaN(sum)) {
            return none(k);
        }
        double error = Math.sqrt(Math.max(0, (k - 1.0) / k * (squares - sum * sum / k)));
        double reach = error * new TDistribution(k - 1.0).inverseCumulativeProbability(0.975);
        return new Jackknife(value, value - reach, Math.min(1, value + reach), error, k);
    }

    private static Jackknife none(int cases) {
        return new Jackknife(Double.NaN, Double.NaN, Double.NaN, Double.NaN, cases);
    }

    private static void add(double[][] to, double[][] c, int sign) {
        for (int a = 0; a < c.length; a++) {
            for (int b = 0; b < c.length; b++) {
                to[a][b] += sign * c[a][b];
            }
        }
    }

    public boolean estimable() {
        return !Double.isNaN(value);
    }

    /** Cohen's kappa (1960) of a table of two judges; NaN when one of them gave a single answer throughout. */
    static double kappa(double[][] table) {
        double n = 0;
        double same = 0;
        double chance = 0;
        double[] rows = new double[table.length];
        double[] columns = new double[table.length];
        for (int a = 0; a < table.length; a++) {
            same += table[a][a];
            for (int b = 0; b < table.length; b++) {
                n += table[a][b];
                rows[a] += table[a][b];
                columns[b] += table[a][b];
            }
        }
        for (int a = 0; a < table.length; a++) {
            if (rows[a] > n - 0.5 || columns[a] > n - 0.5) {
                return Double.NaN;
            }
            chance += rows[a] * columns[a] / n / n;
        }
        return (same / n - chance) / (1 - chance);
    }

    /** Answers of two judges, case by case. */
    public static Jackknife kappa(List<double[][]> byCase) {
        return of(byCase, Jackknife::kappa);
    }
}
