package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PositionAndWireTest {
    private static final double TINY = 1e-9;

    private static PredictedIncisors after(CaseBuilder b) {
        return Calculations.plain().position().after(new Readings(b.build()), Workbook.none());
    }

    private static CaseBuilder upright() {
        return new CaseBuilder()
                .set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 2)
                .set("/headFilm/incisorMandibular", 90)
                .set("/headFilm/mandibularPlane", 25)
                .set("/headFilm/incisorToAPog", 1)
                .set("/bite/overjet", 4)
                .set("/bite/overbite", 3);
    }

    @Test
    void withoutALeverTheFilmTipsAsGrowingChildrenDo() {
        // Weinberg & Sadowsky 1996, 30 growing children: 6.1 degrees for 2.1 mm; Bock, Ruf et al.: 2.5 to 3.6 per mm
        PredictedIncisors p = after(upright());
        assertThat(p.inclination().value()).isCloseTo(90 + 2 * 6.1 / 2.1, within(0.05));
        assertThat(p.inclinationMost().value()).isCloseTo(90 + 2 * 3.6, within(TINY));
        double film = ErrorKind.FILM_ANGLE.defaultSd();
        double spread = Math.sqrt(p.inclination().sd() * p.inclination().sd() - film * film);
        assertThat(90 + 2 * 3.6).isCloseTo(p.inclination().value() + 2 * spread, within(0.25));
    }

    @ParameterizedTest
    @CsvSource({"25, 95.8", "30, 100.8", "20, 90.8"})
    void compensationKeepsTheTriangleSum(double fma, double expected) {
        // Zatarain 2016: (FMA - 25) + inclination
        assertThat(after(upright().set("/headFilm/mandibularPlane", fma))
                        .compensated()
                        .value())
                .isCloseTo(expected, within(TINY));
    }

    @Test
    void biteChangesByGeometry() {
        PredictedIncisors p = after(upright().set("/plan/advanceRight", 1));
        assertThat(p.overjet().value()).as("the larger of both").isCloseTo(2, within(TINY));
        assertThat(p.toAPog().value()).as("the mean of both").isCloseTo(2.5, within(TINY));
        // a turn about a centre 180 / (pi 2.9) mm below the edge, which leans 16 degrees from the perpendicular of the
        // occlusal plane (not measured, FMA 25): the edge goes forward by 1.5 mm along that plane
        double r = 180 / (Math.PI * 2.9);
        double before = Math.toRadians(16);
        double turned = Math.asin(Math.sin(before) + 1.5 / r);
        assertThat(p.overbite().value()).isCloseTo(3 - r * (Math.cos(before) - Math.cos(turned)), within(1e-6));
        // the same with the plane measured square to the incisor is the sagitta of that circle
        assertThat(after(upright().set("/plan/advanceRight", 1).set("/headFilm/occlusalMandibular", 0))
                        .overbite()
                        .value())
                .isCloseTo(3 - (r - Math.sqrt(r * r - 1.5 * 1.5)), within(1e-6));
        assertThat(p.overbiteLeast().value())
                .as("what was not measured never makes it milder")
                .isLessThan(p.overbite().value());
        assertThat(after(upright().set("/headFilm/incisorMandibular", 100))
                        .overbite()
                        .value())
                .as("a proclined incisor sinks more")
                .isLessThan(after(upright()).overbite().value());
    }

    @ParameterizedTest
    @CsvSource({"0.3556, 141.28", "0.4064, 241.02", "0.4572, 386.07", "0.508, 588.43", "0.762, 2978.94"})
    void stiffnessGoesWithTheFourthPower(double d, double ei) {
        // E I of round wire at 180 GPa, pi d^4 / 64 (beam theory), N mm²
        Case c = new CaseBuilder()
                .set("/wire/section", "round")
                .set("/wire/material", "stainless-steel")
                .set("/wire/plannedSize", 0.508)
                .set("/wire/size", d)
                .build();
        assertThat(Stiffness.ratio(c.wire(), Workbook.none()).value()).isCloseTo(ei / 588.43, within(1e-4));
    }

    @Test
    void otherMaterialsNeedTheirModulus() {
        CaseBuilder b = new CaseBuilder()
                .set("/wire/section", "round")
                .set("/wire/material", "beta-titanium")
                .set("/wire/size", 0.508)
                .set("/wire/plannedSize", 0.508);
        assertThat(Stiffness.ratio(b.build().wire(), Workbook.none()).missing()).containsExactly("/wire/modulus");
        b.set("/wire/modulus", 72);
        assertThat(Stiffness.ratio(b.build().wire(), Workbook.none()).value()).isCloseTo(0.4, within(TINY));
        b.set("/wire/section", "rectangular");
        assertThat(Stiffness.ratio(b.build().wire(), Workbook.none()).applies()).isFalse();
    }

    @Test
    void plannedFoldAndItsSwing() {
        Case c = SampleCase.full().build();
        assertThat(WireMeasures.plannedHeight(c, Workbook.none()).value()).isCloseTo(4 * (0.75 + 0.254), within(TINY));
        assertThat(WireMeasures.swing(c, Side.LEFT, Workbook.none()).value()).isCloseTo(1.1, within(TINY));
    }
}
