package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Choices.Pattern;
import org.junit.jupiter.api.Test;

/** Visit by visit against the geometric series that the model comes down to. */
class CourseTest {
    private static final double[] NOTHING = {0, 0};

    private static Course run(double left, double right, double share, double most, double standOff, Pattern p) {
        return Course.run(
                new double[] {left, right},
                NOTHING,
                new Course.Drive(new double[] {share, share}, most, new double[] {standOff, standOff}, p, true));
    }

    @Test
    void bothSidesGainTheSameShareEachTime() {
        Course c = run(2, 1.5, 0.5, 9, 1, Pattern.BOTH_SIDES);
        // 0.5 mm a visit: 4 visits on the left, 3 on the right
        assertThat(c.openings()).isEqualTo(4);
        assertThat(c.reached()).containsExactly(4, 3);
        assertThat(c.left()).extracting(l -> l[0]).containsExactly(2.0, 1.5, 1.0, 0.5, 0.0);
    }

    @Test
    void aFoldGoesOnActingWhileTheOtherIsOpened() {
        Course c = run(10, 10, 0.5, 9, 2, Pattern.ALTERNATING);
        // left opened at 0: 2 x 0.5, then what is left of it x 0.5; opened again at 2
        assertThat(c.left().get(1)[0]).isEqualTo(9, within(1e-12));
        assertThat(c.left().get(2)[0]).isEqualTo(8.5, within(1e-12));
        assertThat(c.left().get(3)[0]).isEqualTo(7.5, within(1e-12));
        assertThat(c.left().get(1)[1]).isEqualTo(10, within(1e-12));
        assertThat(c.left().get(2)[1]).isEqualTo(9, within(1e-12));
    }

    @Test
    void inTurnTakesLongerButLessThanTwice() {
        for (double share : new double[] {0.3, 0.65, 1}) {
            int both = run(3, 3, share, 9, 1.5, Pattern.BOTH_SIDES).end();
            int turn = run(3, 3, share, 9, 1.5, Pattern.ALTERNATING).end();
            assertThat(turn).isBetween(both, 2 * both);
        }
    }

    @Test
    void oneSideAloneIsOpenedAtEachVisit() {
        assertThat(run(2, 0, 0.5, 9, 1, Pattern.ALTERNATING).openings())
                .isEqualTo(run(2, 0, 0.5, 9, 1, Pattern.BOTH_SIDES).openings())
                .isEqualTo(4);
        assertThat(run(0, 0, 0.5, 9, 1, Pattern.BOTH_SIDES).end()).isZero();
    }

    @Test
    void noToothOutrunsItsRateAndAStandingWireNeverEnds() {
        assertThat(run(2, 2, 1, 0.4, 2, Pattern.BOTH_SIDES).end()).isEqualTo(5);
        assertThat(run(2, 2, 1, 9, 0, Pattern.BOTH_SIDES).ends()).isFalse();
    }

    @Test
    void whatStandsOffAlreadyActsBeforeTheNextOpening() {
        Course c = Course.run(
                new double[] {1, 1},
                new double[] {1, 1},
                new Course.Drive(new double[] {0.5, 0.5}, 9, new double[] {1, 1}, Pattern.BOTH_SIDES, false));
        assertThat(c.openings()).isEqualTo(1);
        assertThat(c.end()).isEqualTo(2);
    }
}
