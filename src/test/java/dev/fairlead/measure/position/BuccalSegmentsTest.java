package dev.fairlead.measure.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.archform.SplineArch;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BuccalSegmentsTest {
    // distal of the lateral incisors at Black's widths, 5.4 + 5.9 mm from the midline
    private static final BuccalSegments WORKED = BuccalSegments.ofWhole(new BetaArch(44, 24), Sides.both(11.3));

    /** Independent computation for W 44, D 24: the perimeter gains 1.584667 mm for 1 mm and 3.187517 mm for 2 mm. */
    @Test
    void workedArchAlongTheArch() {
        for (double[] gain : new double[][] {{1, 1.584667}, {2, 3.187517}}) {
            Sides need = WORKED.advancementAlongArch(WORKED.along().map(r -> r + gain[1] / 2));
            assertThat(need.left()).isEqualTo(gain[0], within(1e-4));
            assertThat(need.right()).isEqualTo(gain[0], within(1e-4));
        }
    }

    /** Each side gets half of what the whole arch gains, where both of its halves are alike. */
    @Test
    void solutionsGiveExactlyTheRoomAsked() {
        Random random = new Random(41);
        for (int n = 0; n < 30; n++) {
            BuccalSegments s = segments(random);
            Sides more = new Sides(4 * random.nextDouble() - 1, 4 * random.nextDouble() - 1);
            Sides advance = s.advancementAlongArch(
                    new Sides(s.along().left() + more.left(), s.along().right() + more.right()));
            assertThat(PerimeterGain.of(s.arch(), advance.left()) / 2).isEqualTo(more.left(), within(1e-7));
            assertThat(PerimeterGain.of(s.arch(), advance.right()) / 2).isEqualTo(more.right(), within(1e-7));
        }
    }

    private static BuccalSegments segments(Random random) {
        ArchFamily[] kinds = {ArchFamily.BETA, ArchFamily.CATENARY, ArchFamily.PARABOLA, ArchFamily.HALF_ELLIPSE};
        ArchCurve arch =
                kinds[random.nextInt(kinds.length)].of(40 + 10 * random.nextDouble(), 21 + 8 * random.nextDouble());
        return BuccalSegments.ofWhole(arch, new Sides(10 + 2 * random.nextDouble(), 10 + 2 * random.nextDouble()));
    }

    @Test
    void moreRoomNeverNeedsLessAdvancement() {
        Random random = new Random(42);
        for (int n = 0; n < 20; n++) {
            BuccalSegments s = segments(random);
            double last = Double.NEGATIVE_INFINITY;
            for (double more = -1; more <= 4; more += 0.5) {
                double extra = more;
                double need =
                        s.advancementAlongArch(s.along().map(r -> r + extra)).left();
                assertThat(need).isGreaterThan(last);
                // the rule of thumb, 1 mm for 1 mm on each side, promises more than these arches give
                if (more > 0) {
                    assertThat(need).isGreaterThan(more);
                }
                last = need;
            }
        }
    }

    @Test
    void mirroredArchGivesMirroredNeed() {
        Random random = new Random(43);
        for (int n = 0; n < 5; n++) {
            List<Point> points = new BetaArch(44, 24)
                    .points(9).stream()
                            .map(p -> p.plus(new Point(0.4 * random.nextGaussian(), 0.4 * random.nextGaussian())))
                            .toList();
            ArchCurve arch = new SplineArch(points);
            Sides lateral = new Sides(11, 11.8);
            Sides plain = BuccalSegments.ofWhole(arch, lateral).advancementAlongArch(new Sides(25.5, 25));
            Sides other = BuccalSegments.ofWhole(arch.mirrored(), lateral.mirrored())
                    .advancementAlongArch(new Sides(25, 25.5))
                    .mirrored();
            assertThat(other.left()).isEqualTo(plain.left(), within(1e-7));
            assertThat(other.right()).isEqualTo(plain.right(), within(1e-7));
        }
    }

    @Test
    void molarPointMayLieInFrontOfTheEnd() {
        BuccalSegments shorter = new BuccalSegments(new BetaArch(44, 24), Sides.both(11.3), Sides.both(33));
        assertThat(shorter.along().left()).isEqualTo(21.7, within(1e-9));
        // the arch behind the molar keeps its part of what the whole arch gains
        Sides need = shorter.advancementAlongArch(Sides.both(21.7 + 1.584667 / 2));
        assertThat(need.left()).isBetween(1.0, 1.15);
        BuccalSegments uneven = new BuccalSegments(new BetaArch(44, 24), Sides.both(11.3), new Sides(33, 30));
        assertThat(uneven.advancementAlongArch(uneven.along()).left()).isEqualTo(0, within(1e-9));
        assertThat(uneven.advancementAlongArch(uneven.along()).right()).isEqualTo(0, within(1e-9));
    }

    @Test
    void refusesWhatNoAdvancementGives() {
        assertThatIllegalArgumentException().isThrownBy(() -> WORKED.advancementAlongArch(Sides.both(200)));
        assertThatIllegalArgumentException().isThrownBy(() -> WORKED.advancementAlongArch(Sides.both(1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BuccalSegments.ofWhole(new BetaArch(44, 24), Sides.both(40)));
        for (Sides lateral : List.of(new Sides(0, 11), new Sides(11, 0), new Sides(33, 11), new Sides(11, 33))) {
            assertThatIllegalArgumentException()
                    .as("%s", lateral)
                    .isThrownBy(() -> new BuccalSegments(new BetaArch(44, 24), lateral, Sides.both(33)));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> new Sides(Double.NaN, 1));
    }
}
