package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Folds, loops and Z-frames against Castigliano's theorem worked out by hand. */
class FoldStiffnessTest {
    private static final double EI = Bench.WIRE.e() * Bench.WIRE.inertia();

    /** Plane fold from the start of bend 1 to the end of leg 3, legs along x. */
    private static double[] fold(double r, double leg, double leg3, int perBend) {
        List<double[]> p = new ArrayList<>();
        for (int i = 0; i <= perBend; i++) {
            double a = Math.PI * i / perBend;
            p.add(new double[] {r * Math.sin(a), r * (1 - Math.cos(a)), 0});
        }
        for (int i = 0; i <= perBend; i++) {
            double a = Math.PI * i / perBend;
            p.add(new double[] {-leg - r * Math.sin(a), 2 * r + r * (1 - Math.cos(a)), 0});
        }
        p.add(new double[] {-leg + leg3, 4 * r, 0});
        double[] nodes = new double[3 * p.size()];
        for (int i = 0; i < p.size(); i++) {
            System.arraycopy(p.get(i), 0, nodes, 3 * i, 3);
        }
        return nodes;
    }

    private static double compliance(ReferenceCase c, int perBend, int... guides) {
        var bench = Bench.chain(
                fold(c.in("r"), c.in("L"), c.in("L3"), perBend), c.wire().section());
        int end = bench.last();
        return bench.clamp(0).hold(end, guides).load(end, 0, 1).linear().moved(end, 0);
    }

    @Test
    void foldPulledAlongItsLegs() {
        var c = ReferenceCase.of("M05");
        assertThat(compliance(c, 16)).isCloseTo(c.out("c_free_with_axial"), Percentage.withPercentage(0.2));
        assertThat(compliance(c, 16, 5)).isCloseTo(c.out("c_guided_with_axial"), Percentage.withPercentage(0.21));
        assertThat(compliance(c, 32, 5)).isCloseTo(c.out("c_guided_with_axial"), Percentage.withPercentage(0.06));
        assertThat(1 / compliance(c, 64, 1, 5))
                .isCloseTo(c.out("k_fully_guided_bending"), Percentage.withPercentage(1.5));
    }

    @Test
    void theFormulasThemselves() {
        var c = ReferenceCase.of("M05");
        double r = c.in("r");
        double l = c.in("L");
        double free = (11 * Math.PI * Math.pow(r, 3) + 4 * r * r * l) / EI;
        double guided = free - Math.pow(4 * Math.PI * r * r + 2 * r * l, 2) / (EI * (2 * Math.PI * r + l + c.in("L3")));
        double axial = (l + c.in("L3") + Math.PI * r) / (c.in("E") * c.wire().area());
        Percentage exact = Percentage.withPercentage(1e-4);
        assertThat(free).isCloseTo(c.out("c_free_bending"), exact);
        assertThat(guided).isCloseTo(c.out("c_guided_bending"), exact);
        assertThat(free + axial).isCloseTo(c.out("c_free_with_axial"), exact);
        assertThat(guided + axial).isCloseTo(c.out("c_guided_with_axial"), exact);
    }

    /**
     * Z-frame A-B-C-D, AB = L1 along x, BC = H along y, CD = s L2 along x, clamped at A, loaded at D: flexibilities
     * times EI.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 5, 8, 1, 291.6667, 2264, -750, -62.5, 202, 23",
        "5, 5, 5, -1, 166.6667, 208.3333, 125, -37.5, -50, 15",
        "3, 6, 3, 1, 180, 126, -135, -36, 36, 12"
    })
    void zFrame(
            double l1,
            double h,
            double l2,
            double s,
            double fxx,
            double fyy,
            double fxy,
            double thx,
            double thy,
            double thm) {
        double[] nodes = Bench.corners(0, 0, 0, l1, 0, 0, l1, h, 0, l1 + s * l2, h, 0);
        Equilibrium x = atEnd(nodes, 0);
        Equilibrium y = atEnd(nodes, 1);
        Equilibrium m = atEnd(nodes, 5);
        Percentage close = Percentage.withPercentage(1e-3);
        assertThat(EI * x.moved(3, 0)).isCloseTo(fxx, close);
        assertThat(EI * y.moved(3, 1)).isCloseTo(fyy, close);
        assertThat(EI * x.moved(3, 1)).isCloseTo(fxy, close);
        assertThat(EI * y.moved(3, 0)).isCloseTo(fxy, close);
        assertThat(EI * Bench.rotation(x, 3, 2)).isCloseTo(thx, close);
        assertThat(EI * Bench.rotation(y, 3, 2)).isCloseTo(thy, close);
        assertThat(EI * Bench.rotation(m, 3, 2)).isCloseTo(thm, close);
    }

    private static Equilibrium atEnd(double[] nodes, int way) {
        SectionStiffness s = Bench.stiffAxially(Bench.WIRE);
        return Bench.chain(nodes, new SectionStiffness(100 * s.ea(), s.eiY(), s.eiZ(), s.gj()))
                .clamp(0)
                .load(3, way, 1)
                .linear();
    }

    /** Vertical loop, legs H, crown r, ends free to turn: opening = P (2H³/3 + pi H² r + 4 H r² + pi r³/2) / EI. */
    @Test
    void verticalLoop() {
        double h = 6;
        double r = 1;
        int n = 64;
        double[] nodes = Bench.points(n + 2, i -> {
            if (i == 0) {
                return new double[] {-r, 0, 0};
            }
            if (i == n + 2) {
                return new double[] {r, 0, 0};
            }
            double a = Math.PI * (i - 1) / n;
            return new double[] {-r * Math.cos(a), h + r * Math.sin(a), 0};
        });
        var bench = Bench.chain(nodes, Bench.stiffAxially(Bench.WIRE))
                .clamp(1 + n / 2)
                .load(0, 0, -1)
                .load(n + 2, 0, 1);
        Equilibrium e = bench.linear();
        double opening = e.moved(n + 2, 0) - e.moved(0, 0);
        double handbook = 2 * h * h * h / 3 + Math.PI * h * h * r + 4 * h * r * r + Math.PI * r * r * r / 2;
        assertThat(handbook).isCloseTo(282.668, Percentage.withPercentage(1e-3));
        assertThat(opening * EI).isCloseTo(handbook, Percentage.withPercentage(0.05));
    }
}
