package dev.fairlead.measure.mechanics.answer;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.NevilleInterpolator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Peak bending stress against stand-off, solved at a few stand-offs and joined by the polynomial through them and the
 * passive wire.
 */
final class StressSearch {
    /** Stand-offs solved, mm. */
    private static final double[] STAND_OFFS = {1, 2, 3, 4};

    private static final double ACCURACY = 1e-6;

    private final @Nullable UnivariateFunction stress;
    private final double searchedTo;

    /** @param solve outcome at a stand-off of the side opened more, mm */
    StressSearch(DoubleFunction<Result> solve) {
        double[] x = new double[STAND_OFFS.length + 1];
        double[] y = new double[x.length];
        int n = 1;
        for (double s : STAND_OFFS) {
            if (!(solve.apply(s) instanceof Solution solution)) {
                break;
            }
            x[n] = s;
            y[n++] = solution.peak().inner();
        }
        searchedTo = x[n - 1];
        stress = n == 1 ? null : new NevilleInterpolator().interpolate(Arrays.copyOf(x, n), Arrays.copyOf(y, n));
    }

    /** Largest stand-off that could be solved, mm. */
    double searchedTo() {
        return searchedTo;
    }

    /** Stand-off at which the stress reaches a limit; empty: not within the stand-offs searched. */
    OptionalDouble standOffAt(double limit) {
        UnivariateFunction drawn = stress;
        if (drawn == null || drawn.value(searchedTo) < limit) {
            return OptionalDouble.empty();
        }
        var solver = new BracketingNthOrderBrentSolver(ACCURACY, 5);
        return OptionalDouble.of(solver.solve(100, s -> drawn.value(s) - limit, 0, searchedTo));
    }
}
