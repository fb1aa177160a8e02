package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks, blank and opening against worked cases of a separate reference model and against plane geometry. */
class WireGeometryTest {
    private final WireGeometry base = WireGeometry.of(BaseCase.of().build());

    @Test
    void blankOfTheReferenceArch() {
        // reference model, whole arch of 44 by 24 mm: run 70.821, fold 12.283, blank 105.387 mm; perimeter of the beta
        // function 69.288 mm
        assertThat(base.left().tube().plus(base.right().tube()).value()).isCloseTo(69.288, within(1.5e-3));
        assertThat(base.blank().value()).isCloseTo(105.387, within(2e-3));
        assertThat(base.left().foldWire().value()).isCloseTo(12.283, within(1e-3));
        assertThat(base.spare().value()).isCloseTo(120 - 105.387, within(2e-3));
    }

    @Test
    void marksFollowOneAnotherByWhatBendsAndLegsTake() {
        // each half bend takes pi r / 2, a leg 3 mm, the tube 3 mm, the tail 2 mm
        SideMarks m = base.left();
        double quarter = Math.PI / 2;
        assertThat(m.firstBend().value()).isCloseTo(70.821 / 2 + 3 + quarter, within(2e-3));
        assertThat(m.secondBend().minus(m.firstBend()).value()).isCloseTo(2 * quarter + 3, within(1e-9));
        assertThat(m.stop().minus(m.secondBend()).value()).isCloseTo(quarter, within(1e-9));
        assertThat(m.cut().minus(m.stop()).value()).isCloseTo(3, within(1e-9));
        assertThat(m.end().minus(m.cut()).value()).isCloseTo(2, within(1e-9));
    }

    @Test
    void firstMarkLiesAboutTwoMillimetresDistalToTheTube() {
        // common practice at the bench: 2.0 +- 0.5 mm, for the usual range of beaks
        for (double beak : new double[] {0.6, 0.75, 0.85}) {
            SideMarks m = WireGeometry.of(
                            BaseCase.of().set("/wire/beakRadius", beak).build())
                    .left();
            assertThat(m.offset().value()).as("beak " + beak).isBetween(1.5, 2.75);
        }
    }

    /** Reference model: bends of 1 mm and legs of 3 mm; stand-off, gap, angle, travel towards the gingiva. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.61, 11.8, 0.85",
        "1.0, 1.07, 20.8, 1.44",
        "1.5, 1.433217, 28.53784, 1.898099",
        "2.0, 1.74, 35.4, 2.26"
    })
    void openingForAStandOff(double standOff, double gap, double degrees, double gingival) {
        FoldOpening f = WireGeometry.of(
                        BaseCase.of().set("/plan/standOff", standOff).build())
                .planned(Side.LEFT);
        assertThat(f.gap().value()).isCloseTo(gap, within(0.006));
        assertThat(f.angle().value()).isCloseTo(degrees, within(0.06));
        assertThat(f.drop().value()).isCloseTo(gingival * Math.cos(Math.toRadians(20)), within(0.006));
        assertThat(f.gainAtFirst().value()).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(f.gain().value()).isCloseTo(standOff / gap, within(0.01));
        assertThat(FoldShape.forward(f.gap().value(), 3, 1)).isCloseTo(standOff, within(1e-9));
    }

    @Test
    void foldOpensAsPlaneGeometrySays() {
        // small openings: 2 r per leg length of gap (both bends turn by a, the front goes 2 r a, the leg's end L a)
        assertThat(FoldShape.forward(1e-6, 3, 1)).isCloseTo(1e-6 * 2 / 3, within(1e-11));
        // at 90 degrees the leg stands upright and each bend is a quarter circle of twice the radius: 4 r + L
        assertThat(FoldShape.forward(3, 3, 1)).isCloseTo(7, within(1e-9));
        assertThat(FoldShape.reach(Measured.exact(3, Unit.MM), Measured.exact(1, Unit.MM))
                        .value())
                .isEqualTo(7);
        assertThat(base.planned(Side.LEFT).reach().value()).isCloseTo(7, within(1e-9));
    }

    @Test
    void standOffBeyondTheReachHasNoOpening() {
        CaseBuilder b = BaseCase.of()
                .set("/plan/standOff", 5)
                .set("/wire/beakRadius", 0.2)
                .set("/hardware/left/length", 1.5);
        assertThat(WireGeometry.of(b.build()).planned(Side.LEFT).gap().missing())
                .containsExactly("/plan/standOff");
    }

    @Test
    void sidesChangePlacesWithTheirFacts() {
        CaseBuilder b = BaseCase.of();
        b.set("/hardware/left/length", 3.6)
                .set("/bench/left/firstMark", 39.9)
                .set("/plan/advanceLeft", 2.5)
                .set("/plan/advanceRight", 1);
        CaseBuilder mirrored = BaseCase.of();
        mirrored.set("/hardware/right/length", 3.6)
                .set("/bench/right/firstMark", 39.9)
                .set("/bench/left/firstMark", 35)
                .set("/plan/advanceLeft", 1)
                .set("/plan/advanceRight", 2.5);
        WireGeometry one = WireGeometry.of(b.build());
        WireGeometry other = WireGeometry.of(mirrored.build());
        assertThat(other.right().cut().value()).isCloseTo(one.left().cut().value(), within(1e-9));
        assertThat(other.planned(Side.RIGHT).spare().value())
                .isCloseTo(one.planned(Side.LEFT).spare().value(), within(1e-9));
        assertThat(other.blank().value()).isCloseTo(one.blank().value(), within(1e-9));
        assertThat(one.left().firstBend().value() - one.right().firstBend().value())
                .isBetween(0.5, 0.7);
    }

    @Test
    void errorsGoThrough() {
        // each mm of radius takes 2 pi mm of each fold's wire; 0.05 mm is the error of a calliper on the beak
        double radius = Math.abs(base.spare().part("/wire/beakRadius"));
        assertThat(radius).isCloseTo(4 * Math.PI * 0.05, within(1e-6));
        // adaptive Gauss-Kronrod quadrature (QUADPACK) of the published beta function gives 1.57517 mm of perimeter per
        // mm of depth at
        // 44 by 24 mm, and 1.585 over a whole millimetre; 0.3 mm is the error of an arch dimension
        assertThat(Math.abs(base.spare().part("/arch/molarDepth"))).isCloseTo(1.57517 * 0.3, within(1e-4));
    }

    @Test
    void tipThatKeepsTheGapToTheGingiva() {
        Case c = BaseCase.of()
                .set("/bench/left/buccalTip", 0)
                .set("/bench/left/clearGingiva", 0)
                .set("/bench/left/height", 4)
                .build();
        // the lowest run, 4 mm below the tube, goes out by 4 sin t: 1 mm at asin(1/4)
        assertThat(WireGeometry.tipNeeded(c, Side.LEFT, 1).value())
                .isCloseTo(Math.toDegrees(Math.asin(0.25)), within(1e-9));
        Case low = BaseCase.of()
                .set("/bench/left/buccalTip", 30)
                .set("/bench/left/clearGingiva", 0)
                .set("/bench/left/height", 0.5)
                .build();
        assertThat(WireGeometry.tipNeeded(low, Side.LEFT, 1).missing()).containsExactly("/bench/left/height");
    }

    @Test
    void comparesWithTheMarksMade() {
        Comparison first = base.compared().get(0);
        assertThat(first.off().value())
                .isCloseTo(first.made().value() - first.planned().value(), within(1e-9));
        assertThat(base.compared()).hasSize(10).allMatch(x -> x.off().known());
    }

    @Test
    void wantsNothingFromTheBenchForTheBlank() {
        Case c = BaseCase.of()
                .without("/bench/left/firstMark")
                .without("/bench/right/bendRadius")
                .build();
        assertThat(WireMeasures.blankSpare(c, new WireMarks(c, PatientArch.of(c)), Workbook.none()))
                .isEqualTo(base.spare());
        Case noArch = BaseCase.of()
                .without("/arch/molarWidth")
                .without("/wire/beakRadius")
                .build();
        assertThat(WireMeasures.blankSpare(noArch, new WireMarks(noArch, PatientArch.of(noArch)), Workbook.none())
                        .missing())
                .contains("/arch/molarWidth", "/wire/beakRadius");
    }

    /**
     * Slots 1.5 mm before the teeth and tubes 1.5 mm out: each half is longer by 1.5 mm times its quarter turn,
     * exactly, by the length of a parallel curve.
     */
    @Test
    void marksAndBlankFollowTheSlots() {
        CaseBuilder b = BaseCase.of();
        for (int tooth : new int[] {42, 41, 31, 32}) {
            b.set("/hardware/brackets/" + tooth + "/slotOffset", 1.5);
        }
        b.set("/hardware/left/slotOffset", 1.5).set("/hardware/right/slotOffset", 1.5);
        WireGeometry out = WireGeometry.of(b.build());
        double more = 1.5 * Math.PI / 2;
        assertThat(out.left().firstBend().minus(base.left().firstBend()).value())
                .isCloseTo(more, within(2e-3));
        assertThat(out.blank().minus(base.blank()).value()).isCloseTo(2 * more, within(4e-3));
        assertThat(out.left().offset().minus(base.left().offset()).value()).isCloseTo(0, within(1e-9));
    }

    @Test
    void slotsThatWereNotMeasuredAreAssumedWithAnError() {
        CaseBuilder b = BaseCase.of();
        for (int tooth : new int[] {42, 41, 31, 32}) {
            b.without("/hardware/brackets/" + tooth + "/slotOffset");
        }
        WireGeometry assumed = WireGeometry.of(b.build());
        double longer = assumed.left().tube().minus(base.left().tube()).value();
        // by chords of the published formula, worked out apart from this program
        assertThat(longer).isCloseTo(1.4403, within(2e-3));
        assertThat(assumed.left().tube().sd()).isGreaterThan(base.left().tube().sd());
        assertThat(assumed.line().slotsMeasured()).isFalse();
        assertThat(base.line().slotsMeasured()).isTrue();
    }

    /** By the length of a parallel curve a half is longer by distance times a quarter turn, whoever brings it. */
    @Test
    void aTubeThatStandsOutLengthensItsOwnSideAlone() {
        CaseBuilder slots = BaseCase.of();
        for (int tooth : new int[] {42, 41, 31, 32}) {
            slots.set("/hardware/brackets/" + tooth + "/slotOffset", 1.5);
        }
        double bySlots = longer(slots, Side.LEFT);
        assertThat(longer(slots, Side.RIGHT)).isCloseTo(bySlots, within(1e-9));
        for (Side side : Side.values()) {
            CaseBuilder tube = BaseCase.of().set("/hardware/" + side.word() + "/slotOffset", 1.5);
            assertThat(bySlots + longer(tube, side)).as(side.word()).isCloseTo(1.5 * Math.PI / 2, within(2e-3));
            assertThat(longer(tube, side == Side.LEFT ? Side.RIGHT : Side.LEFT)).isZero();
        }
    }

    private double longer(CaseBuilder b, Side side) {
        return WireGeometry.of(b.build())
                .marks(side)
                .tube()
                .minus(base.marks(side).tube())
                .value();
    }

    @Test
    void anOpeningWiderThanTheLegIsMoreThanTheFoldHas() {
        // upright it reaches 4 r + L = 7 mm; each further millimetre of gap counts as one
        assertThat(FoldShape.forward(3.5, 3, 1)).isCloseTo(7.5, within(1e-9));
        assertThat(FoldShape.forward(0, 3, 1)).isCloseTo(0, within(1e-9));
        Measured gap = Measured.of(4, Unit.MM, "gap", 0.1);
        Measured forward = WireMeasures.forward(BaseCase.of().build(), Side.LEFT, gap);
        assertThat(forward.value()).isCloseTo(8, within(1e-9));
        assertThat(forward.part("gap")).isCloseTo(0.1, within(1e-9));
        assertThat(WireMeasures.reach(BaseCase.of().build(), Side.LEFT).value()).isCloseTo(7, within(1e-9));
    }

    @Test
    void aStandOffJustAtTheReachStandsTheFoldUpright() {
        // beak 0.75 and wire 0.5 make bends of 1 mm: the reach is 7 mm
        CaseBuilder b = BaseCase.of().set("/wire/beakRadius", 0.75).set("/wire/size", 0.5);
        FoldOpening f = WireGeometry.of(b.set("/plan/standOff", 7).build()).planned(Side.LEFT);
        assertThat(f.angle().value()).isCloseTo(90, within(1e-3));
        assertThat(f.gap().value()).isCloseTo(3, within(1e-6));
        // a smaller beak could not do it and stays upright, a larger one need not open so far
        assertThat(f.angle().part("/wire/beakRadius")).isNegative();
        assertThat(WireGeometry.of(b.set("/plan/standOff", 7.01).build())
                        .planned(Side.LEFT)
                        .gap()
                        .missing())
                .containsExactly("/plan/standOff");
    }

    /** An error about nothing: 0.2 mm forward open the fold by asin 0.2 / 2 r, and to the back it stays closed. */
    @Test
    void aFoldThatIsNotToOpenStaysClosedWhateverTheError() {
        Case c = Edit.set(BaseCase.of().build(), "/plan/standOff", Measured.of(0, Unit.MM, "/plan/standOff", 0.2));
        double opened = Math.toDegrees(Math.asin(0.2 / 2));
        FoldOpening f = WireGeometry.of(c).planned(Side.LEFT);
        assertThat(f.angle().part("/plan/standOff")).isCloseTo(opened / 2, within(0.3));
    }

    @Test
    void eachSideHasTheFoldThatWasMadeThere() {
        WireGeometry g = WireGeometry.of(BaseCase.of()
                .set("/bench/left/bendRadius", 0.846)
                .set("/bench/right/length", 3.5)
                .build());
        // 4 r + L with bends of 1.1 and 1 mm at the middle
        assertThat(g.made(Side.LEFT).reach().value()).isCloseTo(4.4 + 3, within(1e-9));
        assertThat(g.made(Side.RIGHT).reach().value()).isCloseTo(4 + 3.5, within(1e-9));
        assertThat(g.planned(Side.LEFT).reach().value()).isCloseTo(7, within(1e-9));
    }

    /** First-order errors by the derivative of the arc sine: dt = ds / cos t, in radians. */
    @Test
    void errorsOfTheTipThatIsNeeded() {
        Case c = BaseCase.of().set("/bench/left/clearGingiva", 0.4).build();
        double sine = Math.sin(Math.toRadians(20)) + 0.6 / 4;
        double cosine = Math.sqrt(1 - sine * sine);
        Measured tip = WireGeometry.tipNeeded(c, Side.LEFT, 1);
        double gap = c.bench().left().clearGingiva().sd();
        assertThat(gap).isPositive();
        assertThat(tip.part("/bench/left/clearGingiva")).isCloseTo(-Math.toDegrees(gap / 4 / cosine), within(1e-9));
        double made = c.bench().left().buccalTip().sd();
        assertThat(tip.part("/bench/left/buccalTip"))
                .isCloseTo(made * Math.cos(Math.toRadians(20)) / cosine, within(0.01 * made));
        // a fold of 1 mm would have to lie flat for 1 mm, and there its error has no bound
        CaseBuilder flat = BaseCase.of()
                .set("/bench/left/buccalTip", 0)
                .set("/bench/left/clearGingiva", 0)
                .set("/bench/left/height", 1);
        assertThat(WireGeometry.tipNeeded(flat.build(), Side.LEFT, 1).missing()).containsExactly("/bench/left/height");
        assertThat(WireGeometry.tipNeeded(flat.set("/bench/left/height", 1.001).build(), Side.LEFT, 1)
                        .known())
                .isTrue();
    }
}
