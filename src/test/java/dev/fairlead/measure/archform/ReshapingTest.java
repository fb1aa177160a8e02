package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What bending a wire to an arch takes, and where teeth stand along it. */
class ReshapingTest {

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

    /** Where the canines' places are not known they are taken as average; a wire shorter than they reach ends them. */
    @Test
    void caninesAreAverageOrAsFarAsTheWireReaches() {
        ArchCurve arch = ConicArch.circle(40, 20);
        ArchPlaces unknown = new ArchPlaces(List.of(new ArchPlaces.Place(31, 3)));
        // centre of the average canine at 14.75 of 37.8 of a quarter circle
        double angle = Math.PI / 2 * 14.75 / 37.8;
        ArchCurve wire = ConicArch.circle(48, 24);
        assertThat(Reshaping.full(arch, wire, unknown).atCanines())
                .isEqualTo(40 * Math.sin(angle) - 48 * Math.sin(angle * 20 / 24), within(1e-9));
        ArchCurve tiny = ConicArch.circle(8, 4);
        Reshaping whole = Reshaping.full(arch, tiny, unknown);
        assertThat(whole.atCanines()).isEqualTo(40 * Math.sin(2 * Math.PI / 20) - 8, within(1e-9));
        assertThat(whole.atMolars()).isEqualTo(whole.atCanines());
    }

    /** An arch that runs further back on its left: the mean of both canines counts. */
    @Test
    void theFrontIsDeepFromTheMeanOfBothCanines() {
        SplineArch uneven =
                new SplineArch(List.of(new Point(-21, 0), new Point(-13, 17), new Point(1, 22), new Point(20, -3)));
        ArchCurve line = ConicArch.circle(40, 20);
        ArchPlaces places = new ArchPlaces(List.of(new ArchPlaces.Place(33, 12), new ArchPlaces.Place(43, -12)));
        double behind = (uneven.atArcLength(12).y() + uneven.atArcLength(-12).y()) / 2;
        assertThat(Reshaping.full(uneven, line, places).ofFront())
                .isEqualTo(uneven.at(uneven.midline()).y() - behind - 20 * (1 - Math.cos(0.6)), within(1e-9));
    }

    /** 0.25 mm is the least bend. */
    @Test
    void wordsNameBendsFromAQuarterOfAMillimetreOn() {
        assertThat(new Reshaping(0.25, -0.25, 0.249).words())
                .isEqualTo("widen at the canines by 0.3 mm, narrow at the molars by 0.3 mm");
        assertThat(new Reshaping(-0.249, 0.249, -0.25).words()).isEqualTo("flatten the front by 0.3 mm");
        assertThat(new Reshaping(0.1, 0, -0.1).words()).isEqualTo("leave as it is");
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

    @Test
    void averageTeethOfBothSidesMirrorEachOther() {
        ArchPlaces places = ArchPlaces.average(new BetaArch(44, 24));
        assertThat(places.places())
                .extracting(ArchPlaces.Place::tooth)
                .containsExactly(41, 42, 43, 44, 45, 46, 31, 32, 33, 34, 35, 36);
        for (int i = 0; i < 6; i++) {
            assertThat(places.places().get(i).fromMidline())
                    .isEqualTo(-places.places().get(i + 6).fromMidline(), within(1e-9));
        }
        // half of Black's 5.4 mm of 37.8
        assertThat(places.places().get(6).fromMidline())
                .isEqualTo(new BetaArch(44, 24).perimeter() / 2 * 2.7 / 37.8, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ArchPlaces(List.of()))
                .withMessage("no teeth along the arch");
    }

    /** The place of a position is the mean of both sides, the permanent tooth's before the primary one's. */
    @Test
    void aPositionIsKnownWhereBothSidesAre() {
        ArchPlaces places = new ArchPlaces(List.of(
                new ArchPlaces.Place(73, 11),
                new ArchPlaces.Place(33, 14),
                new ArchPlaces.Place(43, -12),
                new ArchPlaces.Place(34, 20)));
        assertThat(places.position(3)).contains(13.0);
        assertThat(places.position(4)).isEmpty();
        assertThat(places.nearest(12.4).tooth()).isEqualTo(73);
        assertThat(places.nearest(12.6).tooth()).isEqualTo(33);
    }
}
