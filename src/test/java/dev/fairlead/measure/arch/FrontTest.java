package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Front;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Side;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Form and need of whole cases against closed forms and quadrature of its own: the beta function of Braun, Hnat, Fender
 * &amp; Legan 1998 and the polynomial Y = A X⁶ + B X² of Noroozi, Nik &amp; Saeeda 2001 (both Angle Orthodontist),
 * written down here anew.
 */
class FrontTest {
    private static final int STEPS = 200_000;

    static Front front(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept()).front().orElseThrow();
    }

    /** Length of y(x) from a to b by the trapezoid rule on small chords. */
    private static double length(DoubleUnaryOperator y, double a, double b) {
        double sum = 0;
        double before = y.applyAsDouble(a);
        for (int i = 1; i <= STEPS; i++) {
            double here = y.applyAsDouble(a + (b - a) * i / STEPS);
            sum += Math.hypot((b - a) / STEPS, here - before);
            before = here;
        }
        return sum;
    }

    /** Depth behind the front at x by the polynomial through canines (13, 6) and molars (22, 24) of the sample case. */
    private static double behind(double x) {
        double c = 13 * 13;
        double m = 22 * 22;
        double a = (24 / m - 6 / c) / (m * m - c * c);
        double b = 6 / c - a * c * c;
        return a * Math.pow(x, 6) + b * x * x;
    }

    @Test
    void widthAndDepthAloneGiveTheBetaFunction() {
        Front f = front(SampleCase.full().without("/arch/canineWidth").without("/arch/canineDepth"));
        assertThat(f.arch().basis()).isEqualTo(Basis.WIDTHS);
        // QUADPACK on the same formula gives 69.288749
        assertThat(f.arch().perimeter().value()).isEqualTo(69.288749, within(1e-4));
        double own = length(x -> 24 * Math.pow(1 - Math.pow(x / 22, 2), 0.8), -22, 22);
        assertThat(own).isEqualTo(69.288749, within(5e-3));
        assertThat(f.arch().formIndex().known()).isFalse();
    }

    @Test
    void caninesGiveThePolynomialThroughThem() {
        Front f = front(SampleCase.full());
        assertThat(f.arch().basis()).isEqualTo(Basis.WIDTHS_AND_CANINES);
        assertThat(f.arch().perimeter().value()).isEqualTo(length(FrontTest::behind, -22, 22), within(1e-3));
        // (Dc / Dm) / (Wc / Wm) = (6 / 24) / (26 / 44)
        assertThat(f.arch().formIndex().value()).isEqualTo(6.0 / 24 / (26.0 / 44), within(1e-9));
        assertThat(f.arch().drawn().orElseThrow().fits())
                .extracting(x -> x.family().name())
                .contains("BETA", "CATENARY", "CONIC", "SIXTH_DEGREE", "SPLINE");
    }

    /**
     * The lateral stands 11.6 mm along the curve on the left; moved straight forward by the need, it is farther from
     * the molar by the shortage.
     */
    @Test
    void neededAdvanceOpensJustTheRoomThatIsLacking() {
        PositionResult.SideNeed left = front(SampleCase.full()).position().left();
        double lateral = 5.55 + 6.05;
        double low = 0;
        double high = 22;
        while (high - low > 1e-9) {
            double x = (low + high) / 2;
            if (length(FrontTest::behind, 0, x) < lateral) {
                low = x;
            } else {
                high = x;
            }
        }
        double across = 22 - low;
        double along = 24 - behind(low);
        double before = Math.hypot(across, along);
        double after = Math.hypot(across, along + left.chord().value());
        assertThat(after - before).isEqualTo(left.rule().value(), within(1e-3));
    }

    /**
     * The rule of thumb: 2 mm of arch for 1 mm of advance, 1 mm a side; smooth curves give 16 to 31 % less, so that
     * more is needed.
     */
    @Test
    void ruleOfThumbAsksForLess() {
        for (double shortOf : new double[] {19.0, 20.0, 20.5}) {
            Front f = front(SampleCase.full().set("/space/left", shortOf));
            PositionResult.SideNeed n = f.position().left();
            assertThat(n.chord().value() / n.rule().value())
                    .as("space " + shortOf)
                    .isBetween(1.05, 1.35);
            assertThat(n.alongArch().value() / n.rule().value())
                    .as("space " + shortOf)
                    .isBetween(1.05, 2.0);
        }
    }

    /**
     * Along the arch: the curve of the same form, deeper by the need, is longer between lateral and molar by what is
     * lacking.
     */
    @Test
    void neededAlongTheArchLengthensTheCurve() {
        Front f = front(SampleCase.full().without("/arch/canineWidth").without("/arch/canineDepth"));
        PositionResult.SideNeed left = f.position().left();
        double lateral = 5.55 + 6.05;
        double deeper = 24 + left.alongArch().value();
        double half = length(x -> 24 * Math.pow(1 - Math.pow(x / 22, 2), 0.8), 0, 22);
        double longer = length(x -> deeper * Math.pow(1 - Math.pow(x / 22, 2), 0.8), 0, 22);
        assertThat(longer - lateral - (half - lateral)).isEqualTo(left.rule().value(), within(5e-3));
        // more room needs less advance: the error of the space counts with the slope of the need, by differences
        CaseBuilder wider = SampleCase.full()
                .without("/arch/canineWidth")
                .without("/arch/canineDepth")
                .set("/space/left", 20.6);
        double slope = (front(wider).position().left().alongArch().value()
                        - left.alongArch().value())
                / 0.1;
        assertThat(slope).isNegative();
        double sd = left.rule().part("/space/left");
        assertThat(left.alongArch().part("/space/left")).isEqualTo(-slope * sd, within(0.02 * Math.abs(slope * sd)));
    }

    @Test
    void moreCrowdingNeedsMoreAdvance() {
        double before = Double.NEGATIVE_INFINITY;
        for (double space = 22; space >= 17; space -= 0.5) {
            double needed = front(SampleCase.full().set("/space/left", space))
                    .position()
                    .left()
                    .chord()
                    .value();
            assertThat(needed).as("space " + space).isGreaterThan(before);
            before = needed;
        }
        Front wide = front(SampleCase.full().incisors(6.4, 5.9, 6.0, 6.5));
        Front narrow = front(SampleCase.full());
        assertThat(wide.position().equalPlan().value())
                .isGreaterThan(narrow.position().equalPlan().value());
    }

    @Test
    void noRoomLackingNeedsNoAdvance() {
        PositionResult p = front(SampleCase.full().set("/space/left", 26).set("/space/right", 26))
                .position();
        assertThat(p.left().chord().value()).isNegative();
        assertThat(p.equalPlan().value()).isZero();
        assertThat(p.side(Side.RIGHT).spare().value()).isGreaterThan(1.5);
    }
}
