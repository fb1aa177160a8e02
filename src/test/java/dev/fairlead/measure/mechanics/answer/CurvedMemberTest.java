package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Circular arcs against Castigliano's theorem (Timoshenko; Roark, curved bars) and two published benchmark problems.
 */
class CurvedMemberTest {
    private static final double EI = Bench.WIRE.e() * Bench.WIRE.inertia();

    private static Percentage percent(double p) {
        return Percentage.withPercentage(p);
    }

    private static double tip(ReferenceCase c, double angle, int elements, int way) {
        var bench = Bench.chain(Bench.arc(c.in("R"), angle, elements), c.wire().section())
                .clamp(0);
        return bench.load(bench.last(), way, c.in("P")).linear().moved(bench.last(), way);
    }

    @ParameterizedTest
    @CsvSource({"8, 1", "64, 0.1"})
    void quarterRing(int elements, double tolerance) {
        var c = ReferenceCase.of("M03");
        assertThat(tip(c, Math.PI / 2, elements, 0)).isCloseTo(c.out("quarter_ux_for_Fx"), percent(tolerance));
        assertThat(tip(c, Math.PI / 2, elements, 1)).isCloseTo(c.out("quarter_uy_for_Fy"), percent(tolerance));
        assertThat(tip(c, Math.PI / 2, elements, 2)).isCloseTo(c.out("quarter_uz_for_Fz"), percent(tolerance));
    }

    @ParameterizedTest
    @CsvSource({"16, 1", "64, 0.1"})
    void halfRing(int elements, double tolerance) {
        var c = ReferenceCase.of("M04");
        assertThat(tip(c, Math.PI, elements, 0)).isCloseTo(c.out("half_ux_for_Fx"), percent(tolerance));
        assertThat(tip(c, Math.PI, elements, 1)).isCloseTo(c.out("half_uy_for_Fy"), percent(tolerance));
        assertThat(tip(c, Math.PI, elements, 2)).isCloseTo(c.out("half_uz_for_Fz"), percent(tolerance));
    }

    /** Error, %, of straight elements along an arc, as the independent reference model found it. */
    @ParameterizedTest
    @CsvSource({
        "4, -3.15, 1.02, -2.57, -5.72, -12.0, -8.18",
        "8, -0.78, 0.27, -0.66, -1.48, -3.15, -2.13",
        "16, -0.18, 0.09, -0.17, -0.37, -0.78, -0.54"
    })
    void errorFallsWithTheSquareOfTheElementLength(
            int n, double q0, double q1, double q2, double h0, double h1, double h2) {
        var q = ReferenceCase.of("M03");
        var h = ReferenceCase.of("M04");
        double[] quarter = {q.out("quarter_ux_for_Fx"), q.out("quarter_uy_for_Fy"), q.out("quarter_uz_for_Fz")};
        double[] half = {h.out("half_ux_for_Fx"), h.out("half_uy_for_Fy"), h.out("half_uz_for_Fz")};
        double[] expectedQuarter = {q0, q1, q2};
        double[] expectedHalf = {h0, h1, h2};
        for (int way = 0; way < 3; way++) {
            assertThat(100 * (tip(q, Math.PI / 2, n, way) / quarter[way] - 1))
                    .isCloseTo(expectedQuarter[way], within(0.06));
            assertThat(100 * (tip(h, Math.PI, n, way) / half[way] - 1)).isCloseTo(expectedHalf[way], within(0.06));
        }
    }

    private static org.assertj.core.data.Offset<Double> within(double v) {
        return org.assertj.core.api.Assertions.within(v);
    }

    /** Flexibilities times EI/R^n at the free end of an arc: radial V-V, tangential H-H, V-H and the rotations. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.785398, 0.356194, 0.5, 1, 0.570796, 1.570796, 1.248451",
        "1, 1.570796, 4.712389, 2, 2, 3.141593, 3.141593, 7.696902"
    })
    void freeEndFlexibilities(
            double halfTurns, double vv, double hh, double vh, double tv, double th, double tm, double out) {
        double r = 7;
        double phi = halfTurns * Math.PI;
        double[] nodes = Bench.arc(r, phi, 128);
        double[] along = {Math.cos(phi), Math.sin(phi)};
        double[] radial = {-Math.sin(phi), Math.cos(phi)};
        Equilibrium v = end(nodes, radial[0], radial[1], 0, 0);
        Equilibrium h = end(nodes, along[0], along[1], 0, 0);
        assertThat(dot(v, radial) * EI / Math.pow(r, 3)).isCloseTo(vv, percent(0.05));
        assertThat(dot(h, along) * EI / Math.pow(r, 3)).isCloseTo(hh, percent(0.05));
        assertThat(Math.abs(dot(v, along)) * EI / Math.pow(r, 3)).isCloseTo(vh, percent(0.05));
        assertThat(Math.abs(dot(h, radial)) * EI / Math.pow(r, 3)).isCloseTo(vh, percent(0.05));
        assertThat(Math.abs(Bench.rotation(v, 128, 2)) * EI / (r * r)).isCloseTo(tv, percent(0.05));
        assertThat(Math.abs(Bench.rotation(h, 128, 2)) * EI / (r * r)).isCloseTo(th, percent(0.05));
        assertThat(Bench.rotation(end(nodes, 0, 0, 0, 1), 128, 2) * EI / r).isCloseTo(tm, percent(0.05));
        assertThat(end(nodes, 0, 0, 1, 0).moved(128, 2) * EI / Math.pow(r, 3)).isCloseTo(out, percent(0.05));
    }

    private static double dot(Equilibrium e, double[] direction) {
        return e.moved(128, 0) * direction[0] + e.moved(128, 1) * direction[1];
    }

    private static Equilibrium end(double[] nodes, double fx, double fy, double fz, double mz) {
        return Bench.chain(nodes, Bench.stiffAxially(Bench.WIRE))
                .clamp(0)
                .load(128, 0, fx)
                .load(128, 1, fy)
                .load(128, 2, fz)
                .load(128, 5, mz)
                .linear();
    }

    /**
     * Complete ring pulled on a diameter (Timoshenko): (pi/4 - 2/pi), (2/pi - 1/2) PR³/EI; moments PR/pi and PR (1/2 -
     * 1/pi).
     */
    @Test
    void completeRing() {
        int n = 128;
        double r = 10;
        // both ends of the chain lie and are held in one place, which makes it a ring
        double[] nodes = Bench.points(n, i ->
                new double[] {r * Math.sin(2 * Math.PI * i / n), -r * Math.cos(2 * Math.PI * i / n), 0});
        var bench = new Bench(BeamFrame.chain(nodes, Bench.stiffAxially(Bench.WIRE)));
        double p = 0.3;
        Equilibrium e = bench.clamp(0).clamp(n).load(n / 2, 1, p).linear();
        double unit = p * r * r * r / EI;
        assertThat(e.moved(n / 2, 1)).isCloseTo((Math.PI / 4 - 2 / Math.PI) * unit, percent(0.1));
        assertThat(e.moved(3 * n / 4, 0) - e.moved(n / 4, 0)).isCloseTo((2 / Math.PI - 0.5) * unit, percent(0.1));
        assertThat(e.bending(n / 2, 0)).isCloseTo(p * r / Math.PI, percent(0.1));
        assertThat(e.bending(n / 4, 0)).isCloseTo(p * r * (0.5 - 1 / Math.PI), percent(0.1));
    }

    /**
     * S. Timoshenko, Strength of Materials I: quarter-circle bar, R 100 in, d 2 in, 50 lb out of plane, E 30e6 psi; tip
     * 2.648 in.
     */
    @Test
    void timoshenkosCurvedBar() {
        var bar = new WireSpec(2, 30e6, 0.3);
        var bench = Bench.chain(Bench.arc(100, Math.PI / 2, 64), bar.section())
                .clamp(0)
                .load(64, 2, 50);
        Equilibrium e = bench.linear();
        assertThat(e.moved(64, 2)).isCloseTo(2.648, percent(0.1));
        // a chord mixes some of the torsion into the bending next to the clamp, in proportion to its length
        var fine = Bench.chain(Bench.arc(100, Math.PI / 2, 512), bar.section())
                .clamp(0)
                .load(512, 2, 50)
                .linear();
        assertThat(fine.bending(0, 0) / bar.sectionModulus()).isCloseTo(6366, percent(0.2));
    }

    /**
     * R. MacNeal and R. Harder, Finite Elem. Anal. Des. 1 (1985) 3: curved beam; a thin-beam model is 1.5 % off its
     * thick section.
     */
    @Test
    void macNealHarderCurvedBeam() {
        double e = 1e7;
        double g = e / 2.5;
        var section = new SectionStiffness(e * 0.02, e * 0.2 * 1e-3 / 12, e * 0.1 * 8e-3 / 12, g * 0.229 * 0.2 * 1e-3);
        double[] nodes = Bench.arc(4.22, Math.PI / 2, 64);
        double[] up = {0, 0, 1};
        var inPlane = new Bench(BeamFrame.chain(nodes, section, up))
                .clamp(0)
                .load(64, 0, 1)
                .linear();
        var outOfPlane = new Bench(BeamFrame.chain(nodes, section, up))
                .clamp(0)
                .load(64, 2, 1)
                .linear();
        assertThat(inPlane.moved(64, 0)).isCloseTo(0.08734, percent(2));
        assertThat(outOfPlane.moved(64, 2)).isCloseTo(0.5022, percent(1));
    }
}
