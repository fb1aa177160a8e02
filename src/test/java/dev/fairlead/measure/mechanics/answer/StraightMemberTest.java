package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.mechanics.solver.Equilibrium;
import dev.fairlead.measure.mechanics.solver.FrameSolver;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Straight beams against the formulas of any handbook of strength of materials (Timoshenko; Roark). */
class StraightMemberTest {
    private static final Percentage EXACT = Percentage.withPercentage(1e-4);
    private static final double EI = Bench.WIRE.e() * Bench.WIRE.inertia();

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 20})
    void cantileverTip(int elements) {
        var c = ReferenceCase.of("M01");
        var bench = Bench.chain(Bench.straight(c.in("L"), elements), c.wire().section());
        Equilibrium e = bench.clamp(0).load(bench.last(), 1, c.in("P")).linear();
        assertThat(c.wire().inertia()).isCloseTo(c.out("I"), EXACT);
        assertThat(e.moved(bench.last(), 1)).isCloseTo(c.out("delta"), EXACT);
        assertThat(e.bending(0, 0) / c.wire().sectionModulus()).isCloseTo(c.out("sigma"), EXACT);
        assertThat(Bench.rotation(e, bench.last(), 2)).isCloseTo(c.in("P") * 400 / (2 * EI), EXACT);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 8})
    void threePointBend(int elements) {
        var c = ReferenceCase.of("M02");
        Equilibrium e = threePoint(c.wire(), c.in("L"), elements, c.in("P"));
        assertThat(-e.moved(elements / 2, 1)).isCloseTo(c.out("delta"), EXACT);
        assertThat(e.bending(elements / 2, 0) / c.wire().sectionModulus()).isCloseTo(c.out("sigma"), EXACT);
    }

    /** ISO 15841 bends wire on supports 10 mm apart: k = 48 EI / L³. */
    @ParameterizedTest
    @CsvSource({"0.3556, 6.782", "0.4064, 11.569", "0.4572, 18.531", "0.508, 28.245"})
    void threePointStiffnessOnTenMillimetres(double d, double newtonPerMm) {
        var wire = new WireSpec(d, 180_000, 0.3);
        double k = 1 / -threePoint(wire, 10, 4, 1).moved(2, 1);
        assertThat(k).isCloseTo(newtonPerMm, Percentage.withPercentage(0.01));
    }

    private static Equilibrium threePoint(WireSpec wire, double span, int elements, double load) {
        var bench = Bench.chain(Bench.straight(span, elements), wire.section());
        return bench.hold(0, 0, 1, 2, 3)
                .hold(bench.last(), 1, 2)
                .load(elements / 2, 1, -load)
                .linear();
    }

    @Test
    void endCoupleTwistAndTension() {
        double l = 12;
        var bench = Bench.chain(Bench.straight(l, 5), Bench.WIRE.section()).clamp(0);
        Equilibrium e = bench.load(5, 5, 3).load(5, 3, 2).load(5, 0, 7).linear();
        double gj = EI / 1.3;
        assertThat(e.moved(5, 1)).isCloseTo(3 * l * l / (2 * EI), EXACT);
        assertThat(Bench.rotation(e, 5, 2)).isCloseTo(3 * l / EI, EXACT);
        assertThat(Bench.rotation(e, 5, 0)).isCloseTo(2 * l / gj, EXACT);
        assertThat(e.moved(5, 0)).isCloseTo(7 * l / (Bench.WIRE.e() * Bench.WIRE.area()), EXACT);
        assertThat(e.torsion(2)).isCloseTo(2, within(1e-9));
        assertThat(e.tension(2)).isCloseTo(7, within(1e-9));
    }

    @Test
    void bothEndsClampedAndGuidedEnd() {
        double l = 12;
        var clamped = Bench.chain(Bench.straight(l, 4), Bench.WIRE.section())
                .clamp(0)
                .clamp(4)
                .load(2, 2, 1);
        assertThat(clamped.linear().moved(2, 2)).isCloseTo(Math.pow(l, 3) / (192 * EI), EXACT);
        assertThat(clamped.linear().bending(0, 0)).isCloseTo(l / 8, EXACT);
        var guided = Bench.chain(Bench.straight(l, 4), Bench.WIRE.section())
                .clamp(0)
                .hold(4, 3, 4, 5)
                .load(4, 2, 1);
        assertThat(guided.linear().moved(4, 2)).isCloseTo(Math.pow(l, 3) / (12 * EI), EXACT);
        assertThat(guided.linear().bending(0, 0)).isCloseTo(l / 2, EXACT);
    }

    @Test
    void aWireNobodyHoldsIsRefused() {
        var bench = Bench.chain(Bench.straight(10, 4), Bench.WIRE.section())
                .hold(0, 0, 1, 2)
                .load(4, 1, 1);
        var solver = new FrameSolver(bench.frame, bench.held);
        assertThat(solver.linear(bench.imposed, bench.loads)).isEmpty();
        assertThat(solver.failure()).contains("not held");
    }
}
