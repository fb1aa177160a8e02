package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
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

    @Test
    void anOpeningOfWhichNobodyKnowsWhetherItWasMadeLeavesTheTravelOpen() {
        Activations which = of(visits(2).without("/visits/1/activated"));
        assertThat(which.forward(Side.LEFT).missing()).containsExactly("/visits/1/activated");
        Activations never = of(visits(2).set("/visits/1/activated", CaseBuilder.NOT_APPLICABLE));
        assertThat(never.forward(Side.LEFT).applies()).isFalse();
        assertThat(never.forwardAtLeast(Side.LEFT).applies()).isFalse();
        assertThat(of(visits(2).set("/visits/1/left/gapOpened", CaseBuilder.NOT_APPLICABLE))
                        .forwardAtMost(Side.LEFT)
                        .applies())
                .isFalse();
    }

    @Test
    void weeksSinceAreOpenWhileAnEarlierOpeningIs() {
        Activations a = of(visits(3).set("/visits/0/activated", "none").without("/visits/1/activated"));
        assertThat(a.weeksSince(1).missing()).containsExactly("/visits/1/activated");
        assertThat(a.weeksSince(2).missing()).containsExactly("/visits/1/activated");
        assertThat(of(visits(3).set("/visits/0/activated", "none")).weeksSince(1))
                .as("the first opening of all")
                .isEqualTo(Measured.notApplicable());
        assertThat(of(visits(1).without("/visits/0/activated")).weeksSince(0).applies())
                .isFalse();
    }

    /** 20 January, 24 February and 31 March are five weeks apart. */
    @Test
    void aWireGoesUnseenFromTheVisitToTheNextOnceAFoldWasOpened() {
        Fact<LocalDate> day = Fact.of(LocalDate.parse("2026-04-07"));
        CaseBuilder b = visits(3).without("/holding/debonded");
        assertThat(of(b).weeksUnseen(0, day).value()).isCloseTo(5, within(1e-12));
        assertThat(of(b).weeksUnseen(2, day).value()).as("until today").isCloseTo(1, within(1e-12));
        assertThat(of(b.set("/holding/debonded", "2026-04-14"))
                        .weeksUnseen(2, day)
                        .value())
                .isCloseTo(1, within(1e-12));
        assertThat(of(b).weeksUnseen(2, Fact.unknown("/date")).value()).isCloseTo(2, within(1e-12));
        b.set("/visits/0/activated", "none");
        assertThat(of(b).weeksUnseen(0, day).applies()).isFalse();
        assertThat(of(b).weeksUnseen(1, day).value()).isCloseTo(5, within(1e-12));
        b.without("/visits/0/activated");
        assertThat(of(b).weeksUnseen(0, day).missing()).containsExactly("/visits/0/activated");
        assertThat(of(b).weeksUnseen(1, day).value()).isCloseTo(5, within(1e-12));
    }

    @Test
    void somebodyDecidesOnAFilmOfTheRootsOrTheMonthsAreCounted() {
        Fact<LocalDate> day = Fact.of(LocalDate.parse("2026-03-20"));
        CaseBuilder b = visits(2).set("/visits/0/rootFilmDecided", false).set("/visits/1/rootFilmDecided", false);
        assertThat(of(b).monthsWithoutRootDecision(day).value()).isCloseTo(2, within(1e-12));
        assertThat(of(b.set("/holding/debonded", "2026-02-20"))
                        .monthsWithoutRootDecision(day)
                        .value())
                .isCloseTo(1, within(1e-12));
        assertThat(of(b).rootDecisionTold()).isEqualTo(Answer.YES);
        assertThat(of(b.without("/visits/0/rootFilmDecided")).rootDecisionTold())
                .isEqualTo(Answer.NO);
        assertThat(of(b.set("/visits/0/rootFilmDecided", true))
                        .monthsWithoutRootDecision(day)
                        .applies())
                .isFalse();
        assertThat(of(visits(0)).monthsWithoutRootDecision(day).missing()).containsExactly("/visits");
        assertThat(of(visits(0)).rootDecisionTold().missing()).containsExactly("/visits");
    }

    @Test
    void aCheckOfTheInclinationCountsFromWhatWasMeasuredThere() {
        CaseBuilder b = visits(3).set("/visits/0/incisorAdvance", 0.2).set("/visits/0/inclinationRechecked", true);
        assertThat(of(b.set("/visits/1/inclinationRechecked", false))
                        .sinceRecheck()
                        .value())
                .as("1.2 now, 0.2 at the first visit")
                .isCloseTo(1.0, within(1e-12));
        assertThat(of(b).recheckTold()).isEqualTo(Answer.YES);
        Activations unmeasured = of(b.without("/visits/0/incisorAdvance"));
        assertThat(unmeasured.sinceRecheck().value()).as("all of it").isCloseTo(1.2, within(1e-12));
        assertThat(unmeasured.recheckTold()).isEqualTo(Answer.NO);
        Activations last = of(b.set("/visits/2/inclinationRechecked", true).without("/visits/2/incisorAdvance"));
        assertThat(last.sinceRecheck().value()).isZero();
        assertThat(last.recheckTold()).isEqualTo(Answer.YES);
        CaseBuilder never = visits(3).set("/visits/1/inclinationRechecked", false);
        assertThat(of(never).recheckTold()).isEqualTo(Answer.YES);
        assertThat(of(never.without("/visits/1/inclinationRechecked")).recheckTold())
                .isEqualTo(Answer.NO);
        assertThat(of(visits(3).without("/visits/0/inclinationRechecked")).recheckTold())
                .as("what was before the last check is no matter")
                .isEqualTo(Answer.YES);
        assertThat(of(visits(3).without("/visits/2/inclinationRechecked")).recheckTold())
                .isEqualTo(Answer.NO);
        assertThat(of(visits(0)).recheckTold().missing()).containsExactly("/visits");
    }

    @Test
    void theFrontHasComeAsFarAsItsReadingsSay() {
        assertThat(Progressed.until(visits(2).build(), Side.LEFT, 1).value())
                .as("0.5 mm of space, by which a side grows for 0.866 mm of advance")
                .isCloseTo(0.5 / Math.cos(Math.toRadians(30)), within(1e-9));
        CaseBuilder unread = visits(2).without("/visits/1/left/space");
        assertThat(Progressed.until(unread.build(), Side.LEFT, 1).value())
                .as("the edge instead")
                .isCloseTo(0.6, within(1e-9));
        assertThat(Progressed.until(unread.without("/visits/1/incisorAdvance").build(), Side.LEFT, 1)
                        .missing())
                .containsExactly("/visits/1/left/space");
        assertThat(Progressed.byIncisors(unread.build()).missing()).containsExactly("/visits/1/incisorAdvance");
        assertThat(Progressed.byIncisors(
                        visits(1).without("/visits/0/incisorAdvance").build()))
                .as("at the first visit nothing can have moved")
                .isEqualTo(Measured.exact(0, Unit.MM));
        assertThat(Progressed.byIncisors(
                                visits(1).set("/visits/0/incisorAdvance", 0.3).build())
                        .value())
                .isEqualTo(0.3);
        assertThat(Progressed.byIncisors(visits(0).build()).missing()).containsExactly("/visits");
    }

    @Test
    void responseIsOpenWhileAnOpeningIsAndThereAreTwoVisits() {
        assertThat(response(visits(1).without("/visits/0/activated")).applies()).isFalse();
        assertThat(response(visits(2).without("/visits/0/activated")).missing()).containsExactly("/visits/0/activated");
    }

    /** What a child gains more for each mm it needs less of: both ways the spread of the gain cancels. */
    @Test
    void anAdvanceWorkedOutFromARoomFallsAsTheGainGrows() {
        Measured advance = Measured.exact(2, Unit.MM);
        assertThat(SideGain.spreadOf(advance).sd()).isCloseTo(2 * 0.1125 / SideGain.PER_ADVANCE, within(1e-9));
        assertThat(SideGain.room(SideGain.spreadOf(advance)).sd()).isCloseTo(0, within(1e-9));
        assertThat(SideGain.room(SideGain.advance(advance)).sd()).isCloseTo(0, within(1e-9));
    }
}
