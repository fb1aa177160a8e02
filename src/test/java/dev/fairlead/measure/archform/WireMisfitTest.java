package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WireMisfitTest {

    @Test
    void theSameCurveFitsWhereverItLies() {
        ArchCurve arch = new BetaArch(46, 25);
        WireMisfit same = WireMisfit.of(arch, arch, ArchPlaces.average(arch));
        assertThat(same.rms()).isLessThan(1e-9);
        assertThat(same.within(1, 2)).isTrue();
        // a wire drawn 7 mm further forward, as a spline, is slid back
        List<Point> shifted =
                arch.points(201).stream().map(p -> p.plus(new Point(0, 7))).toList();
        WireMisfit moved = WireMisfit.of(arch, new SplineArch(shifted), ArchPlaces.average(arch));
        assertThat(moved.rms()).isLessThan(5e-3);
        assertThat(moved.forward()).isEqualTo(-7, within(1e-2));
    }

    /** Concentric circle arcs with equal sweep: at its best slide the wire's misfit follows from plane geometry. */
    @Test
    void circleOutsideACircle() {
        ArchCurve arch = ConicArch.circle(40, 20);
        // the same half circle with radius 21, 1 mm wider at each end: slid back by about s, distance is 1 - s
        // cos(angle)
        ArchCurve wire = ConicArch.circle(42, 21);
        WireMisfit misfit = WireMisfit.of(arch, wire, ArchPlaces.average(arch));
        // least squares over the half circle: s = mean(cos)/mean(cos^2) = (2/pi)/(1/2), measured from equal centres
        double slide = 4 / Math.PI;
        double rms = Math.sqrt(1 - 8 / (Math.PI * Math.PI));
        assertThat(misfit.forward()).isEqualTo(-slide, within(0.05));
        assertThat(misfit.rms()).isEqualTo(rms, within(0.02));
        assertThat(Math.abs(misfit.worst().fromMidline())).isEqualTo(arch.perimeter() / 2, within(1e-6));
        assertThat(misfit.worst().outside()).isEqualTo(1, within(0.06));
        assertThat(misfit.worst().tooth()).isIn(36, 46);
    }

    @Test
    void wideWireIsNarrowedAtTheMolars() {
        ArchCurve arch = new BetaArch(44, 24);
        ArchPlaces places = ArchPlaces.average(arch);
        ArchCurve wire = new BetaArch(50, 25);
        WireMisfit misfit = WireMisfit.of(arch, wire, places);
        assertThat(misfit.worst().outside()).isPositive();
        assertThat(misfit.words()).contains("outside the arch near the lower").contains("first molar");
        Reshaping whole = Reshaping.full(arch, wire, places);
        assertThat(whole.atMolars()).isNegative();
        assertThat(whole.words()).contains("narrow at the molars by");
        LeastReshaping least = LeastReshaping.of(arch, wire, places, 1.0, 2.0);
        assertThat(least.share()).isBetween(0.05, 1.0);
        assertThat(least.left().within(1.0, 2.0)).isTrue();
        assertThat(Math.abs(least.change().atMolars())).isLessThan(Math.abs(whole.atMolars()));
        assertThat(LeastReshaping.of(arch, arch, places, 1.0, 2.0).words()).isEqualTo("leave as it is");
    }

    /** By hand: half circles of radius 20 and 24 with 10 mm of arc: chord 2 R sin(s/R), depth R (1 - cos(s/R)). */
    @Test
    void reshapingComparesEqualLengthsOfWire() {
        ArchCurve arch = ConicArch.circle(40, 20);
        ArchCurve wire = ConicArch.circle(48, 24);
        ArchPlaces places = new ArchPlaces(List.of(new ArchPlaces.Place(33, 10), new ArchPlaces.Place(43, -10)));
        Reshaping whole = Reshaping.full(arch, wire, places);
        assertThat(whole.atCanines()).isEqualTo(40 * Math.sin(0.5) - 48 * Math.sin(10.0 / 24), within(1e-9));
        assertThat(whole.ofFront()).isEqualTo(20 * (1 - Math.cos(0.5)) - 24 * (1 - Math.cos(10.0 / 24)), within(1e-9));
        assertThat(whole.atMolars()).isEqualTo(40 - 48 * Math.sin(10 * Math.PI / 24), within(1e-9));
        assertThat(whole.words()).isEqualTo("narrow at the molars by 6.4 mm, deepen the front by 0.4 mm");
    }

    @Test
    void oneLimitAtATimeDecidesTheLeastChange() {
        Random random = new Random(31);
        for (int n = 0; n < 6; n++) {
            ArchCurve arch = ArchFit.of(ArchFamily.CONIC, Landmarks.of(Arches.crowded(random)))
                    .curve();
            ArchPlaces places = ArchPlaces.average(arch);
            ArchCurve wire = ConicArch.parabola(Arches.between(random, 48, 60), Arches.between(random, 26, 36));
            double loose = LeastReshaping.of(arch, wire, places, 1.0, 2.0).share();
            double tight = LeastReshaping.of(arch, wire, places, 0.5, 1.0).share();
            assertThat(tight).isGreaterThanOrEqualTo(loose);
            LeastReshaping least = LeastReshaping.of(arch, wire, places, 0.5, 1.0);
            assertThat(least.left().rms()).isLessThanOrEqualTo(0.5);
            assertThat(Math.abs(least.left().worst().outside())).isLessThanOrEqualTo(1.0);
        }
    }

    @Test
    void mirroredArchAndWireMisfitOnTheOtherSide() {
        Random random = new Random(32);
        for (int n = 0; n < 5; n++) {
            // one incisor far out decides the worst place: the ends misfit alike on both sides
            List<DigitisedPoint> given =
                    Arches.on(new BetaArch(Arches.between(random, 44, 48), 25), 0.2, random).stream()
                            .map(l -> l.tooth() == 32 ? DigitisedPoint.flat(32, l.x() + 2, l.y() + 3) : l)
                            .toList();
            ArchCurve wire = new BetaArch(46, 25);
            WireMisfit a = misfit(given, wire);
            WireMisfit b = misfit(Arches.mirrored(given), wire);
            assertThat(b.rms()).isEqualTo(a.rms(), within(1e-6));
            assertThat(b.worst().outside()).isEqualTo(a.worst().outside(), within(1e-5));
            assertThat(b.worst().fromMidline()).isEqualTo(-a.worst().fromMidline(), within(1e-4));
            assertThat(b.worst().tooth()).isEqualTo(Teeth.antimere(a.worst().tooth()));
        }
    }

    private static WireMisfit misfit(List<DigitisedPoint> given, ArchCurve wire) {
        Landmarks landmarks = Landmarks.of(given);
        ArchCurve spline = ArchFit.of(ArchFamily.SPLINE, landmarks).curve();
        return WireMisfit.of(spline, wire, ArchPlaces.of(spline, landmarks));
    }

    @Test
    void tooShortAWireIsTold() {
        ArchCurve arch = new BetaArch(46, 25);
        ArchCurve wire = ConicArch.parabola(30, 18);
        WireMisfit misfit = WireMisfit.of(arch, wire, ArchPlaces.average(arch));
        assertThat(misfit.shortBy()).isEqualTo((arch.perimeter() - wire.perimeter()) / 2, within(1e-9));
        assertThat(misfit.within(100, 100)).isFalse();
    }

    @Test
    void wordsDoNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(new Reshaping(1.25, -3, 0.1).words())
                    .isEqualTo("widen at the canines by 1.3 mm, narrow at the molars by 3.0 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void averageTeethFillTheArch() {
        ArchCurve arch = new BetaArch(44, 24);
        ArchPlaces places = ArchPlaces.average(arch);
        assertThat(places.nearest(100).tooth()).isEqualTo(36);
        assertThat(places.nearest(-0.1).tooth()).isEqualTo(41);
        // centres of Black's widths 5.4 5.9 6.9 6.9 7.1 11.2: canine 14.75 of 37.8
        assertThat(places.position(3))
                .hasValueSatisfying(s -> assertThat(s).isEqualTo(arch.perimeter() / 2 * 14.75 / 37.8, within(1e-9)));
    }
}
