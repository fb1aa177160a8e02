package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What calculus and the mirror hold every kind of curve to. */
class CurvesTest {
    private static final double H = 1e-5;
    /** No two of its points mirror each other. */
    private static final SplineArch UNEVEN = new SplineArch(List.of(
            new Point(-21, -1),
            new Point(-18, 11),
            new Point(-9, 21),
            new Point(-2, 24),
            new Point(5, 23),
            new Point(13, 18),
            new Point(20, 2)));

    static Stream<ArchCurve> curves() {
        return Stream.of(
                new BetaArch(44, 24),
                CatenaryArch.of(44, 24),
                ConicArch.parabola(44, 24),
                ConicArch.halfEllipse(44, 24),
                ConicArch.circle(44, 18),
                new ConicArch(44, 24, 2.5),
                new ConicArch(44, 24, -0.2),
                SixthDegreeArch.ofShare(44, 24, 0.4),
                SixthDegreeArch.ofShare(44, 24, -0.3),
                UNEVEN,
                new ScaledArch(UNEVEN, 1.2, 0.7),
                new ScaledArch(new BetaArch(44, 24), 0.8, 1.3),
                new OffsetArch(new BetaArch(44, 24), 1.5, 0.5, 0.2),
                new OffsetArch(UNEVEN, 1.5, 0.5, -1));
    }

    /** Kept off the places where two pieces of a spline meet, and off the vertical ends. */
    private static double[] inside(ArchCurve curve) {
        double[] breaks = curve.breaks();
        double[] at = new double[3 * (breaks.length - 1)];
        for (int i = 0; i < at.length; i++) {
            double from = breaks[i / 3];
            at[i] = from + (breaks[i / 3 + 1] - from) * new double[] {0.13, 0.5, 0.86}[i % 3];
        }
        return at;
    }

    @ParameterizedTest
    @MethodSource("curves")
    void derivativeIsTheLimitOfDifferences(ArchCurve curve) {
        for (double u : inside(curve)) {
            Point difference = curve.at(u + H).minus(curve.at(u - H)).times(1 / (2 * H));
            assertThat(curve.derivative(u).distance(difference)).as("at " + u).isLessThan(1e-4);
            assertThat(curve.speed(u)).isEqualTo(difference.length(), within(1e-4));
            assertThat(curve.tangent(u).distance(difference.unit())).isLessThan(1e-5);
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void normalPointsAwayFromTheMiddleOfTheMouth(ArchCurve curve) {
        Point middle = new Point(0, curve.depth() / 4);
        for (double u : inside(curve)) {
            Point normal = curve.normal(u);
            assertThat(normal.length()).isEqualTo(1, within(1e-12));
            assertThat(normal.dot(curve.tangent(u))).isEqualTo(0, within(1e-12));
            assertThat(normal.dot(curve.at(u).minus(middle))).as("at " + u).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void mirroredItIsTheSameFromTheOtherSide(ArchCurve curve) {
        ArchCurve other = curve.mirrored();
        assertThat(other.midline()).isEqualTo(-curve.midline(), within(1e-9));
        assertThat(other.perimeter()).isEqualTo(curve.perimeter(), within(1e-6));
        for (double u : inside(curve)) {
            assertThat(other.at(-u).distance(curve.at(u).mirrored()))
                    .as("at " + u)
                    .isLessThan(1e-7);
        }
    }

    /** Chords of a fine polygon; width and depth are read off three of its points. */
    @ParameterizedTest
    @MethodSource("curves")
    void sizesAreThoseOfAFinePolygon(ArchCurve curve) {
        int n = 20_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += curve.at(2.0 * (i + 1) / n - 1).distance(curve.at(2.0 * i / n - 1));
        }
        assertThat(curve.perimeter()).isEqualTo(sum, within(1e-4));
        assertThat(curve.arcLength(1, -1)).isEqualTo(-sum, within(1e-4));
        Point right = curve.at(-1);
        Point left = curve.at(1);
        Point front = curve.at(curve.midline());
        assertThat(curve.width()).isEqualTo(right.distance(left), within(1e-9));
        // twice the area of the triangle over its base
        double area =
                (left.x() - right.x()) * (front.y() - right.y()) - (left.y() - right.y()) * (front.x() - right.x());
        assertThat(curve.depth()).isEqualTo(area / right.distance(left), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("curves")
    void pointsForDrawingLieAtEqualLengthsFromEndToEnd(ArchCurve curve) {
        List<Point> points = curve.points(9);
        assertThat(points.get(0).distance(curve.at(-1))).isLessThan(1e-9);
        assertThat(points.get(8).distance(curve.at(1))).isZero();
        ArcRuler ruler = curve.ruler();
        for (int i = 0; i < 9; i++) {
            double along = ruler.start() + (ruler.end() - ruler.start()) * i / 8;
            assertThat(points.get(i).distance(curve.atArcLength(along))).isLessThan(1e-6);
        }
        assertThat(curve.points(2)).containsExactly(points.get(0), points.get(8));
    }

    @ParameterizedTest
    @MethodSource("curves")
    void arcLengthEndsWhereTheCurveEnds(ArchCurve curve) {
        ArcRuler ruler = curve.ruler();
        // rounding in sums of lengths is forgiven, a real length beyond the end is not
        assertThat(ruler.parameterAt(ruler.end() + 1e-10)).isEqualTo(1);
        assertThat(ruler.parameterAt(ruler.start() - 1e-10)).isEqualTo(-1);
        assertThat(ruler.parameterAt(0)).isEqualTo(curve.midline(), within(1e-9));
        for (double beyond : new double[] {ruler.end() + 1e-6, ruler.start() - 1e-6}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ruler.parameterAt(beyond))
                    .withMessageContaining(beyond + " mm is not on it");
        }
        for (double beyond : new double[] {1.000001, -1.000001}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ruler.fromMidline(beyond))
                    .withMessageContaining("between -1 and 1, not at " + beyond);
        }
    }

    @Test
    void everyKindHasItsName() {
        assertThat(curves().map(ArchCurve::name))
                .containsExactly(
                        "beta function",
                        "catenary",
                        "parabola",
                        "half ellipse",
                        "arc of an ellipse",
                        "hyperbola",
                        "arc of an ellipse",
                        "sixth-degree polynomial",
                        "sixth-degree polynomial",
                        "cubic spline",
                        "cubic spline, stretched",
                        "beta function, stretched",
                        "line in front of the beta function",
                        "line in front of the cubic spline");
    }

    /**
     * A conic with its ends and front at (+-W/2, 0) and (0, D) and this weight: x^2 = 2 R h - K h^2 behind the front.
     */
    @ParameterizedTest
    @CsvSource({"1, 0", "0, 1", "3, -0.5", "-0.5, 3"})
    void weightOfAConicSaysHowRoundItIs(double weight, double k) {
        ConicArch conic = new ConicArch(40, 20, weight);
        // with W/2 = D the equation at the ends reads D = 2 R - K D
        for (double u = -1; u <= 1; u += 0.25) {
            Point p = conic.at(u);
            double h = 20 - p.y();
            assertThat(p.x() * p.x()).isEqualTo(20 * (1 + k) * h - k * h * h, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "Infinity", "NaN"})
    void noKindHasASizeThatNoArchHas(double size) {
        refused(() -> new BetaArch(size, 24), size);
        refused(() -> new BetaArch(44, size), size);
        refused(() -> new CatenaryArch(size, 10), size);
        refused(() -> CatenaryArch.of(44, size), size);
        refused(() -> ConicArch.parabola(size, 24), size);
        refused(() -> ConicArch.halfEllipse(44, size), size);
        refused(() -> new SixthDegreeArch(size, 0, 0.05), size);
        refused(() -> SixthDegreeArch.near(44, 24, size, 6), size);
        refused(() -> new ScaledArch(UNEVEN, size, 1), size);
        refused(() -> new ScaledArch(UNEVEN, 1, size), size);
        refused(() -> UNEVEN.reshaped(size, 24), size);
        refused(() -> new ArchDimensions(44, 24, 26, size), size);
    }

    private static void refused(ThrowingCallable make, double size) {
        assertThatIllegalArgumentException()
                .isThrownBy(make)
                .withMessage("widths and depths are positive numbers of mm, not " + size);
    }

    @Test
    void aSplineNeedsThreePlacesFromRightToLeft() {
        Point right = new Point(-20, 0);
        Point front = new Point(0, 24);
        Point left = new Point(20, 0);
        assertThat(new SplineArch(List.of(right, front, left)).midline()).isEqualTo(0, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SplineArch(List.of(right, left)))
                .withMessageContaining("not 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SplineArch(List.of(right, front, front, left)))
                .withMessageContaining("coincide");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SplineArch(List.of(left, front, right)))
                .withMessageContaining("right to the left");
    }

    /** Crowded incisors that cross the midline three times: the front is the foremost of the three places. */
    @Test
    void ofSeveralCrossingsTheForemostIsTheFront() {
        SplineArch curve = new SplineArch(List.of(
                new Point(-20, 0),
                new Point(-2, 20),
                new Point(2, 22),
                new Point(-2, 24),
                new Point(2, 22.5),
                new Point(20, 0)));
        assertThat(curve.at(curve.midline()).x()).isEqualTo(0, within(1e-9));
        assertThat(curve.at(curve.midline()).y()).isBetween(23.0, 24.5);
    }

    /** Distances go over from the front to the ends with the square of the way across. */
    @Test
    void betweenFrontAndEndAQuarterOfTheChangeIsMadeHalfWayAcross() {
        ConicArch parabola = ConicArch.parabola(44, 24);
        OffsetArch line = new OffsetArch(parabola, 2, 1, -2);
        assertThat(line.at(0.5).distance(parabola.at(0.5))).isEqualTo(2 - 0.25, within(1e-9));
        assertThat(line.at(-0.5).distance(parabola.at(-0.5))).isEqualTo(2 - 1, within(1e-9));
        assertThat(line.at(-1).distance(parabola.at(-1))).isEqualTo(2, within(1e-9));
        assertThat(line.at(-1).x()).as("inside the arch").isGreaterThan(-22);
        for (double none : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> new OffsetArch(parabola, none, 0, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> new OffsetArch(parabola, 0, none, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> new OffsetArch(parabola, 0, 0, none));
        }
    }

    /** Feet by a search of 40,001 places. */
    @ParameterizedTest
    @MethodSource("curves")
    void nearestPlaceIsNearerThanAllOthers(ArchCurve curve) {
        Random random = new Random(41);
        Projector projector = new Projector(curve);
        for (int n = 0; n < 4; n++) {
            double u = Arches.between(random, -0.95, 0.95);
            double out = Arches.between(random, -2, 2);
            Point p = curve.at(u).plus(curve.normal(u).times(out));
            Projector.Foot foot = projector.nearest(p);
            double least = Double.MAX_VALUE;
            for (int i = 0; i <= 40_000; i++) {
                least = Math.min(least, curve.at(i / 20_000.0 - 1).distance(p));
            }
            assertThat(Math.abs(foot.outside())).isEqualTo(least, within(1e-4));
            assertThat(Math.signum(foot.outside())).isEqualTo(Math.signum(out));
            assertThat(foot.point().distance(p)).isEqualTo(Math.abs(foot.outside()), within(1e-9));
        }
    }
}
