package dev.fairlead.measure.mechanics;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Peak bending stress against stand-off, solved at a few stand-offs and joined by an Akima spline. */
final class StressSearch {
    /** Stand-offs solved, mm; a spline of Akima's needs five points with the passive wire. */
    private static final double[] STAND_OFFS = {1, 2, 3, 4};

    private static final double ACCURACY = 1e-6;

    private final PolynomialSplineFunction stress;
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
            y[n++] = solution.peak().bending();
        }
        searchedTo = x[n - 1];
        stress = n == x.length ? new AkimaSplineInterpolator().interpolate(x, y) : null;
    }

    /** Largest stand-off looked at, mm; 0 when the curve is not complete. */
    double searchedTo() {
        return stress == null ? 0 : searchedTo;
    }

    /** Stand-off at which the stress reaches a limit; empty: not within the stand-offs searched. */
    OptionalDouble standOffAt(double limit) {
        if (stress == null || stress.value(searchedTo) < limit) {
            return OptionalDouble.empty();
        }
        var solver = new BracketingNthOrderBrentSolver(ACCURACY, 5);
        return OptionalDouble.of(solver.solve(100, s -> stress.value(s) - limit, 0, searchedTo));
    }
}
