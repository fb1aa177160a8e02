package dev.fairlead.measure.archform;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Orthogonal-distance least squares of one family of curves through landmarks, by Levenberg-Marquardt. */
final class LeastSquaresFit {
    private static final double STEP = 1e-6;
    private static final double HARD_WALL = 1e3;

    private final ArchFamily family;
    private final List<Point> points;
    private final double[] start;

    LeastSquaresFit(ArchFamily family, Landmarks landmarks) {
        if (landmarks.teeth().size() <= family.parameters()) {
            throw new IllegalArgumentException(
                    landmarks.teeth().size() + " landmarks do not suffice for the family " + family);
        }
        this.family = family;
        points = landmarks.points();
        start = family.start(landmarks.width(), landmarks.depth());
    }

    ArchCurve curve() {
        RealVector best = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-12)
                .withParameterRelativeTolerance(1e-10)
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .model(this::model)
                        .target(new double[points.size()])
                        .maxEvaluations(200)
                        .maxIterations(200)
                        .parameterValidator(LeastSquaresFit::withinReach)
                        .build())
                .getPoint();
        return family.member(best.toArray());
    }

    // a trial step may overshoot into widths or shapes that no curve has: it is pulled back to the rim
    private static RealVector withinReach(RealVector p) {
        RealVector q = p.copy();
        for (int j = 0; j < q.getDimension(); j++) {
            q.setEntry(j, Math.max(j < 2 ? 1 : -3, Math.min(j < 2 ? HARD_WALL : 3, q.getEntry(j))));
        }
        return q;
    }

    private Pair<RealVector, RealMatrix> model(RealVector p) {
        double[] numbers = p.toArray();
        Projector projector = new Projector(family.member(numbers));
        ArchCurve[] up = new ArchCurve[numbers.length];
        ArchCurve[] down = new ArchCurve[numbers.length];
        for (int j = 0; j < numbers.length; j++) {
            up[j] = family.member(moved(numbers, j, STEP));
            down[j] = family.member(moved(numbers, j, -STEP));
        }
        double[] residuals = new double[points.size()];
        double[][] jacobian = new double[points.size()][numbers.length];
        for (int i = 0; i < residuals.length; i++) {
            Projector.Foot foot = projector.nearest(points.get(i));
            residuals[i] = foot.outside();
            Point away = away(points.get(i), foot, projector);
            for (int j = 0; j < numbers.length; j++) {
                // the foot itself may slide along the curve without changing the distance, so it is held
                Point shift = up[j].at(foot.u()).minus(down[j].at(foot.u()));
                jacobian[i][j] = -away.dot(shift) / (2 * STEP);
            }
        }
        return new Pair<>(new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(jacobian, false));
    }

    private static Point away(Point p, Projector.Foot foot, Projector projector) {
        Point off = p.minus(foot.point());
        return off.length() < 1e-9 ? projector.curve().normal(foot.u()) : off.times(1 / foot.outside());
    }

    private static double[] moved(double[] numbers, int j, double step) {
        double[] moved = numbers.clone();
        moved[j] += step;
        return moved;
    }
}
