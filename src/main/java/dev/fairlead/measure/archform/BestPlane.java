package dev.fairlead.measure.archform;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The plane with the least sum of squared distances from the landmarks (the occlusal plane of the set). */
public record BestPlane(RealVector first, RealVector second, double rms) {
    private static final double COLLINEAR = 1e-12;

    /** The plane of points that do not lie on one line. */
    public static BestPlane of(List<DigitisedPoint> given) {
        double[][] rows =
                given.stream().map(l -> new double[] {l.x(), l.y(), l.z()}).toArray(double[][]::new);
        RealMatrix points = new Array2DRowRealMatrix(rows);
        int n = rows.length;
        RealVector centre = new ArrayRealVector(new double[] {mean(points, 0), mean(points, 1), mean(points, 2)});
        for (int i = 0; i < n; i++) {
            points.setRowVector(i, points.getRowVector(i).subtract(centre));
        }
        EigenDecompositionSymmetric eigen =
                new EigenDecompositionSymmetric(points.transpose().multiply(points));
        if (!(eigen.getEigenvalue(1) > COLLINEAR * eigen.getEigenvalue(0))) {
            throw new IllegalArgumentException("the landmarks lie on one straight line");
        }
        return new BestPlane(
                eigen.getEigenvector(0), eigen.getEigenvector(1), Math.sqrt(Math.max(0, eigen.getEigenvalue(2)) / n));
    }

    private static double mean(RealMatrix points, int column) {
        double sum = 0;
        for (double v : points.getColumn(column)) {
            sum += v;
        }
        return sum / points.getRowDimension();
    }

    /** Foot of the landmark in the plane, in axes of the plane. */
    Point project(DigitisedPoint l) {
        return new Point(along(l, first), along(l, second));
    }

    private static double along(DigitisedPoint l, RealVector axis) {
        return l.x() * axis.getEntry(0) + l.y() * axis.getEntry(1) + l.z() * axis.getEntry(2);
    }
}
