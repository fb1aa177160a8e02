package dev.fairlead.bench;

import dev.fairlead.measure.mechanics.answer.BandInput;
import dev.fairlead.measure.mechanics.answer.BandResult;
import dev.fairlead.measure.mechanics.answer.ForceBands;
import dev.fairlead.measure.mechanics.answer.Mechanics;
import dev.fairlead.measure.mechanics.answer.Mesh;
import dev.fairlead.measure.mechanics.answer.Result;
import dev.fairlead.measure.mechanics.answer.Setup;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.answer.WireSpec;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldRange;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one solution and of a whole force band of the beam model. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MechanicsBenchmark {
    private static final FoldSpec FOLD = new FoldSpec(1, 3, 3, 0, 20);
    private static final double ALPHA =
            FoldKinematics.openingForForward(FOLD, 1.5).orElseThrow();

    private final WireSpec wire = new WireSpec(0.508, 180_000, 0.3);
    private final ArchGeometry arch = new ArchGeometry(new BetaCurve(44, 24), 3, 2.7, 8.3);
    private final Setup large = new Setup(
            wire,
            arch,
            FOLD,
            FOLD,
            ALPHA,
            ALPHA,
            TailSupport.TWO_POINT,
            Ties.FOUR,
            Seat.LEVEL,
            Theory.LARGE_ROTATIONS,
            Mesh.STANDARD);
    private final Setup linear = large.withTheory(Theory.LINEAR);
    private final Setup fine = large.withMesh(Mesh.FINE);
    private final BandInput measured = input(FoldRange.measured(FOLD));
    private final BandInput unmeasured =
            input(new FoldRange(FOLD, new FoldSpec(1.25, 5, 5, 0, 20), new FoldSpec(0.6, 3, 3, 0, 20)));

    private BandInput input(FoldRange fold) {
        return new BandInput(
                wire,
                BandInput.STEEL_E_LOW,
                BandInput.STEEL_E_HIGH,
                arch,
                fold,
                fold,
                1.5,
                1.5,
                BandInput.USUAL_TIES,
                Seat.LEVEL,
                List.of(900.0, 1400.0),
                Mesh.STANDARD);
    }

    @Benchmark
    public Result linear() {
        return Mechanics.solve(linear);
    }

    @Benchmark
    public Result largeRotations() {
        return Mechanics.solve(large);
    }

    @Benchmark
    public Result largeRotationsFine() {
        return Mechanics.solve(fine);
    }

    @Benchmark
    public BandResult bandMeasuredFolds() {
        return ForceBands.of(measured);
    }

    @Benchmark
    public BandResult bandUnmeasuredFolds() {
        return ForceBands.of(unmeasured);
    }
}
