package dev.fairlead.measure.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Bite;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PositionTest {

    /** Independent computation: 1.53 to 1.64 mm per mm for W 43 to 46 and D 23 to 27; 1.618 at W 50, D 30. */
    @Test
    void gainOfBetaArches() {
        assertThat(PerimeterGain.perMm(new BetaArch(50, 30))).isEqualTo(1.618, within(6e-4));
        assertThat(PerimeterGain.of(new BetaArch(44, 24), 1)).isEqualTo(1.584667, within(1e-4));
        for (double w = 43; w <= 46; w++) {
            for (double d = 23; d <= 27; d++) {
                double gain = PerimeterGain.perMm(new BetaArch(w, d));
                assertThat(gain).isBetween(1.525, 1.645).isLessThan(PublishedGain.RULE);
            }
        }
    }

    /** Mutinelli, Manfredi & Cozzani 2000: 2 mm on the occlusal plane; the rule of thumb says 4.0. */
    @ParameterizedTest
    @CsvSource({"PARABOLA, 3.02", "ELLIPSE, 2.42", "CIRCLE, 2.42", "HYPERBOLA, 3.22", "CATENARY, 4.14"})
    void publishedGainOfTwoMillimetres(PublishedGain curve, double gain) {
        assertThat(2 * curve.perMm()).isEqualTo(gain, within(1e-9));
    }

    /**
     * Whole plan: lower incisors 23.0, 22.0 a side (Tanaka & Johnston), available 64.0, advance 1.5 mm: the model
     * decides.
     */
    @Test
    void modelOfGainDecidesAThreeMillimetreShortage() {
        double shortage = 64.0 - (23.0 + 2 * (23.0 / 2 + 10.5));
        assertThat(shortage).isEqualTo(-3.0, within(1e-12));
        assertThat(shortage + 1.5 * PublishedGain.RULE).isEqualTo(0, within(1e-12));
        assertThat(shortage + 1.5 * PublishedGain.PARABOLA.perMm()).isEqualTo(-0.735, within(1e-9));
    }

    private static Tipping upright(double radius) {
        return new Tipping(radius, 0);
    }

    /** Closed form asin(a/R), printed 2.865984, 2.605251 and 2.388015 degrees for 1 mm. */
    @ParameterizedTest
    @CsvSource({"20, 2.865984", "22, 2.605251", "24, 2.388015"})
    void uprightIncisorTipsByTheArcsine(double radius, double degrees) {
        Tipping tipping = upright(radius);
        assertThat(tipping.inclinationChange(1)).isEqualTo(degrees, within(1e-6));
        assertThat(tipping.inclinationChange(-1)).isEqualTo(-degrees, within(1e-6));
    }

    @Test
    void tippingKeepsTheDistanceFromItsCentre() {
        Random random = new Random(51);
        for (int n = 0; n < 50; n++) {
            Tipping t = new Tipping(18 + 8 * random.nextDouble(), -10 + 40 * random.nextDouble());
            double a = 4 * random.nextDouble();
            double before = Math.toRadians(t.leanDegrees());
            double x = t.radius() * Math.sin(before) + a;
            double y = t.radius() * Math.cos(before) - t.edgeDrop(a);
            assertThat(Math.hypot(x, y)).isEqualTo(t.radius(), within(1e-9));
            assertThat(Math.toDegrees(Math.atan2(x, y)) - t.leanDegrees())
                    .isEqualTo(t.inclinationChange(a), within(1e-9));
            assertThat(t.inclinationChange(-a) < 0 || a == 0).isTrue();
        }
        // 3-4-5 triangle: R 5, upright, 3 mm forward: the edge sinks by 1 mm
        assertThat(upright(5).edgeDrop(3)).isEqualTo(1, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> upright(5).inclinationChange(6));
        assertThatIllegalArgumentException().isThrownBy(() -> upright(0));
    }

    /** Tweed: FMIA 60 present, 65 wanted uses 4.0 mm, 0.8 mm per degree; the three angles make a triangle. */
    @Test
    void tweedsHeadPlateCorrection() {
        assertThat(5 * Cephalometry.TWEED_MM_PER_DEGREE).isEqualTo(4.0, within(1e-12));
        assertThat(Cephalometry.fmia(25, 90)).isEqualTo(65);
    }

    /**
     * Artun & Grobety 2001, 45 children: edge 3.87 mm and neck of the crown 2.18 mm forward; with a crown of 9 mm both
     * turn about a point 20.6 mm below the edge, 2.8 degrees per mm. The factor taken lies in the published spread.
     */
    @Test
    void tippingIsThatOfGrowingChildren() {
        double radius = 9 / (1 - 2.18 / 3.87);
        assertThat(radius).isEqualTo(20.6, within(0.05));
        assertThat(upright(radius).inclinationChange(3.87) / 3.87).isEqualTo(2.8, within(0.05));
        assertThat(Tipping.DEGREES_PER_MM).isBetween(2.5, 3.6).isEqualTo(6.1 / 2.1, within(0.05));
        assertThat(Tipping.MOST_DEGREES_PER_MM).isEqualTo(8.6 / 2.4, within(0.05));
    }

    /** A turn of one millimetre at the end of a lever: 57.3 degrees over its length. */
    @ParameterizedTest
    @CsvSource({"13, 4.4", "15, 3.8", "18, 3.2", "20.5, 2.8"})
    void aShorterLeverTurnsFurther(double lever, double degrees) {
        assertThat(upright(lever).inclinationChange(1)).isEqualTo(degrees, within(0.05));
    }

    /**
     * Downs 1948: lower incisors +1.4 degrees from the perpendicular of the mandibular plane and +14.5 from that of the
     * occlusal plane, 13.1 apart: what the lean is taken from must give his second figure from his first.
     */
    @Test
    void theLeanIsThatFromTheOcclusalPlane() {
        Case c = SampleCase.full()
                .set("/headFilm/incisorMandibular", 91.4)
                .set("/headFilm/occlusalMandibular", 13.1)
                .set("/headFilm/tippingRadius", 20)
                .set("/bite/overbite", 3)
                .set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 2)
                .build();
        Bite bite = (Bite) Measures.of(c, Optional.empty(), Workbook.none()).facts().stream()
                .filter(f -> f instanceof Bite)
                .findFirst()
                .orElseThrow();
        assertThat(bite.overbiteAfter().value()).isEqualTo(3 - new Tipping(20, 14.5).edgeDrop(2), within(1e-9));
    }

    /**
     * Closed form for one fold opened by 1 mm, W 44, D 24, lateral at 7.765 mm: midline x/2, laterals x(1/2 +- xl/W), x
     * D/W.
     */
    @Test
    void oneSidedOpening() {
        SidedPlan.Front front = new SidedPlan(new Sides(0, 1)).front(44, 24, 7.765);
        assertThat(front.midline()).isEqualTo(0.5, within(1e-12));
        assertThat(front.laterals().right()).isEqualTo(0.6764773, within(1e-7));
        assertThat(front.laterals().left()).isEqualTo(0.3235227, within(1e-7));
        assertThat(front.sideways()).isEqualTo(0.5454545, within(1e-7));
        assertThat(front.yaw()).isEqualTo(1.301953, within(1e-6));
        SidedPlan.Front other = new SidedPlan(new Sides(1, 0)).front(44, 24, 7.765);
        assertThat(other.laterals()).isEqualTo(front.laterals().mirrored());
        assertThat(other.sideways()).isEqualTo(-front.sideways());
        assertThat(other.yaw()).isEqualTo(-front.yaw());
    }

    @Test
    void equalOpeningMovesTheFrontStraight() {
        SidedPlan.Front front = new SidedPlan(Sides.both(1.5)).front(44, 24, 8);
        assertThat(front).isEqualTo(new SidedPlan.Front(1.5, Sides.both(1.5), 0, 0));
    }

    /**
     * The exact turn of a rigid wire about the other tube differs from the first-order result by the square of the turn
     * only.
     */
    @Test
    void firstOrderAgreesWithTheExactTurn() {
        double w = 44;
        double d = 24;
        double x = 0.2;
        double angle = Math.asin(x / w);
        double px = -w / 2 - 8;
        // front at the right lateral, 8 mm to the right of the midline, seen from the left tube; turned clockwise
        double forward = d * Math.cos(angle) - px * Math.sin(angle) - d;
        double sideways = px * Math.cos(angle) + d * Math.sin(angle) - px;
        SidedPlan.Front front = new SidedPlan(new Sides(0, x)).front(w, d, 8);
        assertThat(front.laterals().right()).isEqualTo(forward, within(1e-3));
        assertThat(front.sideways()).isEqualTo(sideways, within(1e-3));
    }

    @Test
    void openingsForTwoUnequalNeeds() {
        Random random = new Random(52);
        for (int n = 0; n < 50; n++) {
            Sides wanted = new Sides(3 * random.nextDouble(), 3 * random.nextDouble());
            SidedPlan plan = SidedPlan.forLaterals(wanted, 45, 8);
            SidedPlan.Front front = plan.front(45, 25, 8);
            assertThat(front.laterals().left()).isEqualTo(wanted.left(), within(1e-9));
            assertThat(front.laterals().right()).isEqualTo(wanted.right(), within(1e-9));
            assertThat(front.midline()).isEqualTo(wanted.mean(), within(1e-9));
        }
        assertThat(SidedPlan.forLaterals(new Sides(0, 2), 44, 8).possible()).isFalse();
        assertThat(SidedPlan.forLaterals(new Sides(1, 1.2), 44, 8).possible()).isTrue();
        assertThat(new SidedPlan(new Sides(0, 1)).possible()).isTrue();
        assertThat(new SidedPlan(new Sides(1, 0)).possible()).isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> SidedPlan.forLaterals(Sides.both(1), 44, 22));
        assertThatIllegalArgumentException().isThrownBy(() -> SidedPlan.forLaterals(Sides.both(1), 44, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new SidedPlan(Sides.both(1)).front(44, 0, 8));
        assertThatIllegalArgumentException().isThrownBy(() -> new SidedPlan(Sides.both(1)).front(44, 24, 22));
    }
}
