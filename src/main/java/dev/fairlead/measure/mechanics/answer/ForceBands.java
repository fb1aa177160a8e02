package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.BandResult.NoBand;
import dev.fairlead.measure.mechanics.answer.Result.Unsolved;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Works out a {@link ForceBand}. */
public final class ForceBands {
    /** Movement between two points of a load-deflection curve, mm; the finer one for small stand-offs. */
    private static final double CURVE_STEP = 0.5;

    private static final double FINE_STEP = 0.25;
    private static final double FINE_UP_TO = 1.25;

    private final BandInput in;
    private final List<String> failed = new ArrayList<>();

    private ForceBands(BandInput in) {
        this.in = in;
    }

    /** Large rotations throughout; force scales exactly with the modulus, because the supports impose displacements. */
    public static BandResult of(BandInput input) {
        return new ForceBands(input).work();
    }

    private BandResult work() {
        Ties usual = in.ties().get(0);
        List<Result> hingedPath = path(nominal(), TailSupport.HINGE_SPIN, usual);
        List<Result> heldPath = path(nominal(), TailSupport.TWO_POINT, usual);
        Result hinged = last(hingedPath);
        Result held = last(heldPath);
        List<Double> totals = totals(usual, hinged, held);
        Optional<ForceBand.OneSide> rightOnly = oneSide(true, usual, hinged, held);
        Optional<ForceBand.OneSide> leftOnly = in.mirrored() ? rightOnly : oneSide(false, usual, hinged, held);
        if (!failed.isEmpty() || !(hinged instanceof Solution h) || !(held instanceof Solution k)) {
            return new NoBand(failed);
        }
        return new ForceBand(
                low(totals),
                high(totals),
                h,
                k,
                curve(TailSupport.HINGE_SPIN, hingedPath),
                curve(TailSupport.TWO_POINT, heldPath),
                stress(usual),
                rightOnly,
                leftOnly,
                totals.size());
    }

    /** The ends of the band and the two usual solutions alone, without curves, stress limits and single sides. */
    public static Optional<ForceEnds> ends(BandInput input) {
        ForceBands b = new ForceBands(input);
        Ties usual = input.ties().get(0);
        Result hinged = b.solve(b.nominal(), TailSupport.HINGE_SPIN, usual);
        Result held = b.solve(b.nominal(), TailSupport.TWO_POINT, usual);
        List<Double> totals = b.totals(usual, hinged, held);
        return b.failed.isEmpty() && hinged instanceof Solution h && held instanceof Solution k
                ? Optional.of(new ForceEnds(b.low(totals), b.high(totals), h, k))
                : Optional.empty();
    }

    private double low(List<Double> totals) {
        return totals.stream().mapToDouble(d -> d).min().orElseThrow()
                * in.eLow()
                / in.wire().e();
    }

    private double high(List<Double> totals) {
        return totals.stream().mapToDouble(d -> d).max().orElseThrow()
                * in.eHigh()
                / in.wire().e();
    }

    /** Total labial force of every variant that was solved, with the modulus of the nominal wire, N. */
    private List<Double> totals(Ties usual, Result hinged, Result held) {
        List<Double> totals = new ArrayList<>();
        for (TailSupport tube : new TailSupport[] {TailSupport.HINGE_SPIN, TailSupport.TWO_POINT}) {
            for (Ties ties : in.ties()) {
                Result nominal =
                        ties != usual ? solve(nominal(), tube, ties) : tube == TailSupport.TWO_POINT ? held : hinged;
                note(nominal, tube, ties, "nominal folds").ifPresent(totals::add);
                if (!in.right().known() || !in.left().known()) {
                    boolean soft = tube == TailSupport.HINGE_SPIN;
                    note(
                                    solve(soft ? softest() : stiffest(), tube, ties),
                                    tube,
                                    ties,
                                    soft ? "softest folds" : "stiffest folds")
                            .ifPresent(totals::add);
                }
            }
        }
        return totals;
    }

    /** The total of a solution; empty, and the reason kept, when there is none. */
    private OptionalDouble note(Result result, TailSupport tube, Ties ties, String what) {
        if (result instanceof Solution s) {
            return OptionalDouble.of(s.forward());
        }
        failed.add("%s, %s, %s: %s".formatted(tube, ties, what, ((Unsolved) result).reason()));
        return OptionalDouble.empty();
    }

    /** Both folds with the openings that give the stand-offs; empty when a fold cannot be opened that far. */
    private record Opened(FoldSpec right, FoldSpec left, OptionalDouble alphaR, OptionalDouble alphaL) {
        static Opened of(FoldSpec right, FoldSpec left, double standOffR, double standOffL) {
            return new Opened(
                    right,
                    left,
                    FoldKinematics.openingForForward(right, standOffR),
                    FoldKinematics.openingForForward(left, standOffL));
        }

        boolean possible() {
            return alphaR.isPresent() && alphaL.isPresent();
        }
    }

    private Opened nominal() {
        return Opened.of(in.right().nominal(), in.left().nominal(), in.standOffRight(), in.standOffLeft());
    }

    private Opened softest() {
        return Opened.of(in.right().softest(), in.left().softest(), in.standOffRight(), in.standOffLeft());
    }

    private Opened stiffest() {
        return Opened.of(in.right().stiffest(), in.left().stiffest(), in.standOffRight(), in.standOffLeft());
    }

    private Result solve(Opened folds, TailSupport tube, Ties ties) {
        return last(follow(folds, tube, ties, 1));
    }

    private List<Result> follow(Opened folds, TailSupport tube, Ties ties, double... fractions) {
        if (!folds.possible()) {
            return DoubleStream.of(fractions)
                    .<Result>mapToObj(
                            f -> new Unsolved("a fold of this size cannot be opened far enough for the stand-off", 0))
                    .toList();
        }
        return Mechanics.follow(
                new Setup(
                        in.wire(),
                        in.arch(),
                        folds.right(),
                        folds.left(),
                        folds.alphaR().getAsDouble(),
                        folds.alphaL().getAsDouble(),
                        tube,
                        ties,
                        in.seat(),
                        Theory.LARGE_ROTATIONS,
                        in.mesh()),
                fractions);
    }

    private static Result last(List<Result> results) {
        return results.get(results.size() - 1);
    }

    /** At every step of movement, from nearly passive to as tied in. */
    private List<Result> path(Opened folds, TailSupport tube, Ties ties) {
        return follow(folds, tube, ties, fractions());
    }

    private double step() {
        return in.standOff() <= FINE_UP_TO ? FINE_STEP : CURVE_STEP;
    }

    private double[] fractions() {
        int steps = (int) Math.ceil(in.standOff() / step() - 1e-9);
        double[] f = new double[steps];
        for (int i = 0; i < steps; i++) {
            f[steps - 1 - i] = 1 - i * step() / in.standOff();
        }
        return f;
    }

    private LoadDeflection curve(TailSupport tube, List<Result> path) {
        List<LoadDeflection.Point> points = new ArrayList<>();
        for (int i = path.size() - 1; i >= 0; i--) {
            Solution s = (Solution) path.get(i);
            points.add(new LoadDeflection.Point(
                    (path.size() - 1 - i) * step(),
                    s.forward(),
                    s.vertical(),
                    s.peak().bending()));
        }
        points.add(new LoadDeflection.Point(in.standOff(), 0, 0, 0));
        return new LoadDeflection(tube, in.standOff(), points);
    }

    private List<ForceBand.StressReach> stress(Ties ties) {
        if (in.stressLimits().isEmpty()) {
            return List.of();
        }
        StressSearch hinged = search(TailSupport.HINGE_SPIN, ties);
        StressSearch held = search(TailSupport.TWO_POINT, ties);
        double relief = in.wire().e() / in.eHigh();
        return in.stressLimits().stream()
                .map(limit -> new ForceBand.StressReach(
                        limit,
                        hinged.standOffAt(limit),
                        held.standOffAt(limit),
                        held.standOffAt(limit * relief),
                        Math.min(hinged.searchedTo(), held.searchedTo())))
                .toList();
    }

    private StressSearch search(TailSupport tube, Ties ties) {
        double right = in.standOffRight() / in.standOff();
        double left = in.standOffLeft() / in.standOff();
        return new StressSearch(
                s -> solve(Opened.of(in.right().nominal(), in.left().nominal(), s * right, s * left), tube, ties));
    }

    private Optional<ForceBand.OneSide> oneSide(boolean right, Ties ties, Result bothHinged, Result bothHeld) {
        if (in.standOffRight() == 0 || in.standOffLeft() == 0) {
            return Optional.empty();
        }
        Opened one = Opened.of(
                in.right().nominal(),
                in.left().nominal(),
                right ? in.standOffRight() : 0,
                right ? 0 : in.standOffLeft());
        String what = right ? "right fold alone" : "left fold alone";
        OptionalDouble hinged = note(solve(one, TailSupport.HINGE_SPIN, ties), TailSupport.HINGE_SPIN, ties, what);
        OptionalDouble held = note(solve(one, TailSupport.TWO_POINT, ties), TailSupport.TWO_POINT, ties, what);
        if (hinged.isEmpty()
                || held.isEmpty()
                || !(bothHinged instanceof Solution h)
                || !(bothHeld instanceof Solution k)) {
            return Optional.empty();
        }
        return Optional.of(new ForceBand.OneSide(
                hinged.getAsDouble(),
                held.getAsDouble(),
                hinged.getAsDouble() / h.forward(),
                held.getAsDouble() / k.forward()));
    }
}
