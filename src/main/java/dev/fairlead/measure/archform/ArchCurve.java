package dev.fairlead.measure.archform;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A plane curve that stands for the lower arch or for a wire, in mm, run through from the right posterior end
 * (parameter -1) over the front to the left posterior end (parameter +1); the posterior ends lie near y = 0.
 */
public sealed interface ArchCurve
        permits BetaArch, CatenaryArch, ConicArch, SixthDegreeArch, SplineArch, ScaledArch, OffsetArch {

    /** What kind of curve this is, in plain words. */
    String name();

    /** The point at parameter u in [-1, 1], mm. */
    Point at(double u);

    /** Derivative of the point by the parameter, mm; may vanish at the ends. */
    Point derivative(double u);

    /**
     * Length of the derivative, mm. Lengths ask for nothing else: a curve that has it at hand spares them the two
     * numbers.
     */
    default double speed(double u) {
        return derivative(u).length();
    }

    /** Same kind of curve between posterior ends this far apart and this deep, mm. */
    ArchCurve reshaped(double width, double depth);

    /** Parameter at which the curve crosses the midline. */
    default double midline() {
        return 0;
    }

    /** Parameters, ascending from -1 to 1, between which the curve is smooth: quadrature must not step over them. */
    default double[] breaks() {
        return new double[] {-1, 0, 1};
    }

    /** Left and right exchanged. */
    default ArchCurve mirrored() {
        return this;
    }

    /** Unit tangent, pointing from the patient's right to the left. */
    default Point tangent(double u) {
        return derivative(u).unit();
    }

    /** Unit normal, pointing outwards (labially, buccally). */
    default Point normal(double u) {
        return tangent(u).quarterTurn();
    }

    /** Distance between the posterior ends, mm. */
    default double width() {
        return at(-1).distance(at(1));
    }

    /** Distance of the front, at the midline, from the line through the posterior ends, mm. */
    default double depth() {
        Point chord = at(1).minus(at(-1)).unit();
        return at(midline()).minus(at(-1)).dot(chord.quarterTurn());
    }

    /** A table of arc lengths; the latest curves have theirs kept. */
    default ArcRuler ruler() {
        return ArcRuler.of(this);
    }

    /** Length along the curve from one posterior end to the other, mm. */
    default double perimeter() {
        return ruler().perimeter();
    }

    /** Length along the curve from parameter a to parameter b, mm; negative when b lies to the right of a. */
    default double arcLength(double a, double b) {
        return ruler().between(a, b);
    }

    /** The point this many mm along the curve from the midline, positive to the patient's left. */
    default Point atArcLength(double fromMidline) {
        return at(ruler().parameterAt(fromMidline));
    }

    /** Points at equal distances along the curve, both ends included, for drawing and comparing. */
    default List<Point> points(int count) {
        if (count < 2) {
            throw new IllegalArgumentException("a curve is drawn with at least 2 points, not " + count);
        }
        ArcRuler ruler = ruler();
        double start = ruler.start();
        double step = ruler.perimeter() / (count - 1);
        return IntStream.range(0, count)
                .mapToObj(i -> at(i == count - 1 ? 1 : ruler.parameterAt(start + i * step)))
                .toList();
    }
}
