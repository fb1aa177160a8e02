package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.archform.SixthDegreeArch;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.ArchPath;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.mechanics.geometry.PolylineCurve;
import dev.fairlead.measure.mechanics.geometry.WireCurve;
import dev.fairlead.measure.position.SidedPlan;
import dev.fairlead.measure.position.Sides;
import dev.fairlead.measure.position.Tipping;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arch forms, centreline, blank length and rigid motions. */
class GeometryTest {

    /** Node by node against the centreline of the independent reference model. */
    @Test
    void centrelineOfTheReferenceCase() throws IOException {
        Centreline line = Centreline.of(ReferenceCase.of("M10").setup());
        List<String> rows;
        try (var in = GeometryTest.class.getResourceAsStream("/mechanics/centreline-M10.csv")) {
            rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList();
        }
        assertThat(line.nodes).hasSize(3 * rows.size());
        for (int i = 0; i < rows.size(); i++) {
            String[] cells = rows.get(i).split(",", -1);
            for (int k = 0; k < 3; k++) {
                assertThat(line.nodes[3 * i + k])
                        .as("node %d %s", i, cells[4])
                        .isCloseTo(Double.parseDouble(cells[1 + k]), within(1e-5));
            }
            tag(cells[4], line)
                    .ifPresent(expected -> assertThat(expected).as(cells[4]).isEqualTo(Integer.parseInt(cells[0])));
        }
    }

    private static java.util.OptionalInt tag(String tag, Centreline line) {
        Centreline.Ends ends = tag.endsWith("_L") ? line.left : line.right;
        return switch (tag.replaceAll("_[RL]$", "")) {
            case "tube_dist" -> java.util.OptionalInt.of(ends.tubeDistal());
            case "tube_mes" -> java.util.OptionalInt.of(ends.tubeMesial());
            case "leg3_end" -> java.util.OptionalInt.of(ends.foldEnd());
            case "lat" -> java.util.OptionalInt.of(ends.lateral());
            case "cen" -> java.util.OptionalInt.of(ends.central());
            case "mid" -> java.util.OptionalInt.of(line.midline);
            default -> java.util.OptionalInt.empty();
        };
    }

    private static double run(ArchGeometry arch, ReferenceCase c, double spacing) {
        var closed = new Setup(
                Bench.WIRE,
                arch,
                c.fold(),
                c.fold(),
                0,
                0,
                TailSupport.SPIN,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LINEAR,
                new Mesh(4, spacing));
        Centreline line = Centreline.of(closed);
        return line.length(line.right.foldEnd(), line.left.foldEnd());
    }

    @Test
    void perimeterAndBlank() {
        var c = ReferenceCase.of("M08");
        var arch = new ArchGeometry(new BetaCurve(c.in("W"), c.in("D")), c.in("Lt"), c.in("sc"), c.in("sl"));
        Blank blank = Blank.of(arch, c.fold(), c.fold(), c.in("tail"));
        assertThat(blank.perimeter()).isCloseTo(c.out("perimeter"), within(1e-5));
        // the reference is a polyline of 0.25 mm, shorter than the curve by about 6e-4 mm; a like one of ours is as
        // long
        assertThat(blank.archRun()).isCloseTo(c.out("arch_run"), within(7e-4));
        assertThat(run(arch, c, 0.25)).isCloseTo(c.out("arch_run"), within(2e-4));
        assertThat(blank.archRun()).isCloseTo(run(arch, c, 0.01), within(5e-5));
        assertThat(blank.foldRight()).isCloseTo(c.out("per_fold"), within(1e-5));
        assertThat(blank.foldLeft()).isCloseTo(c.out("per_fold"), within(1e-5));
        assertThat(blank.total()).isCloseTo(c.out("blank"), within(8e-4));
        double longer1 = new BetaCurve(c.in("W"), c.in("D") + 1).perimeter() - blank.perimeter();
        double longer2 = new BetaCurve(c.in("W"), c.in("D") + 2).perimeter() - blank.perimeter();
        assertThat(longer1).isCloseTo(c.out("gain_per_1mm"), within(1e-5));
        assertThat(longer2).isCloseTo(c.out("gain_per_2mm"), within(1e-5));
    }

    /** Whole-arch lengths of the beta function by separate quadrature, mm. */
    @ParameterizedTest
    @CsvSource({"50, 30, 83.093", "53, 37, 96.663", "54.19, 28.10, 83.056", "56.37, 40.40, 104.574", "60, 40, 106.276"})
    void betaArchLengths(double width, double depth, double length) {
        var arch = new BetaCurve(width, depth);
        assertThat(arch.perimeter()).isCloseTo(length, within(0.0011));
        assertThat(arch.y(0)).isCloseTo(depth, within(1e-4 * depth));
        assertThat(arch.y(arch.leftLength())).isCloseTo(0, within(1e-9));
        assertThat(arch.x(-arch.rightLength())).isCloseTo(-width / 2, within(1e-9));
    }

    @Test
    void betaArchIsWalkedByArcLength() {
        var arch = new BetaCurve(44, 24);
        double reach = arch.leftLength();
        double length = 0;
        double worst = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double a = -reach + 2 * reach * i / n;
            double b = -reach + 2 * reach * (i + 1) / n;
            length += Math.hypot(arch.x(b) - arch.x(a), arch.y(b) - arch.y(a));
            double u = arch.x(a) / 44;
            double formula = 3.0314 * 24 * Math.pow(Math.max(0, u + 0.5), 0.8) * Math.pow(Math.max(0, 0.5 - u), 0.8);
            worst = Math.max(worst, Math.abs(arch.y(a) - formula));
        }
        assertThat(worst).isLessThan(1e-8);
        assertThat(length).isCloseTo(2 * reach, within(1e-5));
    }

    /** The same arch as a polyline gives the same wire force; a lopsided one still balances. */
    @Test
    void anyPlaneCurve() {
        var beta = new BetaCurve(44, 24);
        var sampled = PolylineCurve.of(
                x -> 3.0314 * 24 * Math.pow(Math.max(0, x / 44 + 0.5), 0.8) * Math.pow(Math.max(0, 0.5 - x / 44), 0.8),
                -22,
                22,
                2001);
        assertThat(sampled.perimeter()).isCloseTo(beta.perimeter(), within(1e-3));
        Setup base = Bench.base(1.5);
        Solution a = Bench.solved(base);
        Solution b = Bench.solved(withCurve(base, sampled));
        assertThat(b.forward()).isCloseTo(a.forward(), within(0.002));
        var lopsided =
                PolylineCurve.of(x -> (24 + 0.05 * x) * (1 - Math.pow(x > 0 ? x / 21 : x / 22.5, 4)), -22.5, 21, 800);
        Solution c = Bench.solved(withCurve(base, lopsided));
        assertThat(c.forward() + c.right().force().y() + c.left().force().y()).isCloseTo(0, within(1e-5));
        assertThat(c.right().force().y()).isNotCloseTo(c.left().force().y(), within(1e-3));
    }

    private static Setup withCurve(Setup s, WireCurve curve) {
        return new Setup(
                s.wire(),
                new ArchGeometry(curve, 3, 2.7, 8.3),
                s.right(),
                s.left(),
                s.alphaR(),
                s.alphaL(),
                s.tube(),
                s.ties(),
                s.seat(),
                s.theory(),
                s.mesh());
    }

    /** Legs of unequal length: the run starts on the arch before or behind the tube's mesial end without a jump. */
    @ParameterizedTest
    @CsvSource({"3, 5, 0", "5, 3, 0", "3, 3, 1"})
    void thirdLegNeedNotEndAbreastOfTheTube(double leg, double leg3, double gap) {
        var fold = new FoldSpec(1, leg, leg3, gap, 20);
        Setup s = Bench.base(1.5).withFolds(fold, fold, 0.4, 0.4).withMesh(Mesh.FINE);
        Centreline line = Centreline.of(s);
        int end = line.right.foldEnd();
        assertThat(line.nodes[3 * end + 1]).isCloseTo(gap - leg + leg3, within(1e-9));
        for (int i = end; i < line.right.lateral(); i++) {
            assertThat(line.length(i, i + 1)).isBetween(0.2, 0.3);
        }
    }

    /** Where both halves are alike the left one is the right one mirrored. */
    @Test
    void aPathIsTrueToItsCurveOnBothSides() {
        for (ArchCurve curve : List.of(new BetaArch(46, 24), SixthDegreeArch.near(46, 24, 26, 7))) {
            ArchPath path = new ArchPath(curve);
            for (double u = -1; u <= 1; u += 0.05) {
                Point at = path.place(curve.ruler().fromMidline(u));
                assertThat(at.distance(curve.at(u)))
                        .as(curve.name() + " at " + u)
                        .isLessThan(2e-3);
            }
        }
    }

    @Test
    void rigidMotions() {
        var c = ReferenceCase.of("M09");
        for (int r : new int[] {20, 22, 24}) {
            assertThat(new Tipping(r, 0).inclinationChange(c.in("advance")))
                    .isCloseTo(
                            c.outputs().get("deg_per_mm").get(String.valueOf(r)).doubleValue(), within(1e-6));
        }
        var m = new SidedPlan(new Sides(0, c.in("x_open"))).front(c.in("W"), c.in("D"), c.in("x_lateral"));
        assertThat(m.midline()).isCloseTo(c.out("midline"), within(1e-6));
        assertThat(m.laterals().right()).isCloseTo(c.out("lateral_same_side"), within(1e-6));
        assertThat(m.laterals().left()).isCloseTo(c.out("lateral_other_side"), within(1e-6));
        assertThat(m.sideways()).isCloseTo(c.out("transverse"), within(1e-6));
        assertThat(m.yaw()).isCloseTo(c.out("yaw_deg"), within(1e-6));
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> new WireSpec(0, 180_000, 0.3)).hasMessageContaining("diameter");
        assertThatThrownBy(() -> new WireSpec(0.5, Double.NaN, 0.3)).hasMessageContaining("modulus");
        assertThatThrownBy(() -> new WireSpec(0.5, 180_000, 0.5)).hasMessageContaining("Poisson");
        assertThatThrownBy(() -> new FoldSpec(-1, 3, 3, 0, 20)).hasMessageContaining("radius");
        assertThatThrownBy(() -> new FoldSpec(1, 3, 3, 0, 95)).hasMessageContaining("tip");
        assertThatThrownBy(() -> new ArchGeometry(new BetaCurve(44, 24), 3, 2.7, 2.5))
                .hasMessageContaining("lateral");
        assertThatThrownBy(() -> new PolylineCurve(new double[] {1, 2, 3}, new double[] {0, 1, 0}))
                .hasMessageContaining("right");
        assertThatThrownBy(() -> Bench.base(1).withOpenings(2, 0)).hasMessageContaining("opening");
        assertThatThrownBy(() -> Mechanics.follow(Bench.base(1), 0.5, 0.5)).hasMessageContaining("rise");
    }
}
