package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Lines beside an arch against the length of a parallel curve, L + h times the angle that the curve turns through
 * (Steiner 1840, any textbook of differential geometry).
 */
class OffsetArchTest {
    private static final double OUT = 1.5;

    private static OffsetArch beside(ArchCurve curve) {
        return new OffsetArch(curve, OUT, OUT, OUT);
    }

    @Test
    void besideHalfACircleLiesALargerHalfCircle() {
        OffsetArch line = beside(ConicArch.circle(44, 22));
        assertThat(line.perimeter()).isCloseTo(Math.PI * (22 + OUT), within(1e-6));
        for (double u = -1; u <= 1; u += 0.05) {
            assertThat(line.at(u).length()).isCloseTo(22 + OUT, within(1e-9));
        }
    }

    @Test
    void besideAParabolaTheLengthGrowsByItsTurning() {
        ConicArch parabola = ConicArch.parabola(44, 24);
        double turning = 2 * Math.atan(4 * 24 / 44.0);
        assertThat(beside(parabola).perimeter() - parabola.perimeter()).isCloseTo(OUT * turning, within(1e-6));
    }

    /** The published formula of the beta function walked in 200,000 chords, each point moved out along its normal. */
    @Test
    void besideTheBetaFunctionByNumerics() {
        double w = 44;
        double d = 24;
        int n = 100_000;
        double length = 0;
        double px = 0;
        double py = d + OUT;
        for (int i = 1; i <= n; i++) {
            // x = W/2 sin t, y = D cos(t)^1.6; towards the end the steps shrink with the square
            double q = 1 - (double) i / n;
            double angle = Math.PI / 2 * (1 - q * q * q);
            double x = w / 2 * Math.sin(angle);
            double y = d * Math.pow(Math.max(0, Math.cos(angle)), 1.6);
            double dx = w / 2 * Math.pow(Math.max(0, Math.cos(angle)), 0.4);
            double dy = -1.6 * d * Math.sin(angle);
            double norm = Math.hypot(dx, dy);
            double ox = x - OUT * dy / norm;
            double oy = y + OUT * dx / norm;
            length += Math.hypot(ox - px, oy - py);
            px = ox;
            py = oy;
        }
        assertThat(beside(new BetaArch(w, d)).perimeter()).isCloseTo(2 * length, within(2e-4));
    }

    @Test
    void aLineThatEndsOnTheArchGainsLess() {
        BetaArch arch = new BetaArch(44, 24);
        OffsetArch line = new OffsetArch(arch, 1.55, 0, 0);
        assertThat(line.at(-1).distance(arch.at(-1))).isCloseTo(0, within(1e-12));
        assertThat(line.at(0).y()).isCloseTo(24 + 1.55, within(1e-9));
        // 1.4403 mm a half, by 40,000 chords of the published formula worked out apart from this program
        assertThat((line.perimeter() - arch.perimeter()) / 2).isCloseTo(1.4403, within(5e-4));
    }

    @Test
    void sidesAreNotMixedUp() {
        OffsetArch line = new OffsetArch(new BetaArch(44, 24), 1.5, 1.2, 0);
        assertThat(line.at(1).x()).isCloseTo(22 + 1.2, within(1e-9));
        assertThat(line.at(-1).x()).isCloseTo(-22, within(1e-9));
        assertThat(line.mirrored().at(-1).x()).isCloseTo(-23.2, within(1e-9));
        assertThat(line.ruler().end()).isGreaterThan(-line.ruler().start());
    }
}
