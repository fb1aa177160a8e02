package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import dev.fairlead.measure.mechanics.solver.FrameSolver;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Small frames for the handbook checks: shapes, supports, loads. */
final class Bench {
    static final WireSpec WIRE = new WireSpec(0.508, 180_000, 0.3);
    final BeamFrame frame;
    final boolean[] held;
    final double[] loads;
    final double[] imposed;

    Bench(BeamFrame frame) {
        this.frame = frame;
        held = new boolean[6 * frame.nodes()];
        loads = new double[held.length];
        imposed = new double[held.length];
    }

    static Bench chain(double[] nodes, SectionStiffness section) {
        return new Bench(BeamFrame.chain(nodes, section));
    }

    /** Bending and torsion of a wire with next to no axial give, for formulas that leave axial strain out. */
    static SectionStiffness stiffAxially(WireSpec wire) {
        SectionStiffness s = wire.section();
        return new SectionStiffness(1e4 * s.ea(), s.eiY(), s.eiZ(), s.gj());
    }

    static double[] straight(double length, int elements) {
        return points(elements, i -> new double[] {length * i / elements, 0, 0});
    }

    /** Arc in the x-y plane from (0,0) with tangent +x, centre (0,R), through an angle. */
    static double[] arc(double radius, double angle, int elements) {
        return points(elements, i -> {
            double a = angle * i / elements;
            return new double[] {radius * Math.sin(a), radius * (1 - Math.cos(a)), 0};
        });
    }

    /** Straight pieces through corners. */
    static double[] corners(double... xyz) {
        return xyz;
    }

    static double[] points(int elements, java.util.function.IntFunction<double[]> at) {
        double[] nodes = new double[3 * (elements + 1)];
        for (int i = 0; i <= elements; i++) {
            System.arraycopy(at.apply(i), 0, nodes, 3 * i, 3);
        }
        return nodes;
    }

    int last() {
        return frame.nodes() - 1;
    }

    Bench hold(int node, int... ways) {
        for (int w : ways) {
            held[6 * node + w] = true;
        }
        return this;
    }

    Bench clamp(int node) {
        return hold(node, 0, 1, 2, 3, 4, 5);
    }

    Bench load(int node, int way, double value) {
        loads[6 * node + way] += value;
        return this;
    }

    Equilibrium linear() {
        return new FrameSolver(frame, held).linear(imposed, loads).orElseThrow();
    }

    /** Large rotations: state at each share of the load; throws when one is not reached. */
    Map<Double, Equilibrium> follow(double... fractions) {
        Map<Double, Equilibrium> out = new TreeMap<>();
        new FrameSolver(frame, held).follow(imposed, loads, fractions, out::put).ifPresent(why -> {
            throw new AssertionError(why);
        });
        return out;
    }

    Equilibrium large() {
        return follow(1).get(1.0);
    }

    static double rotation(Equilibrium e, int node, int axis) {
        return e.displacement()[6 * node + 3 + axis];
    }

    /** The base wire of the whole-arch tests. */
    static Setup base(double standOff) {
        var fold = new FoldSpec(1, 3, 3, 0, 20);
        double alpha = FoldKinematics.openingForForward(fold, standOff).orElseThrow();
        return new Setup(
                WIRE,
                new ArchGeometry(new BetaCurve(44, 24), 3, 2.7, 8.3),
                fold,
                fold,
                alpha,
                alpha,
                TailSupport.TWO_POINT,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LARGE_ROTATIONS,
                Mesh.STANDARD);
    }

    static Solution solved(Setup setup) {
        Result r = Mechanics.solve(setup);
        if (r instanceof Solution s) {
            return s;
        }
        throw new AssertionError(r.toString());
    }

    static final List<TailSupport> ALL_TUBES = List.of(TailSupport.values());
}
