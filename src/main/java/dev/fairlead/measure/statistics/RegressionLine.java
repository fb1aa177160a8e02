package dev.fairlead.measure.statistics;

import java.util.Arrays;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A straight line through points by least squares: intercept, slope, number of points, residual sum of squares, and the
 * sum of squares of the points' x about their mean.
 */
public record RegressionLine(double intercept, double slope, int points, double residualSquares, double spread) {

    /** The line of y on x; needs two points with different x. */
    public static RegressionLine of(double[] x, double[] y) {
        if (x.length != y.length || Arrays.stream(x).distinct().count() < 2) {
            throw new IllegalArgumentException("a line needs as many y as x, and at least two different x");
        }
        SimpleRegression regression = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            regression.addData(x[i], y[i]);
        }
        return new RegressionLine(
                regression.getIntercept(),
                regression.getSlope(),
                x.length,
                regression.getSumSquaredErrors(),
                regression.getXSumSquares());
    }

    /** Value of the line at x. */
    public double at(double x) {
        return intercept + slope * x;
    }

    /** Degrees of freedom of the residuals. */
    public int freedom() {
        return points - 2;
    }

    /** Standard error of the slope from this line's own residuals; needs three points. */
    public double slopeError() {
        if (freedom() < 1) {
            throw new IllegalStateException("two points leave no residual to judge the error of the slope by");
        }
        return slopeError(Math.sqrt(residualSquares / freedom()));
    }

    /** Standard error of the slope when the SD of a single y about the line is known. */
    public double slopeError(double residualSd) {
        return residualSd / Math.sqrt(spread);
    }
}
