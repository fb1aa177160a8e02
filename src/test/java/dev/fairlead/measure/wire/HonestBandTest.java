package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.mechanics.answer.Solution;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The band by draws, the moments on a molar and force against stand-off, held to closed forms and hand arithmetic. */
class HonestBandTest {
    private static final double Z95 = 1.6448536269514722;

    private static CaseBuilder base() {
        return BaseCase.of().set("/wire/modulus", 180).set("/plan/standOff", 1.5);
    }

    /** A case of which nothing is measured that forces follow, so that the stand-offs alone have an error. */
    private static ForceLaw law(Measured left, Measured right) {
        CaseBuilder b =
                base().without("/arch/molarWidth").without("/arch/molarDepth").without("/wire/beakRadius");
        for (String side : new String[] {"left", "right"}) {
            b.without("/bench/" + side + "/bendRadius").without("/bench/" + side + "/length");
        }
        b.without("/landmarks");
        Case c = b.build();
        return ForceLaw.of(c, left, right, PatientArch.of(c));
    }

    private static Measured read(String source, double mm, double sd) {
        return Measured.of(mm, Unit.MM, source, sd);
    }

    @Test
    void drawsOfAForceAreThePowersOfANormal() {
        // low goes with the sum of both stand-offs to the power 0.60, high to 0.66; the sum is normal with sd 0.2 sqrt
        // 2
        DrawnForces d = law(read("left", 1.5, 0.2), read("right", 1.5, 0.2)).drawn(200, 300, 600);
        double share = Z95 * 0.2 * Math.sqrt(2) / 3;
        assertThat(d.low().p5()).isCloseTo(200 * Math.pow(1 - share, 0.60), within(1.0));
        assertThat(d.low().p50()).isCloseTo(200, within(0.6));
        assertThat(d.high().p95()).isCloseTo(300 * Math.pow(1 + share, 0.66), within(1.5));
    }

    @Test
    void oneErrorThatBothSidesShareDoesNotCancel() {
        // a ruler that is off is off on both sides: the sum then has twice the error of a side
        DrawnForces d = law(read("ruler", 1.5, 0.2), read("ruler", 1.5, 0.2)).drawn(200, 300, 600);
        assertThat(d.low().p5()).isCloseTo(200 * Math.pow(1 - Z95 * 0.4 / 3, 0.60), within(1.0));
    }

    @Test
    void nothingUncertainIsNoBand() {
        DrawnForces d =
                law(Measured.exact(1.5, Unit.MM), Measured.exact(1.5, Unit.MM)).drawn(200, 300, 600);
        assertThat(d.low().p5()).isEqualTo(200);
        assertThat(d.stress().p95()).isEqualTo(600);
    }

    @Test
    void theStressOfTwoUncertainSidesIsHigherThanAtTheirReadings() {
        // the larger of the two decides, by their mean of the power 8: to second order its mean is higher by
        // (8 - 1) sd² / (4 x 1.5) = 0.047 mm, and the stress goes with the power 0.79 of it
        DrawnForces d = law(read("left", 1.5, 0.2), read("right", 1.5, 0.2)).drawn(200, 300, 600);
        double mean = 600 * Math.pow(1 + 7 * 0.04 / 6 / 1.5, 0.79);
        assertThat(d.stress().p50()).isCloseTo(mean, within(6.0)).isGreaterThan(605);
        Forces first = law(read("left", 1.5, 0.2), read("right", 1.5, 0.2))
                .withErrors(new Forces(
                        Measured.exact(200, Unit.GF),
                        Measured.exact(300, Unit.GF),
                        Measured.exact(600, Unit.MPA),
                        Measured.notApplicable()));
        assertThat(d.stress().p95())
                .isGreaterThan(600 + Z95 * first.peakStress().sd() + 5);
    }

    @Test
    void theBandOfAWireHoldsItsEndsWithinItsDraws() {
        Case c = base().build();
        WireForces f = WireForces.planned(c);
        DrawnForces d = f.drawn(c).orElseThrow();
        double low = Unit.NEWTON.to(Unit.GF, f.band().orElseThrow().low());
        double high = Unit.NEWTON.to(Unit.GF, f.band().get().high());
        assertThat(d.low().p5()).isLessThan(low);
        assertThat(d.high().p95()).isGreaterThan(high);
        // near enough to linear in the middle: the spread is that of the first-order error
        assertThat(d.low().p95() - d.low().p5())
                .isCloseTo(2 * Z95 * f.end(c, false).sd(), Percentage.withPercentage(15));
        assertThat(d.stress().p5()).isLessThan(f.judgedStress());
        assertThat(WireForces.planned(c).drawn(c))
                .as("the same draws every time")
                .contains(d);
    }

    @Test
    void forcesDoNotJumpBetweenStandOffsThatHardlyDiffer() {
        // the force rises by about 2 N per mm here (reference model: 2.3 held, 1.5 hinged): 0.01 mm is 2 gf, not 10
        double before = high(1.02);
        double after = high(1.03);
        double next = high(1.04);
        assertThat(after - before).isBetween(0.5, 4.0);
        assertThat(next - after).isCloseTo(after - before, within(0.2));
    }

    private static double high(double standOff) {
        Case c = base().set("/plan/standOff", standOff).build();
        return Unit.NEWTON.to(
                Unit.GF, WireForces.planned(c).band().orElseThrow().high());
    }

    @Test
    void whatTipsAMolarIsItsCoupleAndTheForceTimesTheDepth() {
        ForceBand b = WireForces.planned(base().build()).band().orElseThrow();
        for (Solution s : new Solution[] {b.hinged(), b.held()}) {
            double distal = -s.right().force().y();
            assertThat(distal).as("half of the labial force").isCloseTo(s.forward() / 2, Percentage.withPercentage(1));
            Measured tipping = MolarMoment.tipping(s.right());
            assertThat(tipping.value()).isCloseTo(MolarMoment.couple(s.right()) + 9 * distal, within(1e-9));
            assertThat(tipping.sd()).isCloseTo(1.5 * distal, within(1e-9));
        }
        // a hinge bears no couple; a held tail has about 7 N mm at 1.5 mm by the reference model, linear, and less with
        // large rotations
        assertThat(MolarMoment.couple(b.hinged().right())).isCloseTo(0, within(1e-6));
        assertThat(Math.abs(MolarMoment.couple(b.held().right()))).isBetween(4.0, 7.5);
        assertThat(MolarMoment.couple(b.held().right()))
                .isCloseTo(MolarMoment.couple(b.held().left()), within(1e-3));
    }

    @Test
    void theCurveIsTheBandAtEveryStandOff() {
        StandOffCurve curve = StandOffCurve.of(base().build()).orElseThrow();
        assertThat(curve.at(0).high()).isCloseTo(0, within(1e-9));
        for (double s : new double[] {0.5, 1.1, 1.5, 2.0}) {
            WireForces f = WireForces.planned(base().set("/plan/standOff", s).build());
            StandOffCurve.Point p = curve.at(s);
            Percentage half = Percentage.withPercentage(0.7);
            assertThat(p.low())
                    .isCloseTo(Unit.NEWTON.to(Unit.GF, f.band().orElseThrow().low()), half);
            assertThat(p.high())
                    .isCloseTo(Unit.NEWTON.to(Unit.GF, f.band().get().high()), half);
            assertThat(p.stress()).isCloseTo(f.judgedStress(), half);
        }
        assertThat(curve.asked().high()).isCloseTo(curve.at(1.5).high(), within(1e-6));
        double at = curve.standOffFor(200).orElseThrow();
        assertThat((curve.at(at).low() + curve.at(at).high()) / 2).isCloseTo(200, within(1e-3));
        assertThat(curve.standOffFor(5000)).isEmpty();
    }

    @Test
    void eachSideHasItsOwnPlannedStandOff() {
        CaseBuilder sided =
                base().without("/plan/standOff").set("/plan/standOffRight", 2.0).set("/plan/standOffLeft", 1.0);
        WireForces f = WireForces.planned(sided.build());
        assertThat(f.standOffRight().value()).isEqualTo(2.0);
        assertThat(f.standOffLeft().value()).isEqualTo(1.0);
        WireGeometry g = WireGeometry.of(sided.build());
        // reference model: gap 1.74 mm and 35.4 degrees for 2.0 mm, 1.07 mm and 20.8 degrees for 1.0 mm
        assertThat(g.planned(Side.RIGHT).gap().value()).isCloseTo(1.74, within(0.006));
        assertThat(g.planned(Side.LEFT).gap().value()).isCloseTo(1.07, within(0.006));
        assertThat(g.planned(Side.RIGHT).angle().value()).isCloseTo(35.4, within(0.06));
        // what is said of both never stands in for a side that was forgotten
        Case half = base().set("/plan/standOffRight", 2.0).build();
        assertThat(WireForces.planned(half).missing()).contains("/plan/standOffLeft");
    }

    @Test
    void percentilesOfDrawsInAnyOrder() {
        double[] drawn = new double[101];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = i * 37 % 101;
        }
        assertThat(DrawnForces.Spread.of(drawn)).isEqualTo(new DrawnForces.Spread(5, 50, 95));
    }

    @Test
    void noDrawMakesALengthLessThanATwentiethOfItself() {
        // an error far larger than the stand-off: more than five in a hundred draws would be below nought
        DrawnForces d = law(read("ruler", 1.5, 10), read("ruler", 1.5, 10)).drawn(200, 300, 600);
        assertThat(d.low().p5()).isCloseTo(200 * Math.pow(0.05, 0.60), within(1e-6));
        assertThat(d.high().p5()).isCloseTo(300 * Math.pow(0.05, 0.66), within(1e-6));
    }

    @Test
    void aCurveNeedsAStandOffAndReachesAsFarAsItWasSolved() {
        assertThat(StandOffCurve.of(base().set("/plan/standOff", 0).build())).isEmpty();
        assertThat(StandOffCurve.of(base().without("/plan/standOff").build())).isEmpty();
        StandOffCurve curve = StandOffCurve.of(base().build()).orElseThrow();
        assertThat(curve.searchedTo()).isEqualTo(3);
        StandOffCurve.Point end = curve.at(3);
        double middle = (end.low() + end.high()) / 2;
        assertThat(curve.standOffFor(middle - 0.01).orElseThrow()).isCloseTo(3, within(1e-3));
        assertThat(curve.standOffFor(middle + 0.01)).isEmpty();
    }

    @Test
    void aWireIsPassiveBelowATwentiethOfAMillimetre() {
        assertThat(WireForces.planned(base().set("/plan/standOff", 0.049).build())
                        .failures())
                .singleElement()
                .asString()
                .contains("passive");
        assertThat(WireForces.planned(base().set("/plan/standOff", 0.05).build())
                        .band())
                .isPresent();
        Measured right = Measured.exact(0, Unit.MM);
        assertThat(WireForces.of(base().build(), right, Measured.exact(0.5, Unit.MM))
                        .band())
                .as("one side opened")
                .isPresent();
    }

    @Test
    void aCauseStandsWithoutTheNameOfItsVariant() {
        Measured far = Measured.exact(8, Unit.MM);
        assertThat(WireForces.of(base().build(), far, far).failures())
                .allSatisfy(why -> assertThat(why).doesNotContain(": ").matches("\\w.*"));
    }
}
