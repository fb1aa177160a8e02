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

    /** Independent computation for W 44, D 24: lateral to tube 23.0 mm, 1.73 mm of room in all per mm as a block. */
    @Test
    void workedArchByChord() {
        assertThat(WORKED.chord().left()).isEqualTo(23.0, within(0.15));
        assertThat(WORKED.gainByChord(1).sum()).isEqualTo(1.73, within(0.01));
    }

    /** Independent computation for W 44, D 24: the perimeter gains 1.584667 mm for 1 mm and 3.187517 mm for 2 mm. */
    @Test
    void workedArchAlongTheArch() {
        assertThat(WORKED.gainAlongArch(1).sum()).isEqualTo(1.584667, within(1e-4));
        assertThat(WORKED.gainAlongArch(2).sum()).isEqualTo(3.187517, within(1e-4));
        Sides need = WORKED.advancementAlongArch(WORKED.along().map(r -> r + 1.584667 / 2));
        assertThat(need.left()).isEqualTo(1, within(1e-4));
        assertThat(need.right()).isEqualTo(1, within(1e-4));
    }

    @Test
    void solutionsGiveExactlyTheRoomAsked() {
        Random random = new Random(41);
        for (int n = 0; n < 30; n++) {
            BuccalSegments s = segments(random);
            Sides more = new Sides(4 * random.nextDouble() - 1, 4 * random.nextDouble() - 1);
            Sides byChord = s.advancementByChord(
                    new Sides(s.chord().left() + more.left(), s.chord().right() + more.right()));
            assertThat(s.gainByChord(byChord.left()).left()).isEqualTo(more.left(), within(1e-9));
            assertThat(s.gainByChord(byChord.right()).right()).isEqualTo(more.right(), within(1e-9));
            Sides along = s.advancementAlongArch(
                    new Sides(s.along().left() + more.left(), s.along().right() + more.right()));
            assertThat(s.gainAlongArch(along.left()).left()).isEqualTo(more.left(), within(1e-8));
            assertThat(s.gainAlongArch(along.right()).right()).isEqualTo(more.right(), within(1e-8));
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
            double lastAlong = Double.NEGATIVE_INFINITY;
            for (double more = -1; more <= 4; more += 0.5) {
                double extra = more;
                AdvancementNeed need = new AdvancementNeed(
                        s.advancementByChord(s.chord().map(r -> r + extra)),
                        s.advancementAlongArch(s.along().map(r -> r + extra)),
                        s.advancementByRule(s.along().map(r -> r + extra)));
                assertThat(need.chord().left()).isGreaterThan(last);
                assertThat(need.alongArch().left()).isGreaterThan(lastAlong);
                assertThat(need.rule().left()).isEqualTo(more, within(1e-9));
                // the 2:1 rule promises more than these arches give
                if (more > 0) {
                    assertThat(need.alongArch().left())
                            .isGreaterThan(need.rule().left());
                    assertThat(need.chord().left()).isGreaterThan(need.rule().left());
                }
                last = need.chord().left();
                lastAlong = need.alongArch().left();
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
            BuccalSegments plain = BuccalSegments.ofWhole(arch, lateral);
            BuccalSegments other = BuccalSegments.ofWhole(arch.mirrored(), lateral.mirrored());
            AdvancementNeed a = AdvancementNeed.of(plain, new Sides(25.5, 25));
            AdvancementNeed b = AdvancementNeed.of(other, new Sides(25, 25.5));
            assertSame(b.chord().mirrored(), a.chord());
            assertSame(b.alongArch().mirrored(), a.alongArch());
            assertSame(b.rule().mirrored(), a.rule());
        }
    }

    private static void assertSame(Sides a, Sides b) {
        assertThat(a.left()).isEqualTo(b.left(), within(1e-7));
        assertThat(a.right()).isEqualTo(b.right(), within(1e-7));
    }

    @Test
    void theNeedierSideDecidesAnEqualPlan() {
        assertThat(AdvancementNeed.equalPlan(new Sides(1.2, 2.0))).isEqualTo(2.0);
        assertThat(AdvancementNeed.equalPlan(new Sides(-1, -0.2))).isZero();
        assertThat(AdvancementNeed.atMidline(new Sides(-1, 2))).isEqualTo(1);
    }

    @Test
    void molarPointMayLieInFrontOfTheEnd() {
        BuccalSegments shorter = new BuccalSegments(new BetaArch(44, 24), Sides.both(11.3), Sides.both(33));
        assertThat(shorter.along().left()).isEqualTo(21.7, within(1e-9));
        assertThat(shorter.gainAlongArch(1).left()).isBetween(0.7, 0.8);
        BuccalSegments uneven = new BuccalSegments(new BetaArch(44, 24), Sides.both(11.3), new Sides(33, 30));
        assertThat(uneven.gainAlongArch(0).left()).isEqualTo(0, within(1e-9));
        assertThat(uneven.gainAlongArch(0).right()).isEqualTo(0, within(1e-9));
    }

    @Test
    void refusesWhatNoAdvancementGives() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WORKED.advancementByChord(Sides.both(5)))
                .withMessageContaining("less");
        assertThatIllegalArgumentException().isThrownBy(() -> WORKED.advancementAlongArch(Sides.both(200)));
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
