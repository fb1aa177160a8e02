package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import dev.fairlead.measure.mechanics.solver.FrameSolver;
import org.assertj.core.data.Percentage;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The co-rotational model against exact elastica solutions and a published spatial benchmark. */
class LargeDeflectionTest {
    private static final double EI = Bench.WIRE.e() * Bench.WIRE.inertia();
    private static final double L = 20;
    private static final int N = 20;

    /**
     * Tip of a cantilever under a dead transverse load: K. Bisshopp and D. Drucker, Quart. Appl. Math. 3 (1945) 272.
     */
    private record Elastica(double vertical, double horizontal, double tipAngle) {
        static Elastica of(double alpha) {
            double phi = new BracketingNthOrderBrentSolver(1e-14, 5)
                    .solve(200, p -> length(p) - Math.sqrt(alpha), 1e-9, Math.PI / 2 - 1e-9);
            double m = (1 + Math.sin(phi)) / 2;
            double theta = Math.asin(1 / Math.sqrt(2 * m));
            double e = LegendreEllipticIntegral.bigE(m) - LegendreEllipticIntegral.bigE(theta, m);
            return new Elastica(1 - 2 * e / Math.sqrt(alpha), Math.sqrt(2 * Math.sin(phi) / alpha), phi);
        }

        private static double length(double phi) {
            double m = (1 + Math.sin(phi)) / 2;
            return LegendreEllipticIntegral.bigK(m) - LegendreEllipticIntegral.bigF(Math.asin(1 / Math.sqrt(2 * m)), m);
        }
    }

    private static Bench cantilever(int elements) {
        return Bench.chain(Bench.straight(L, elements), Bench.stiffAxially(Bench.WIRE))
                .clamp(0);
    }

    @ParameterizedTest
    @CsvSource({
        "0.25, 0.08275, 0.99588, 7.1214",
        "0.5, 0.16214, 0.98408, 14.0107",
        "0.75, 0.23562, 0.96603, 20.4847",
        "1, 0.30172, 0.94357, 26.4335",
        "1.5, 0.41098, 0.89206, 36.6429",
        "2, 0.49346, 0.83936, 44.7910",
        "3, 0.60325, 0.74558, 56.4946",
        "4, 0.66996, 0.67106, 64.2423",
        "5, 0.71379, 0.61237, 69.6355",
        "6, 0.74457, 0.56541, 73.5504",
        "8, 0.78498, 0.49517, 78.7491",
        "10, 0.81061, 0.44500, 81.9493",
        "15, 0.84772, 0.36471, 86.0491"
    })
    void ellipticIntegralsGiveThePublishedTable(double alpha, double vertical, double horizontal, double degrees) {
        var e = Elastica.of(alpha);
        assertThat(e.vertical()).isCloseTo(vertical, within(6e-6));
        assertThat(e.horizontal()).isCloseTo(horizontal, within(6e-6));
        assertThat(Math.toDegrees(e.tipAngle())).isCloseTo(degrees, within(6e-5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.25", "0.5", "1", "2"})
    void expectedNumbersOfTheReferenceCase(String alpha) {
        var expected = ReferenceCase.of("M06").outputs().get("PL2/EI=" + alpha);
        var e = Elastica.of(Double.parseDouble(alpha));
        assertThat(e.vertical()).isCloseTo(expected.get("vertical_over_L").doubleValue(), within(1e-7));
        assertThat(e.horizontal()).isCloseTo(expected.get("horizontal_over_L").doubleValue(), within(1e-6));
        assertThat(Double.parseDouble(alpha) / 3 / e.vertical())
                .isCloseTo(expected.get("linear_over_exact").doubleValue(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2, 5, 10})
    void tipLoad(double alpha) {
        var bench = cantilever(N).load(N, 1, alpha * EI / (L * L));
        Equilibrium e = bench.large();
        var exact = Elastica.of(alpha);
        assertThat(e.moved(N, 1) / L).isCloseTo(exact.vertical(), Percentage.withPercentage(0.05));
        assertThat(1 + e.moved(N, 0) / L).isCloseTo(exact.horizontal(), Percentage.withPercentage(0.05));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 4})
    void anyDirectionInSpace(double alpha) {
        double[] plane = {Math.cos(0.7), Math.sin(0.7)};
        var bench =
                cantilever(N).load(N, 1, alpha * EI / (L * L) * plane[0]).load(N, 2, alpha * EI / (L * L) * plane[1]);
        Equilibrium e = bench.large();
        double exact = Elastica.of(alpha).vertical() * L;
        assertThat(e.moved(N, 1)).isCloseTo(exact * plane[0], Percentage.withPercentage(0.06));
        assertThat(e.moved(N, 2)).isCloseTo(exact * plane[1], Percentage.withPercentage(0.06));
    }

    /** An end couple 2 pi EI / L rolls a straight wire up into a full circle. */
    @Test
    void rollsUpIntoACircle() {
        var bench = cantilever(N).load(N, 5, 2 * Math.PI * EI / L);
        // a couple about a fixed axis has no potential once the wire may leave the plane
        for (int node = 1; node <= N; node++) {
            bench.hold(node, 2, 3, 4);
        }
        double[] steps = new double[10];
        for (int i = 0; i < 10; i++) {
            steps[i] = (i + 1) / 10.0;
        }
        Equilibrium e = bench.follow(steps).get(1.0);
        assertThat(L + e.moved(N, 0)).isCloseTo(0, within(1e-4));
        assertThat(e.moved(N, 1)).isCloseTo(0, within(1e-4));
        assertThat(e.moved(N / 2, 1)).isCloseTo(L / Math.PI, Percentage.withPercentage(0.5));
    }

    /**
     * Bend of 45 degrees, radius 100, unit square, E 1e7, dead load 600 out of plane: K.-J. Bathe and S. Bolourchi,
     * Int. J. Numer. Methods Eng. 14 (1979) 961. Tip coordinates scatter among publications within about 0.3 (from
     * memory).
     */
    @Test
    void fortyFiveDegreeBend() {
        double e = 1e7;
        var section = new SectionStiffness(e, e / 12, e / 12, e / 2 * 0.1406);
        int n = 32;
        var bench =
                Bench.chain(Bench.arc(100, Math.PI / 4, n), section).clamp(0).load(n, 2, 600);
        Equilibrium q = bench.follow(0.25, 0.5, 0.75, 1).get(1.0);
        double[] x = q.state().position;
        assertThat(x[3 * n + 1]).isBetween(15.4, 15.95);
        assertThat(x[3 * n]).isBetween(46.7, 47.3);
        assertThat(x[3 * n + 2]).isBetween(53.3, 53.7);
    }

    /** Euler: a straight strut is in stable balance just below its critical load and not just above it. */
    @ParameterizedTest
    @CsvSource({"pinned, 1", "cantilever, 2", "clamped, 0.5", "clamped-pinned, 0.699"})
    void eulerBuckling(String ends, double k) {
        double critical = Math.PI * Math.PI * EI / Math.pow(k * L, 2);
        assertThat(strut(ends, 0.995 * critical)).isEmpty();
        assertThat(strut(ends, 1.01 * critical).orElseThrow()).contains("not stable");
    }

    private static java.util.Optional<String> strut(String ends, double load) {
        var bench = Bench.chain(Bench.straight(L, N), Bench.WIRE.section());
        bench.hold(0, 0, 1, 2, 3);
        if (!ends.equals("pinned")) {
            bench.hold(0, 4, 5);
        }
        if (!ends.equals("cantilever")) {
            bench.hold(N, 1, 2);
        }
        if (ends.equals("clamped")) {
            bench.hold(N, 4, 5);
        }
        bench.load(N, 0, -load);
        return new FrameSolver(bench.frame, bench.held)
                .follow(bench.imposed, bench.loads, new double[] {1}, (f, e) -> {});
    }

    /** Euler's critical loads of 0.018 in wire, E 180 GPa, pinned. */
    @ParameterizedTest
    @CsvSource({"10, 38.10", "20, 9.526", "30, 4.234"})
    void criticalLoadsOfAWire(double length, double newton) {
        var wire = new WireSpec(0.4572, 180_000, 0.3);
        assertThat(Math.PI * Math.PI * wire.e() * wire.inertia() / (length * length))
                .isCloseTo(newton, Percentage.withPercentage(0.02));
    }

    /**
     * Buckled cantilever with end slope a (S. Timoshenko and J. Gere, Theory of Elastic Stability): P/Pcr, x/L, y/L.
     */
    @ParameterizedTest
    @CsvSource({
        "1.0637, 0.8812, 0.4222",
        "1.1517, 0.7410, 0.5932",
        "1.2939, 0.5594, 0.7195",
        "1.5184, 0.3490, 0.7915",
        "1.8848, 0.1232, 0.8032"
    })
    void beyondBuckling(double ratio, double x, double y) {
        double p = ratio * Math.PI * Math.PI * EI / (4 * L * L);
        // a side load of a ten-thousandth picks the branch
        var bench = cantilever(40).load(40, 0, -p).load(40, 1, 1e-4 * p);
        double[] steps = new double[20];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = (i + 1.0) / steps.length;
        }
        Equilibrium e = bench.follow(steps).get(1.0);
        assertThat(1 + e.moved(40, 0) / L).isCloseTo(x, within(0.006));
        assertThat(e.moved(40, 1) / L).isCloseTo(y, within(0.006));
    }
}
