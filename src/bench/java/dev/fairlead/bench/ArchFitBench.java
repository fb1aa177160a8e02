package dev.fairlead.bench;

import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.DigitisedPoint;
import dev.fairlead.measure.archform.Landmarks;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.position.BuccalSegments;
import dev.fairlead.measure.position.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Time of one fit of each family and of one solved advancement. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ArchFitBench {
    private static final int[] TEETH = {46, 45, 44, 43, 42, 41, 31, 32, 33, 34, 35, 36};

    @Param({"BETA", "CATENARY", "PARABOLA", "HALF_ELLIPSE", "CIRCLE", "CONIC", "SIXTH_DEGREE", "SPLINE"})
    public ArchFamily family;

    private final BetaArch arch = new BetaArch(46, 25);
    private final Landmarks landmarks = landmarks();

    private Landmarks landmarks() {
        Random random = new Random(1);
        List<Point> points = arch.points(TEETH.length);
        List<DigitisedPoint> given = new ArrayList<>();
        for (int i = 0; i < TEETH.length; i++) {
            given.add(DigitisedPoint.flat(
                    TEETH[i],
                    points.get(i).x() + 0.5 * random.nextGaussian(),
                    points.get(i).y() + 0.5 * random.nextGaussian()));
        }
        return Landmarks.of(given);
    }

    @Benchmark
    public ArchFit fit() {
        return ArchFit.of(family, landmarks);
    }

    @Benchmark
    public Sides advancement() {
        return BuccalSegments.ofWhole(arch, Sides.both(11.3)).advancementAlongArch(Sides.both(25));
    }
}
