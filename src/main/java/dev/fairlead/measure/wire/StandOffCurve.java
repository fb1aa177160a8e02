package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.ForceEnds;
import dev.fairlead.measure.working.LatestAnswers;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.NevilleInterpolator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Total labial force and stress of one case's wire against its stand-off, both sides opened in the proportion of the
 * plan: solved at a few stand-offs of the side opened more and joined by the polynomial through them and the passive
 * wire.
 */
public final class StandOffCurve {
    /** Stand-offs solved, mm. */
    private static final double[] STAND_OFFS = {0.35, 0.75, 1.5, 2.25, 3};

    private static final double ACCURACY = 1e-6;
    private static final int REMEMBERED = 256;
    private static final LatestAnswers<BandAsk, Optional<ForceEnds>> ENDS =
            new LatestAnswers<>(REMEMBERED, BandAsk::ends);

    /** What is drawn of one stand-off, gf and MPa. */
    public record Point(double standOff, double low, double high, double stress) {}

    private final List<Point> points;
    private final Point asked;

    private StandOffCurve(List<Point> points, Point asked) {
        this.points = points;
        this.asked = asked;
    }

    /** For the planned stand-offs. */
    public static Optional<StandOffCurve> of(Case c) {
        return of(c, c.plan().standOff(Side.RIGHT), c.plan().standOff(Side.LEFT));
    }

    /** The curve; empty while a fact is missing or where the model finds no balance. */
    public static Optional<StandOffCurve> of(Case c, Measured right, Measured left) {
        BeamInputs inputs = BeamInputs.withoutFolds(c, right, left);
        Optional<Elastic> e = Elastic.of(c.wire());
        if (!inputs.missing().isEmpty() || e.isEmpty() || Math.max(right.value(), left.value()) <= 0) {
            return Optional.empty();
        }
        double most = Math.max(right.value(), left.value());
        DoubleFunction<Optional<Point>> solved = s -> ENDS.of(
                        inputs.band(e.get(), List.of(), s * right.value() / most, s * left.value() / most))
                .map(ends -> new Point(
                        s,
                        Unit.NEWTON.to(Unit.GF, ends.low()),
                        Unit.NEWTON.to(Unit.GF, ends.high()),
                        ends.held().peak().inner() * e.get().high() / e.get().usual()));
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0, 0, 0)));
        for (double s : STAND_OFFS) {
            Optional<Point> one = solved.apply(s);
            if (one.isEmpty()) {
                break;
            }
            points.add(one.get());
        }
        return points.size() < 3
                ? Optional.empty()
                : solved.apply(most).map(asked -> new StandOffCurve(List.copyOf(points), asked));
    }

    /** What was solved at the stand-offs asked for. */
    public Point asked() {
        return asked;
    }

    /** Largest stand-off that was solved, mm. */
    public double searchedTo() {
        return points.get(points.size() - 1).standOff();
    }

    /** Force and stress at a stand-off of the side opened more, from 0 to {@link #searchedTo()}. */
    public Point at(double standOff) {
        return new Point(
                standOff,
                through(Point::low).value(standOff),
                through(Point::high).value(standOff),
                through(Point::stress).value(standOff));
    }

    /**
     * Stand-off at which the middle of the band, the mean of its two ends, is so many gf, mm; empty where it is not
     * within the stand-offs solved.
     */
    public OptionalDouble standOffFor(double gf) {
        UnivariateFunction middle = through(p -> (p.low() + p.high()) / 2);
        return middle.value(searchedTo()) < gf
                ? OptionalDouble.empty()
                : OptionalDouble.of(new BracketingNthOrderBrentSolver(ACCURACY, 5)
                        .solve(100, s -> middle.value(s) - gf, 0, searchedTo()));
    }

    private UnivariateFunction through(ToDoubleFunction<Point> what) {
        return new NevilleInterpolator()
                .interpolate(
                        points.stream().mapToDouble(Point::standOff).toArray(),
                        points.stream().mapToDouble(what).toArray());
    }
}
