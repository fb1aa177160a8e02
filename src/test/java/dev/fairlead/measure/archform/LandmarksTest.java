package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LandmarksTest {

    @Test
    void turningShiftingAndTiltingChangeNothing() {
        Random random = new Random(11);
        for (int n = 0; n < 50; n++) {
            List<DigitisedPoint> given = Arches.crowded(random);
            Landmarks plain = Landmarks.of(given);
            Landmarks moved = Landmarks.of(moved(given, random));
            assertThat(moved.offPlane()).isEqualTo(0, within(1e-6));
            for (int i = 0; i < given.size(); i++) {
                assertThat(moved.teeth().get(i).tooth())
                        .isEqualTo(plain.teeth().get(i).tooth());
                assertThat(moved.points().get(i).distance(plain.points().get(i)))
                        .isLessThan(1e-9);
            }
            assertThat(ArchFit.of(ArchFamily.BETA, moved).goodness().rms())
                    .isEqualTo(ArchFit.of(ArchFamily.BETA, plain).goodness().rms(), within(1e-7));
        }
    }

    /** A rigid motion in space: turns about all three axes and a shift. */
    private static List<DigitisedPoint> moved(List<DigitisedPoint> given, Random random) {
        double a = random.nextDouble() * 6;
        double b = random.nextDouble() * 6;
        double c = random.nextDouble() * 6;
        double[] t = {random.nextGaussian() * 50, random.nextGaussian() * 50, random.nextGaussian() * 50};
        return given.stream()
                .map(l -> {
                    double x1 = Math.cos(a) * l.x() - Math.sin(a) * l.y();
                    double y1 = Math.sin(a) * l.x() + Math.cos(a) * l.y();
                    double y2 = Math.cos(b) * y1 - Math.sin(b) * l.z();
                    double z2 = Math.sin(b) * y1 + Math.cos(b) * l.z();
                    return new DigitisedPoint(
                            l.tooth(),
                            Math.cos(c) * x1 + Math.sin(c) * z2 + t[0],
                            y2 + t[1],
                            -Math.sin(c) * x1 + Math.cos(c) * z2 + t[2]);
                })
                .toList();
    }

    @Test
    void normalPositionHasTheOriginMidwayBetweenThePosteriorPoints() {
        Landmarks arch = Landmarks.of(Arches.crowded(new Random(3)));
        Point first = arch.points().get(0);
        Point last = arch.points().get(arch.points().size() - 1);
        assertThat(first.plus(last).length()).isLessThan(1e-9);
        assertThat(first.y()).isEqualTo(0, within(1e-9));
        assertThat(last.x()).isPositive();
        assertThat(arch.teeth().get(0).tooth()).isEqualTo(46);
        assertThat(arch.width()).isEqualTo(2 * last.x(), within(1e-9));
        assertThat(arch.depth()).isBetween(18.0, 31.0);
        assertThat(arch.posteriorPosition()).isEqualTo(6);
    }

    @Test
    void pointsOffThePlaneAreProjectedAndToldOf() {
        // corners of a square, alternately 1 mm above and below: the plane is z = 0 and every point is 1 mm off
        Landmarks arch = Landmarks.of(List.of(
                new DigitisedPoint(46, -20, 0, 1),
                new DigitisedPoint(36, 20, 0, -1),
                new DigitisedPoint(42, -20, 40, -1),
                new DigitisedPoint(32, 20, 40, 1)));
        assertThat(arch.offPlane()).isEqualTo(1, within(1e-9));
        assertThat(arch.width()).isEqualTo(40, within(1e-9));
    }

    @Test
    void refusesSetsThatAreNoArch() {
        DigitisedPoint right = DigitisedPoint.flat(46, -22, 0);
        DigitisedPoint left = DigitisedPoint.flat(36, 22, 0);
        DigitisedPoint front = DigitisedPoint.flat(31, 1, 24);
        refused("at least 3", right, left);
        refused("same tooth", right, left, left);
        refused("different teeth", right, DigitisedPoint.flat(35, 20, 4), front);
        refused("no landmark on the left", right, DigitisedPoint.flat(45, -20, 4), DigitisedPoint.flat(41, 0, 24));
        refused("straight line", right, left, DigitisedPoint.flat(31, 1, 0));
        refused("lower left canine (33)", right, left, front, DigitisedPoint.flat(33, -13, 18));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DigitisedPoint.flat(16, 0, 0))
                .withMessageContaining("16");
        assertThatIllegalArgumentException().isThrownBy(() -> DigitisedPoint.flat(36, Double.NaN, 0));
    }

    private static void refused(String why, DigitisedPoint... given) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Landmarks.of(Stream.of(given).toList()))
                .withMessageContaining(why);
    }

    @Test
    void mixedDentitionEndsAtItsLastTooth() {
        Landmarks arch = Landmarks.of(List.of(
                DigitisedPoint.flat(85, -20, 3),
                DigitisedPoint.flat(75, 20, 3),
                DigitisedPoint.flat(41, -2, 25),
                DigitisedPoint.flat(31, 2, 25),
                DigitisedPoint.flat(83, -13, 19),
                DigitisedPoint.flat(73, 13, 19)));
        assertThat(arch.posteriorPosition()).isEqualTo(5);
        assertThat(Teeth.words(83)).isEqualTo("lower right primary canine (83)");
    }

    /** A second premolar that breaks through beside its primary molar. */
    @Test
    void ofTwoTeethOfOnePositionThePermanentOneEndsTheArch() {
        DigitisedPoint front = DigitisedPoint.flat(31, 1, 24);
        Landmarks arch = Landmarks.of(List.of(
                DigitisedPoint.flat(85, -19, 4),
                DigitisedPoint.flat(45, -20, 0),
                front,
                DigitisedPoint.flat(35, 20, 0),
                DigitisedPoint.flat(75, 19, 4)));
        assertThat(arch.width()).isEqualTo(40, within(1e-9));
        assertThat(arch.teeth()).extracting(Landmarks.Tooth::tooth).containsExactly(45, 85, 31, 75, 35);
    }

    /** Incisors may be crowded across the midline; from the canine on a tooth stands on its own side. */
    @Test
    void onlyIncisorsMayStandAcrossTheMidline() {
        DigitisedPoint right = DigitisedPoint.flat(46, -22, 0);
        DigitisedPoint left = DigitisedPoint.flat(36, 22, 0);
        assertThat(Landmarks.of(List.of(right, left, DigitisedPoint.flat(32, -1, 24), DigitisedPoint.flat(42, 1, 24)))
                        .teeth())
                .hasSize(4);
        refused("wrong side of the midline: lower right canine (43)", right, left, DigitisedPoint.flat(43, 1, 24));
        assertThat(Teeth.words(73)).isEqualTo("lower left primary canine (73)");
    }

    /** ISO 3950: 31-38 and 41-48 are permanent, 71-75 and 81-85 primary lower teeth. */
    @Test
    void lowerTeethAreThoseOfTheStandard() {
        assertThat(IntStream.rangeClosed(-1, 100).filter(Teeth::lower))
                .containsExactly(
                        31, 32, 33, 34, 35, 36, 37, 38, 41, 42, 43, 44, 45, 46, 47, 48, 71, 72, 73, 74, 75, 81, 82, 83,
                        84, 85);
        assertThat(IntStream.of(38, 48, 71, 85).map(Teeth::antimere)).containsExactly(48, 38, 81, 75);
        assertThat(Teeth.words(71)).isEqualTo("lower left primary central incisor (71)");
        assertThat(Teeth.words(48)).isEqualTo("lower right third molar (48)");
    }

    /** Far from the digitiser's origin and stood on edge, points of one plane keep their distances. */
    @Test
    void thePlaneMayLieAnywhere() {
        List<DigitisedPoint> given = List.of(
                new DigitisedPoint(46, 100, -22, 50),
                new DigitisedPoint(36, 100, 22, 50),
                new DigitisedPoint(31, 100, 3, 74));
        Landmarks arch = Landmarks.of(given);
        assertThat(arch.width()).isEqualTo(44, within(1e-9));
        assertThat(arch.depth()).isEqualTo(24, within(1e-9));
        assertThat(arch.points().get(1).x()).isEqualTo(3, within(1e-9));
        assertThat(arch.offPlane()).isEqualTo(0, within(1e-6));
    }
}
