package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import org.junit.jupiter.api.Test;

class ActivationsTest {
    private static Activations of(CaseBuilder b) {
        return new Activations(b.build());
    }

    private static Measured response(CaseBuilder b) {
        return Response.of(of(b), Side.LEFT, Workbook.none());
    }

    private static CaseBuilder visits(int n) {
        CaseBuilder b = SampleCase.full();
        for (int i = n; i < 3; i++) {
            b.drop("/visits/" + i + "/");
        }
        return b;
    }

    @Test
    void weeksRunFromTheActivationBefore() {
        Activations a = of(visits(3));
        assertThat(a.weeksSince(0).applies()).isFalse();
        // 20 January to 24 February: 35 days
        assertThat(a.weeksSince(1).value()).isCloseTo(5, within(1e-12));
        Activations skipped = of(visits(3).set("/visits/1/activated", "none"));
        assertThat(skipped.weeksSince(1).applies()).isFalse();
        assertThat(skipped.weeksSince(2).value())
                .as("a look without opening is passed over")
                .isCloseTo(10, within(1e-12));
        assertThat(of(visits(3).without("/visits/1/date")).weeksSince(2).missing())
                .containsExactly("/visits/1/date");
        assertThat(of(visits(3).without("/visits/1/activated")).weeksSince(2).missing())
                .containsExactly("/visits/1/activated");
    }

    @Test
    void responseComparesGainWithWhatOpeningsShouldGive() {
        // one opening before the second visit: gap 0.8 at a leg of 3.1, bend radius 1.004
        double sin = 0.8 / 3.1;
        double a = Math.asin(sin);
        double forward = 2 * Math.PI * 1.004 / (Math.PI - a) * sin + 3.1 * (1 - Math.cos(a));
        assertThat(response(visits(2)).value())
                .isCloseTo(100 * 0.5 / (forward * Math.cos(Math.toRadians(30))), within(1e-6));
    }

    @Test
    void responseDoesNotApplyBeforeTwoVisitsOrWhereTheSideWasNotOpened() {
        assertThat(response(visits(1)).applies()).isFalse();
        assertThat(response(visits(2).set("/visits/1/activated", "right")).applies())
                .isTrue();
        assertThat(response(visits(2).set("/visits/0/activated", "right").set("/visits/1/activated", "right"))
                        .applies())
                .isFalse();
        assertThat(response(visits(0)).missing()).containsExactly("/visits");
    }

    @Test
    void responseNamesTheReadingThatIsMissing() {
        assertThat(response(visits(2).without("/visits/1/left/space")).missing())
                .containsExactly("/visits/1/left/space");
        assertThat(response(visits(2).without("/visits/0/left/space")).missing())
                .as("a segment of the first models is another measurement, and stands in for nothing")
                .containsExactly("/visits/0/left/space");
        assertThat(response(visits(2).without("/visits/0/left/gapOpened")).missing())
                .containsExactly("/visits/0/left/gapOpened");
    }

    @Test
    void aSideThatWasNotOpenedAddsNothing() {
        CaseBuilder b = visits(2).set("/visits/0/activated", "right").set("/visits/1/activated", "right");
        b.without("/visits/0/left/gapOpened").without("/visits/1/left/gapOpened");
        assertThat(of(b).forward(Side.LEFT).value()).isZero();
        assertThat(of(b).forward(Side.RIGHT).value()).isPositive();
    }

    @Test
    void anOpeningThatNobodyWroteDownLiesBetweenNothingAndTheWidest() {
        Activations told = of(visits(2));
        assertThat(told.forwardAtLeast(Side.LEFT)).isEqualTo(told.forward(Side.LEFT));
        assertThat(told.forwardAtMost(Side.LEFT)).isEqualTo(told.forward(Side.LEFT));
        Activations gap = of(visits(2).without("/visits/1/left/gapOpened"));
        assertThat(gap.forwardAtLeast(Side.LEFT))
                .isEqualTo(of(visits(2).set("/visits/1/activated", "right")).forward(Side.LEFT));
        assertThat(gap.forwardAtMost(Side.LEFT).value())
                .isEqualTo(of(visits(2).set("/visits/1/left/gapOpened", 6))
                        .forward(Side.LEFT)
                        .value());
        Activations which = of(visits(2).without("/visits/1/activated"));
        assertThat(which.forwardAtLeast(Side.LEFT)).isEqualTo(gap.forwardAtLeast(Side.LEFT));
        assertThat(which.forwardAtMost(Side.LEFT)).isEqualTo(told.forward(Side.LEFT));
        Activations right = of(visits(2).set("/visits/1/activated", "right").without("/visits/1/left/gapOpened"));
        assertThat(right.forwardAtMost(Side.LEFT)).isEqualTo(right.forward(Side.LEFT));
    }

    @Test
    void advanceCountsFromTheLastRecheck() {
        assertThat(of(visits(3)).sinceRecheck().value())
                .as("1.2 now, 0.6 when checked again")
                .isCloseTo(0.6, within(1e-12));
        assertThat(of(visits(3).set("/visits/1/inclinationRechecked", false))
                        .sinceRecheck()
                        .value())
                .isCloseTo(1.2, within(1e-12));
        assertThat(of(visits(3).without("/visits/1/inclinationRechecked"))
                        .sinceRecheck()
                        .value())
                .as("a check that nobody recorded is none")
                .isCloseTo(1.2, within(1e-12));
    }
}
