package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wire laid over an arch: what plane geometry says of misfit, slide, place and length. */
class LayingTest {

    /** The polynomial with these coefficients, cut off at this width. */
    private static SixthDegreeArch piece(double width) {
        return new SixthDegreeArch(width, 5e-8, 0.035);
    }

    /** Longer or shorter, the same curve lies on itself, slid by what it is deeper; a shorter one is carried on. */
    @ParameterizedTest
    @CsvSource({"44, 44", "44, 50", "44, 38"})
    void anotherPieceOfTheSameCurveFitsAndIsOnlySlid(double archWidth, double wireWidth) {
        SixthDegreeArch arch = piece(archWidth);
        SixthDegreeArch wire = piece(wireWidth);
        Laying laying = Laying.of(arch, wire);
        assertThat(laying.settled()).isTrue();
        assertThat(laying.misfit().rms()).isEqualTo(0, within(1e-7));
        assertThat(laying.misfit().worst()).isEqualTo(0, within(1e-7));
        WireMisfit told = laying.onTeeth(arch, wire, ArchPlaces.average(arch));
        assertThat(told.forward()).isEqualTo(arch.depth() - wire.depth(), within(1e-7));
        double lacking = (arch.perimeter() - wire.perimeter()) / 2;
        assertThat(told.shortBy()).isEqualTo(Math.max(0, lacking), within(1e-9));
        assertThat(told.rms()).isEqualTo(laying.misfit().rms());
    }

    /** Away from its own place the same curve is slid back: 3 mm forward, and the teeth of each side as they stand. */
    @Test
    void anArchThatLiesFurtherForwardTakesTheWireWithIt() {
        SixthDegreeArch wire = piece(44);
        List<Point> forward =
                wire.points(201).stream().map(p -> p.plus(new Point(0, 3))).toList();
        SplineArch arch = new SplineArch(forward);
        Laying laying = Laying.of(arch, wire);
        assertThat(laying.misfit().worst()).isLessThan(1e-3);
        assertThat(laying.onTeeth(arch, wire, ArchPlaces.average(arch)).forward())
                .isEqualTo(3, within(1e-4));
    }

    /**
     * Beside y = -b x^2 at a small distance e the least-squares slide is e times the integral of n_y over that of
     * n_y^2, with n_y = 1/sqrt(1 + 4 b^2 x^2): W and asinh(b W)/b; the sum of squares that is left is e^2 (L - W^2
     * b/asinh(b W)).
     */
    @ParameterizedTest
    @CsvSource({"44, 24, 1e-3", "44, 24, -1e-3", "50, 20, 1e-3"})
    void besideAParabolaTheSlideAndTheRestAreThoseOfTheIntegrals(double w, double d, double e) {
        SixthDegreeArch wire = SixthDegreeArch.ofShare(w, d, 0);
        OffsetArch arch = new OffsetArch(wire, e, e, e);
        Laying laying = Laying.of(arch, wire);
        double b = 4 * d / (w * w);
        double asinh = Math.log(b * w + Math.sqrt(b * w * b * w + 1));
        double slide = e * w * b / asinh;
        double length = ConicArch.parabola(w, d).perimeter();
        double rms = Math.abs(e) * Math.sqrt(1 - w * w * b / asinh / length);
        assertThat(laying.onTeeth(arch, wire, ArchPlaces.average(arch)).forward())
                .isEqualTo(slide, within(2e-3 * Math.abs(slide)));
        assertThat(laying.misfit().rms()).isEqualTo(rms, within(2e-3 * rms));
        // what is left is e less what the slide takes off: most of it at the front, least at the ends
        double front = e - slide;
        double end = e - slide / Math.sqrt(1 + b * w * b * w);
        boolean atFront = Math.abs(front) > Math.abs(end);
        assertThat(laying.worstOutside()).isEqualTo(atFront ? -front : -end, within(3e-3 * Math.abs(e)));
        assertThat(laying.misfit().worst()).isEqualTo(Math.abs(laying.worstOutside()));
        assertThat(Math.abs(laying.worstAt())).isEqualTo(atFront ? 0 : 1);
    }

    /** By a search: no other slide leaves a smaller sum of squared distances from the wire drawn as 8001 points. */
    @Test
    void noOtherSlideFitsBetter() {
        ArchCurve arch = new BetaArch(44, 24);
        SixthDegreeArch wire = SixthDegreeArch.ofShare(60, 40, 0.3);
        Laying laying = Laying.of(arch, wire);
        WireMisfit told = laying.onTeeth(arch, wire, ArchPlaces.average(arch));
        double here = rms(arch, wire, told.forward());
        assertThat(laying.misfit().rms()).isEqualTo(here, within(0.01 * here));
        assertThat(rms(arch, wire, told.forward() + 0.2)).isGreaterThan(here);
        assertThat(rms(arch, wire, told.forward() - 0.2)).isGreaterThan(here);
    }

    private static double rms(ArchCurve arch, SixthDegreeArch wire, double forward) {
        Projector projector = new Projector(wire);
        int n = 161;
        double squares = 0;
        List<Point> points = arch.points(n);
        for (int i = 0; i < n; i++) {
            double off = projector
                    .nearest(points.get(i).minus(new Point(0, forward)))
                    .outside();
            squares += (i == 0 || i == n - 1 ? 0.5 : 1) * off * off;
        }
        return Math.sqrt(squares / (n - 1));
    }

    @Test
    void aWideWireLiesOutsideAtTheMolarsAndANarrowOneInside() {
        SixthDegreeArch arch = SixthDegreeArch.ofShare(44, 24, 0.2);
        ArchPlaces places = ArchPlaces.average(arch);
        SixthDegreeArch wide = SixthDegreeArch.ofShare(52, 25, 0.2);
        WireMisfit outside = Laying.of(arch, wide).onTeeth(arch, wide, places);
        assertThat(outside.worst().outside()).isBetween(0.5, 4.0);
        assertThat(Math.abs(outside.worst().fromMidline())).isGreaterThan(0.8 * arch.perimeter() / 2);
        assertThat(outside.worst().tooth()).isIn(36, 46);
        assertThat(outside.words())
                .startsWith(String.format(
                        Locale.ROOT, "%.1f mm outside", outside.worst().outside()))
                .contains("first molar");
        SixthDegreeArch narrow = SixthDegreeArch.ofShare(38, 23, 0.2);
        WireMisfit inside = Laying.of(arch, narrow).onTeeth(arch, narrow, places);
        assertThat(inside.worst().outside()).isBetween(-4.0, -0.5);
        assertThat(inside.words())
                .isEqualTo(String.format(
                                Locale.ROOT, "%.1f mm inside", -inside.worst().outside())
                        + " the arch near the " + Teeth.words(inside.worst().tooth()));
    }

    @Test
    void mirroredArchMisfitsOnTheOtherSide() {
        Random random = new Random(32);
        SixthDegreeArch wire = SixthDegreeArch.ofShare(46, 25, 0.2);
        for (int n = 0; n < 5; n++) {
            // one incisor far out decides the worst place: the ends misfit alike on both sides
            List<DigitisedPoint> given =
                    Arches.on(new BetaArch(Arches.between(random, 44, 48), 25), 0.2, random).stream()
                            .map(l -> l.tooth() == 32 ? DigitisedPoint.flat(32, l.x() + 2, l.y() + 3) : l)
                            .toList();
            WireMisfit a = onSpline(given, wire);
            WireMisfit b = onSpline(Arches.mirrored(given), wire);
            assertThat(a.worst().tooth()).isEqualTo(32);
            assertThat(a.worst().outside()).as("the wire lies inside of it").isLessThan(-1);
            assertThat(b.rms()).isEqualTo(a.rms(), within(1e-6));
            assertThat(b.worst().outside()).isEqualTo(a.worst().outside(), within(1e-5));
            assertThat(b.worst().fromMidline()).isEqualTo(-a.worst().fromMidline(), within(1e-4));
            assertThat(b.worst().tooth()).isEqualTo(42);
            assertThat(b.shortBy()).isEqualTo(a.shortBy(), within(1e-6));
        }
    }

    private static WireMisfit onSpline(List<DigitisedPoint> given, SixthDegreeArch wire) {
        Landmarks landmarks = Landmarks.of(given);
        SplineArch spline = new SplineArch(landmarks.points());
        return Laying.of(spline, wire).onTeeth(spline, wire, ArchPlaces.of(spline, landmarks));
    }

    /** A wire as long as the arch, and an arch with its midline off the middle: one end of the wire is short. */
    @Test
    void whatIsLackingIsCountedAtTheShorterEnd() {
        SixthDegreeArch wire = SixthDegreeArch.ofShare(44, 24, 0.2);
        List<Point> aside =
                wire.points(81).stream().map(p -> p.plus(new Point(1.5, 0))).toList();
        SplineArch arch = new SplineArch(aside);
        SplineArch mirrored = arch.mirrored();
        double lacking = Math.max(arch.ruler().end(), -arch.ruler().start()) - wire.perimeter() / 2;
        assertThat(lacking).isBetween(1.0, 2.0);
        for (SplineArch a : List.of(arch, mirrored)) {
            WireMisfit told = Laying.of(a, wire).onTeeth(a, wire, ArchPlaces.average(a));
            assertThat(told.shortBy()).isEqualTo(lacking, within(1e-6));
        }
    }

    /** To first order: what laying a wire that differs by 0.001 mm gives anew. */
    @ParameterizedTest
    @CsvSource({"1e-3, 0, 0", "0, 1e-3, 0", "0, 0, 1e-4", "-1e-3, 1e-3, 0"})
    void nearAnotherWireTheMisfitIsThatOfLayingIt(double wider, double deeper, double fuller) {
        ArchCurve arch = new BetaArch(44, 24);
        Laying laying = Laying.of(arch, SixthDegreeArch.ofShare(48, 25, 0.3));
        SixthDegreeArch other = SixthDegreeArch.ofShare(48 + wider, 25 + deeper, 0.3 + fuller);
        Laying.Misfit here = laying.misfit();
        Laying.Misfit told = laying.near(arch, other);
        Laying.Misfit anew = Laying.of(arch, other).misfit();
        assertThat(told.rms() - here.rms()).isEqualTo(anew.rms() - here.rms(), within(1e-6));
        assertThat(told.worst() - here.worst()).isEqualTo(anew.worst() - here.worst(), within(1e-5));
        assertThat(Math.abs(told.rms() - here.rms())).isGreaterThan(5e-6);
        assertThat(laying.near(arch, SixthDegreeArch.ofShare(48, 25, 0.3)).rms())
                .isEqualTo(here.rms(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1e-3, 0", "0, 1e-3"})
    void nearAnotherArchTheMisfitIsThatOfLayingTheWireOverIt(double wider, double deeper) {
        SixthDegreeArch wire = SixthDegreeArch.ofShare(48, 25, 0.3);
        Laying laying = Laying.of(new BetaArch(44, 24), wire);
        ArchCurve other = new BetaArch(44 + wider, 24 + deeper);
        double anew = Laying.of(other, wire).misfit().rms() - laying.misfit().rms();
        assertThat(laying.near(other, wire).rms() - laying.misfit().rms())
                .isEqualTo(anew, within(0.01 * Math.abs(anew)));
        assertThat(Math.abs(anew)).isGreaterThan(1e-4);
    }

    @Test
    void aHairpinHasNoBestPlaceAndThatIsTold() {
        SixthDegreeArch wire = SixthDegreeArch.ofShare(4, 11, 0.15);
        assertThat(Laying.of(new BetaArch(44, 24), wire).settled()).isFalse();
    }
}
