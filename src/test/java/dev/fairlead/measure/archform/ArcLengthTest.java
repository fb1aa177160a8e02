package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arc lengths against closed forms and against values computed independently of this code. */
class ArcLengthTest {
    private static final Offset<Double> PRINTED = within(6e-4);

    /**
     * Lengths of the Braun 1998 beta function and their derivatives by depth and width, computed by another program.
     */
    @ParameterizedTest
    @CsvSource({
        "50, 30, 83.093, 1.618, 0.691",
        "53, 37, 96.663, 1.680, 0.651",
        "54.19, 28.10, 83.056, 1.551, 0.728",
        "56.37, 40.40, 104.574, 1.690, 0.644",
        "60, 40, 106.276, 1.662, 0.663"
    })
    void betaFunction(double w, double d, double length, double perDepth, double perWidth) {
        assertThat(new BetaArch(w, d).perimeter()).isEqualTo(length, PRINTED);
        assertThat(slope(h -> new BetaArch(w, d + h).perimeter())).isEqualTo(perDepth, PRINTED);
        assertThat(slope(h -> new BetaArch(w + h, d).perimeter())).isEqualTo(perWidth, PRINTED);
    }

    /** The written-out rule against Hipparchus, which finds its points as roots. */
    @Test
    void pointsAndWeightsOfTheRule() {
        Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(ArcRuler.POINTS.length);
        assertThat(ArcRuler.POINTS).containsExactly(rule.getFirst(), within(1e-15));
        assertThat(ArcRuler.WEIGHTS).containsExactly(rule.getSecond(), within(1e-15));
    }

    /**
     * Perimeter 69.28834 mm of W 44, D 24, and gain of 1.584667 and 3.187517 mm for 1 and 2 mm: independent
     * computation.
     */
    @Test
    void betaFunctionOfTheWorkedArch() {
        double before = new BetaArch(44, 24).perimeter();
        assertThat(before).isEqualTo(69.28834, within(1e-5 * 69.28834));
        assertThat(new BetaArch(44, 25).perimeter() - before).isEqualTo(1.584667, within(1e-4));
        assertThat(new BetaArch(44, 26).perimeter() - before).isEqualTo(3.187517, within(1e-4));
    }

    /** The same as y = D (1 - (2x/W)^2)^0.8, of an arch 44 mm wide and 24 mm deep. */
    private static double height(double x) {
        return 24 * Math.pow(1 - x * x / (22 * 22), 0.8);
    }

    /** Braun 1998 in its printed form, y = 3.0314 D (1/2 + x/W)^0.8 (1/2 - x/W)^0.8. */
    @Test
    void betaFunctionIsThePrintedFormula() {
        BetaArch arch = new BetaArch(54.19, 28.10);
        for (double u = -1; u <= 1; u += 0.125) {
            Point p = arch.at(u);
            double printed = 3.0314 * 28.10 * Math.pow(0.5 + p.x() / 54.19, 0.8) * Math.pow(0.5 - p.x() / 54.19, 0.8);
            assertThat(p.y()).isEqualTo(printed, within(4e-4));
        }
        assertThat(arch.at(1)).isEqualTo(new Point(54.19 / 2, 0));
        assertThat(arch.tangent(1).x()).isEqualTo(0, within(1e-12));
        assertThat(arch.tangent(1).y()).isEqualTo(-1, within(1e-12));
    }

    /**
     * Lengths and derivatives by depth of chord-fixed curves, computed by another program (its derivatives are
     * one-sided).
     */
    @ParameterizedTest
    @CsvSource({
        "PARABOLA, 26, 5.5, 28.833, 0.949",
        "PARABOLA, 26, 8, 31.553, 1.209",
        "PARABOLA, 26, 10, 34.128, 1.358",
        "PARABOLA, 45, 25, 70.410, 1.570",
        "PARABOLA, 50, 30, 81.765, 1.608",
        "CATENARY, 26, 5.5, 28.880, 0.976",
        "CATENARY, 26, 8, 31.694, 1.257",
        "CATENARY, 26, 10, 34.377, 1.416",
        "CATENARY, 45, 25, 71.337, 1.637",
        "CATENARY, 50, 30, 82.945, 1.675",
        "HALF_ELLIPSE, 26, 5.5, 30.267, 1.178",
        "HALF_ELLIPSE, 26, 8, 33.456, 1.360",
        "HALF_ELLIPSE, 26, 10, 36.282, 1.461",
        "HALF_ELLIPSE, 45, 25, 74.665, 1.611",
        "HALF_ELLIPSE, 50, 30, 86.572, 1.639",
        "CIRCLE, 26, 5.5, 28.999, 1.055",
        "CIRCLE, 26, 8, 32.134, 1.439",
        "CIRCLE, 26, 10, 35.276, 1.695",
        "CIRCLE, 45, 25, 75.837, 2.118",
        "CIRCLE, 50, 30, 89.066, 2.202"
    })
    void chordFixedCurves(ArchFamily family, double w, double d, double length, double perDepth) {
        assertThat(family.of(w, d).perimeter()).isEqualTo(length, PRINTED);
        assertThat(slope(h -> family.of(w, d + h).perimeter())).isEqualTo(perDepth, within(1.5e-3));
    }

    /**
     * Handbook closed forms of the arc lengths (parabola by asinh, circle, catenary) and the elliptic integral of the
     * ellipse.
     */
    @ParameterizedTest
    @CsvSource({"26, 5.5", "26, 8", "44, 24", "45, 25", "50, 30", "30, 45"})
    void closedForms(double w, double d) {
        double q = 4 * d / w;
        double parabola = w / 2 * (Math.sqrt(1 + q * q) + Math.log(q + Math.sqrt(1 + q * q)) / q);
        assertThat(ConicArch.parabola(w, d).perimeter()).isEqualTo(parabola, within(1e-9 * parabola));
        double r = (w * w / 4 + d * d) / (2 * d);
        double circle = 2 * r * Math.acos((r - d) / r);
        assertThat(ConicArch.circle(w, d).perimeter()).isEqualTo(circle, within(1e-9 * circle));
        CatenaryArch chain = CatenaryArch.of(w, d);
        double catenary = 2 * chain.a() * Math.sinh(w / (2 * chain.a()));
        assertThat(chain.depth()).isEqualTo(d, within(1e-10));
        assertThat(chain.perimeter()).isEqualTo(catenary, within(1e-9 * catenary));
        double major = Math.max(w / 2, d);
        double minor = Math.min(w / 2, d);
        double ellipse = 2 * major * LegendreEllipticIntegral.bigE(1 - minor * minor / (major * major));
        assertThat(ConicArch.halfEllipse(w, d).perimeter()).isEqualTo(ellipse, within(1e-9 * ellipse));
    }

    @Test
    void lengthFromTheMidlineFindsItsPoint() {
        BetaArch arch = new BetaArch(44, 24);
        assertThat(arch.atArcLength(0)).isEqualTo(new Point(0, 24));
        // the length up to x by summing 20000 chords of the printed formula
        double x = arch.atArcLength(8.3).x();
        double sum = 0;
        for (int i = 0; i < 20000; i++) {
            sum += Math.hypot(x / 20000, height(x * (i + 1) / 20000) - height(x * i / 20000));
        }
        assertThat(sum).isEqualTo(8.3, within(1e-7));
        assertThat(arch.atArcLength(-8.3).mirrored().distance(arch.atArcLength(8.3)))
                .isLessThan(1e-9);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> arch.atArcLength(34.7))
                .withMessageContaining("34.64");
    }

    @Test
    void refusesImpossibleSizes() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BetaArch(0, 24));
        assertThatIllegalArgumentException().isThrownBy(() -> new BetaArch(44, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new ConicArch(44, 24, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new SixthDegreeArch(44, -1, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new BetaArch(44, 24).points(1));
        assertThatIllegalArgumentException().isThrownBy(() -> new BetaArch(44, 24).at(1.01));
    }

    private static double slope(DoubleUnaryOperator length) {
        return (length.applyAsDouble(1e-3) - length.applyAsDouble(-1e-3)) / 2e-3;
    }
}
