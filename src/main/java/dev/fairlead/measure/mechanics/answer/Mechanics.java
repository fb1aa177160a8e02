package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Result.Unsolved;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.geometry.Vector;
import dev.fairlead.measure.mechanics.solver.FrameSolver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Solves a tied-in arch. */
public final class Mechanics {
    /** Stand-off taken up in one step of a solution with large rotations, mm, at most. */
    private static final double LONGEST_STEP = 4;

    private Mechanics() {}

    /** Force, moments and stress as tied in. */
    public static Result solve(Setup setup) {
        List<Result> all = follow(setup, 1);
        return all.get(all.size() - 1);
    }

    /**
     * The same wire at rising shares of its stand-off, in one pass; a share s is what is left after the incisors have
     * moved (1 - s) times the stand-off, each side in proportion to its own.
     *
     * @param fractions rising, above 0; one result for each. After the first that cannot be solved the rest carry the
     *     same reason
     */
    public static List<Result> follow(Setup setup, double... fractions) {
        double before = 0;
        for (double f : fractions) {
            if (!(f > before)) {
                throw new IllegalArgumentException(
                        "shares of the stand-off must rise from above 0: " + Arrays.toString(fractions));
            }
            before = f;
        }
        return follow(setup, tail(setup, -1), tail(setup, 1), fractions);
    }

    /**
     * Force, moments and stress of the same wire under every pair of conditions of tube and ties: all ties for the
     * first tube, then for the next.
     */
    public static List<Result> solveEach(Setup setup, List<TailSupport> tubes, List<Ties> ties) {
        var wire = new WireModel(setup, tail(setup, -1), tail(setup, 1));
        List<Result> out = new ArrayList<>();
        for (TailSupport tube : tubes) {
            for (Ties tie : ties) {
                out.addAll(follow(setup, wire.with(tube, tie), 1));
            }
        }
        return out;
    }

    /** As {@link #follow(Setup, double...)} with the displacement that seats each tail given, mm. */
    static List<Result> follow(Setup setup, Vector right, Vector left, double... fractions) {
        return follow(setup, new WireModel(setup, right, left), fractions);
    }

    private static List<Result> follow(Setup setup, WireModel model, double... fractions) {
        List<Result> out = new ArrayList<>();
        var solver = new FrameSolver(model.frame, model.held);
        if (setup.theory() == Theory.LINEAR) {
            for (double f : fractions) {
                out.add(solver.linear(model.imposed(f), model.noLoads())
                        .<Result>map(e -> model.solution(f, e, 1))
                        .orElseGet(() -> new Unsolved(solver.failure(), solver.iterations())));
            }
            return out;
        }
        Optional<String> failed = solver.follow(model.imposed(1), model.noLoads(), steps(setup, fractions), (f, e) -> {
            if (Arrays.binarySearch(fractions, f) >= 0) {
                out.add(model.solution(f, e, solver.iterations()));
            }
        });
        failed.ifPresent(reason -> {
            while (out.size() < fractions.length) {
                out.add(new Unsolved(reason, solver.iterations()));
            }
        });
        return out;
    }

    /**
     * The wanted shares with others between them where a step would be so long that it might end in another state of
     * balance.
     */
    private static double[] steps(Setup setup, double... fractions) {
        double standOff = Math.max(setup.standOffRight(), setup.standOffLeft());
        List<Double> all = new ArrayList<>();
        double before = 0;
        for (double f : fractions) {
            int n = (int) Math.max(1, Math.ceil((f - before) * standOff / LONGEST_STEP - 1e-9));
            for (int i = 1; i < n; i++) {
                all.add(before + (f - before) * i / n);
            }
            all.add(f);
            before = f;
        }
        return all.stream().mapToDouble(f -> f).toArray();
    }

    /** How a passive tail has to move to sit in its tube, mm. */
    static Vector tail(Setup setup, int side) {
        FoldSpec fold = side < 0 ? setup.right() : setup.left();
        double alpha = side < 0 ? setup.alphaR() : setup.alphaL();
        double forward = FoldKinematics.forward(fold, alpha);
        if (setup.seat() == Seat.LEVEL) {
            return new Vector(0, forward, 0);
        }
        double gingival = FoldKinematics.gingival(fold, alpha);
        return new Vector(side * gingival * Math.sin(fold.tip()), forward, -gingival * Math.cos(fold.tip()));
    }
}
