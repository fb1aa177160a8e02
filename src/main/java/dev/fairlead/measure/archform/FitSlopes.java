package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How the numbers of a fitted curve answer to small movements of its landmarks, to first order: for each number (width
 * and depth in mm, then the share of a sixth-degree polynomial) the change per mm that a landmark moves to the left (x)
 * and forward (y).
 */
public record FitSlopes(List<List<Point>> slopes) {
    private static final double STEP = 1e-5;

    /** Numbers that fix a fitted beta function or sixth-degree polynomial. */
    public static double[] numbers(ArchCurve curve) {
        return curve instanceof SixthDegreeArch p
                ? new double[] {p.width(), p.depth(), p.share()}
                : new double[] {curve.width(), curve.depth()};
    }

    /** The curve that these numbers fix. */
    public static ArchCurve curve(double[] numbers) {
        return numbers.length == 2
                ? new BetaArch(numbers[0], numbers[1])
                : SixthDegreeArch.ofShare(numbers[0], numbers[1], numbers[2]);
    }

    /** Slopes of a beta function or sixth-degree polynomial that was fitted to these landmarks. */
    public static FitSlopes of(ArchCurve curve, Landmarks landmarks) {
        List<Point> points = landmarks.points();
        double[] numbers = numbers(curve);
        Projector projector = new Projector(curve);
        Point[] normals = new Point[points.size()];
        RealMatrix design = new Array2DRowRealMatrix(points.size(), numbers.length);
        for (int i = 0; i < normals.length; i++) {
            double u = projector.nearest(points.get(i)).u();
            normals[i] = curve.normal(u);
            for (int j = 0; j < numbers.length; j++) {
                Point shift = curve(moved(numbers, j, STEP))
                        .at(u)
                        .minus(curve(moved(numbers, j, -STEP)).at(u));
                design.setEntry(i, j, normals[i].dot(shift) / (2 * STEP));
            }
        }
        RealMatrix solve = new QRDecomposition(design).getSolver().getInverse();
        List<List<Point>> slopes = new ArrayList<>();
        for (int j = 0; j < numbers.length; j++) {
            slopes.add(new ArrayList<>());
        }
        for (int k = 0; k < points.size(); k++) {
            double[] across = solve.operate(answer(points, normals, k, new Point(STEP, 0)));
            double[] forward = solve.operate(answer(points, normals, k, new Point(0, STEP)));
            for (int j = 0; j < numbers.length; j++) {
                slopes.get(j).add(new Point(across[j], forward[j]));
            }
        }
        return new FitSlopes(slopes);
    }

    /**
     * How far each landmark moves outwards in normal position, per mm, when landmark k moves; the ends carry the axes
     * with them.
     */
    private static double[] answer(List<Point> points, Point[] normals, int k, Point step) {
        List<Point> moved = new ArrayList<>(points);
        moved.set(k, points.get(k).plus(step));
        Point right = moved.get(0);
        Point left = moved.get(moved.size() - 1);
        Point origin = right.plus(left).times(0.5);
        Point across = left.minus(right).unit();
        double[] out = new double[points.size()];
        for (int i = 0; i < out.length; i++) {
            Point p = moved.get(i).minus(origin);
            Point inFrame = new Point(p.dot(across), p.dot(across.quarterTurn()));
            out[i] = normals[i].dot(inFrame.minus(points.get(i))) / STEP;
        }
        return out;
    }

    private static double[] moved(double[] numbers, int j, double step) {
        double[] moved = numbers.clone();
        moved[j] += step;
        return moved;
    }
}
