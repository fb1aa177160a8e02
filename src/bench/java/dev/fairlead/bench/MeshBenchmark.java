package dev.fairlead.bench;

import dev.fairlead.measure.mechanics.answer.Mechanics;
import dev.fairlead.measure.mechanics.answer.Mesh;
import dev.fairlead.measure.mechanics.answer.Result;
import dev.fairlead.measure.mechanics.answer.Setup;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.answer.Solution;
import dev.fairlead.measure.mechanics.answer.WireSpec;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one solution with large rotations by fineness of the mesh; its error against a mesh four times as fine as the
 * finest is printed beside it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class MeshBenchmark {
    private static final FoldSpec FOLD = new FoldSpec(1, 3, 3, 0, 20);
    private static final double ALPHA =
            FoldKinematics.openingForForward(FOLD, 1.5).orElseThrow();
    private static final Mesh FINEST = new Mesh(64, 0.0625);

    /** Elements in each bend of a fold; elsewhere an element is 4 mm divided by it. */
    @Param({"2", "4", "8", "16"})
    public int perBend;

    private static Setup setup(Mesh mesh) {
        return new Setup(
                new WireSpec(0.508, 180_000, 0.3),
                new ArchGeometry(new BetaCurve(44, 24), 3, 2.7, 8.3),
                FOLD,
                FOLD,
                ALPHA,
                ALPHA,
                TailSupport.TWO_POINT,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LARGE_ROTATIONS,
                mesh);
    }

    private Mesh mesh() {
        return new Mesh(perBend, 4.0 / perBend);
    }

    @Benchmark
    public Result solve() {
        return Mechanics.solve(setup(mesh()));
    }

    @TearDown(Level.Trial)
    public void error() {
        Solution here = (Solution) Mechanics.solve(setup(mesh()));
        Solution finest = (Solution) Mechanics.solve(setup(FINEST));
        System.out.printf(
                "%n%d per bend, %d elements: force off by %.3f %%, stress by %.3f %%%n",
                perBend,
                here.elements(),
                100 * (here.forward() / finest.forward() - 1),
                100 * (here.peak().bending() / finest.peak().bending() - 1));
    }
}
