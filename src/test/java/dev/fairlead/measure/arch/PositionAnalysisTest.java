package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.model.Measured;
import java.util.Comparator;
import org.junit.jupiter.api.Test;

/** What the planned advancement gains and moves, from its parts. */
class PositionAnalysisTest {

    private static PositionResult position(CaseBuilder b) {
        return FrontTest.front(b).position();
    }

    private static PositionResult.Gain gain(PositionResult p, String name) {
        return p.gains().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
    }

    /** Planned 2 and 1.5 mm: 1.75 mm at the midline, 3.5 mm of room by the rule of thumb. */
    @Test
    void everyFigureGainsItsShareOfTheMeanAdvance() {
        CaseBuilder b = SampleCase.full().without("/arch/canineWidth").without("/arch/canineDepth");
        PositionResult p = position(b);
        assertThat(gain(p, "rule of thumb").gained().value()).isEqualTo(3.5, within(1e-12));
        double own = new BetaArch(44, 25.75).perimeter() - new BetaArch(44, 24).perimeter();
        assertThat(gain(p, "this arch").gained().value()).isEqualTo(own, within(1e-9));
        assertThat(p.gains()).isSortedAccordingTo(Comparator.comparingDouble(PositionResult.Gain::perMm));
        Measured shortage = p.left().rule().plus(p.right().rule());
        for (PositionResult.Gain g : p.gains()) {
            assertThat(g.gained().value()).as(g.name()).isEqualTo(1.75 * g.perMm(), within(1e-12));
            assertThat(g.lacking().value()).as(g.name()).isEqualTo(shortage.value() - 1.75 * g.perMm(), within(1e-9));
        }
    }

    /**
     * Nothing planned: the slope of the perimeter, 1.5758 mm per mm for the beta function of 44 by 24 by differences.
     */
    @Test
    void withoutAnAdvanceTheFigureIsTheSlope() {
        CaseBuilder b = SampleCase.full()
                .without("/arch/canineWidth")
                .without("/arch/canineDepth")
                .set("/plan/advanceLeft", 0)
                .set("/plan/advanceRight", 0);
        double slope = (new BetaArch(44, 24.001).perimeter() - new BetaArch(44, 23.999).perimeter()) / 0.002;
        assertThat(gain(position(b), "this arch").perMm()).isEqualTo(slope, within(1e-5));
        assertThat(position(b.without("/plan/advanceLeft")).gains())
                .extracting(PositionResult.Gain::name)
                .doesNotContain("this arch");
        assertThat(position(b.without("/arch/molarWidth")).gains())
                .extracting(PositionResult.Gain::name)
                .doesNotContain("this arch");
    }

    @Test
    void bothSidesHaveTheirRoomByTheLargerNeedAndTheMidlineGoesByTheMean() {
        PositionResult p = position(SampleCase.full().set("/space/left", 19.5).set("/space/right", 26));
        double left = p.left().chord().value();
        assertThat(p.right().chord().value()).isNegative();
        assertThat(p.equalPlan().value()).isEqualTo(left);
        assertThat(p.atMidline().value()).isEqualTo(left / 2, within(1e-12));
        PositionResult both = position(SampleCase.full());
        assertThat(both.atMidline().value())
                .isEqualTo((both.left().chord().value() + both.right().chord().value()) / 2, within(1e-12));
        assertThat(both.left().spare().value())
                .isEqualTo(2 - both.left().chord().value(), within(1e-12));
    }

    /** The folds travel so that a stiff front, turned about the tubes, takes each lateral as far as planned. */
    @Test
    void foldsTakeTheLateralsAsFarAsPlanned() {
        CaseBuilder b = SampleCase.full().set("/plan/advanceLeft", 2.4).set("/plan/advanceRight", 1);
        PositionResult.Sided sided = position(b).sided().orElseThrow();
        assertThat(sided.front().laterals().left()).isEqualTo(2.4, within(1e-9));
        assertThat(sided.front().laterals().right()).isEqualTo(1, within(1e-9));
        assertThat(sided.front().midline()).isEqualTo(1.7, within(1e-9));
        // middles of the laterals 5.55 + 6.05 / 2 and 5.45 + 5.95 / 2 mm along the curve; folds 44 mm apart
        var curve = PatientArch.of(b.build()).curve();
        double half = (curve.atArcLength(5.55 + 6.05 / 2).x()
                        - curve.atArcLength(-5.45 - 5.95 / 2).x())
                / 2;
        double apart = (2.4 - 1) * 44 / (2 * half);
        assertThat(sided.openings().open().left() - sided.openings().open().right())
                .isEqualTo(apart, within(1e-9));
        assertThat(sided.front().sideways()).isEqualTo(-apart * 24 / 44, within(1e-9));
        for (String pointer : new String[] {"/plan/advanceLeft", "/arch/molarWidth", "/teeth/41/width"}) {
            assertThat(position(b.copy().without(pointer)).sided()).as(pointer).isEmpty();
        }
    }

    /** Laterals as wide as the half arch are taken at nine tenths of the way to the molars. */
    @Test
    void lateralsThatReachTheMolarsAreKeptBetweenThem() {
        CaseBuilder b = SampleCase.full()
                .incisors(40, 20, 20, 40)
                .set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 1);
        var curve = PatientArch.of(b.build()).curve();
        double half = curve.atArcLength(0.9 * curve.perimeter() / 2).x();
        var open = position(b).sided().orElseThrow().openings().open();
        assertThat(open.left() - open.right()).isEqualTo(44 / (2 * half), within(1e-9));
    }
}
