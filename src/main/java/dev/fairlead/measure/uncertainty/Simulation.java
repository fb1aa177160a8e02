package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Case;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * How often a criterion ends differently when every measurement is off by a random normal amount of its own error and
 * the whole case is measured and judged anew (JCGM 101:2008, propagation of distributions by a Monte Carlo method).
 * Equations keep their coefficients: their own spread is no error of measurement.
 *
 * @param flips share of draws with another outcome, for each criterion in the order of {@link VariantJudge}
 * @param firstOrder share of the same draws in which first-order propagation has another outcome
 * @param pointers measurements that were varied
 */
public record Simulation(int draws, long seed, double[] flips, double[] firstOrder, List<String> pointers) {
    public static final long USUAL_SEED = 20260101;

    /** Draws that share one stream of random numbers; the streams do not depend on the number of threads. */
    private static final int BLOCK = 40;

    /**
     * What first-order propagation says of a draw: whether the criterion at that place in the order of
     * {@link VariantJudge} ends differently when each measurement is off by so many standard deviations.
     */
    @FunctionalInterface
    public interface FirstOrder {
        boolean flips(int criterion, double[] deviations);
    }

    /** Simulates a case; the same seed gives the same result. {@code firstOrder} is of what varies, by JSON Pointer. */
    public static Simulation of(
            Case c, VariantJudge outcomes, Function<List<String>, FirstOrder> firstOrder, int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a simulation needs at least one draw");
        }
        Variation variation = new Variation(c);
        int[] usual = outcomes.of(c);
        int blocks = (draws + BLOCK - 1) / BLOCK;
        // named outright: to look a generator up by its name takes a start longer than all that it draws
        SplittableRandom root = new SplittableRandom(seed);
        List<SplittableRandom> streams =
                IntStream.range(0, blocks).mapToObj(i -> root.split()).toList();
        List<String> pointers = variation.pointers();
        FirstOrder linear = firstOrder.apply(pointers);
        int[] changed = IntStream.range(0, blocks)
                .parallel()
                .mapToObj(b -> {
                    int[] counts = new int[2 * usual.length];
                    for (int n = b * BLOCK; n < Math.min(draws, (b + 1) * BLOCK); n++) {
                        draw(variation, outcomes, usual, linear, pointers.size(), streams.get(b), counts);
                    }
                    return counts;
                })
                .reduce(new int[2 * usual.length], Simulation::sum);
        double[] flips = new double[usual.length];
        double[] first = new double[usual.length];
        for (int i = 0; i < flips.length; i++) {
            flips[i] = changed[i] / (double) draws;
            first[i] = changed[flips.length + i] / (double) draws;
        }
        return new Simulation(draws, seed, flips, first, pointers);
    }

    /** Counts, behind what changed in a draw, what changed to first order. */
    private static void draw(
            Variation variation,
            VariantJudge outcomes,
            int[] usual,
            FirstOrder firstOrder,
            int measurements,
            RandomGenerator random,
            int[] counts) {
        double[] drawn = new double[measurements];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = random.nextGaussian();
        }
        int[] now = outcomes.of(variation.next(drawn));
        for (int i = 0; i < usual.length; i++) {
            counts[i] += now[i] == usual[i] ? 0 : 1;
            counts[usual.length + i] += firstOrder.flips(i, drawn) ? 1 : 0;
        }
    }

    private static int[] sum(int[] a, int[] b) {
        int[] sum = a.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }
}
