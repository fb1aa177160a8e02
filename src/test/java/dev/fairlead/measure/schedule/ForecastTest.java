package dev.fairlead.measure.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forecasts of whole cases against arithmetic by hand. */
class ForecastTest {
    private static CaseBuilder before() {
        return SampleCase.full().set("/plan/start", "2026-03-10").drop("/visits");
    }

    private static Worked work(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept());
    }

    private static Forecast forecast(CaseBuilder b) {
        return work(b).forecast().orElseThrow();
    }

    @Test
    void anyChildIsExpectedToRunDownTwoThirds() {
        Forecast f = forecast(before().set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 1.5)
                .set("/plan/standOff", 1.5)
                .set("/plan/intervalWeeks", 5));
        assertThat(f.side(Side.LEFT).response().estimate()).isEqualTo(OwnResponse.EXPECTED.prior());
        Route r = f.planned().orElseThrow();
        // 0.65 x 1.5 = 0.975 mm a visit: 2 mm take 3. Fast: 0.979 x 1.5 = 1.468, but at most 5 weeks x 1 mm a month =
        // 1.150: 2. Slow: 0.321 x 1.5 = 0.4815: 5.
        assertThat(r.activations()).isEqualTo(new ExpectedRange<>(2, 3, 5));
        assertThat(r.visits()).isEqualTo(new ExpectedRange<>(2, 3, 5));
        assertThat(r.end().orElseThrow())
                .isEqualTo(new ExpectedRange<>(
                        LocalDate.of(2026, 3, 10).plusWeeks(10),
                        LocalDate.of(2026, 3, 10).plusWeeks(15),
                        LocalDate.of(2026, 3, 10).plusWeeks(25)));
        assertThat(f.side(Side.RIGHT).reached().orElseThrow()).isEqualTo(new ExpectedRange<>(2, 2, 4));
        assertThat(f.routes()).extracting(Route::pattern).containsExactly(Pattern.BOTH_SIDES, Pattern.ALTERNATING);
        assertThat(f.routes().get(1).visits().expected())
                .isGreaterThan(r.visits().expected());
    }

    @Test
    void pointsRunFromTheSpaceNowToTheSpaceAfterThePlan() {
        Forecast f = forecast(before());
        SideForecast left = f.side(Side.LEFT);
        List<SideForecast.Point> p = left.points();
        assertThat(p.get(0).space()).isEqualTo(left.space().value(), within(1e-12));
        assertThat(p.get(p.size() - 1).space())
                .isEqualTo(left.space().value() + 0.866025 * left.planned().value(), within(1e-5));
        assertThat(p).allMatch(x -> x.low() <= x.space() && x.space() <= x.high());
        assertThat(left.lackingAfter().value())
                .isEqualTo(left.target().value() - p.get(p.size() - 1).space(), within(1e-9));
        // the space before the first visit lacks just what the space analysis says
        assertThat(left.target().minus(left.space()).value())
                .isEqualTo(work(before()).space().left().shortage().value(), within(1e-9));
    }

    /**
     * Two intervals of 1.5 mm stand-off: 3 mm in all; the space has grown by 1.0 mm, so the front came 1.0 / 0.866 =
     * 1.155 mm.
     */
    @Test
    void loggedVisitsDrawTheForecastTowardsTheChild() {
        Forecast f = forecast(SampleCase.full());
        OwnResponse left = f.side(Side.LEFT).response();
        assertThat(left.steps()).extracting(OwnResponse.Step::visit).containsExactly(2, 3);
        OwnResponse.Step last = left.steps().get(1);
        assertThat(last.own().value()).isEqualTo(1.0 / 0.8660254 / 3, within(1e-6));
        // readings: 0.25 mm twice over 0.866 and over 3; stand-offs 0.2 mm twice over 3; scatter 0.15 x sqrt(2) / 2
        double own = last.own().value();
        double error = Math.sqrt(Math.pow(0.25 * Math.sqrt(2) / 0.8660254 / 3, 2)
                + Math.pow(own * 0.2 * Math.sqrt(2) / 3, 2)
                + Math.pow(0.15 / Math.sqrt(2), 2)
                // 1.2 to 2.1 mm of arch per mm of advance as two standard deviations: 0.45 / 4 a side over 0.866
                + Math.pow(own * 0.1125 / 0.8660254, 2));
        assertThat(last.own().sd()).isEqualTo(error, within(1e-6));
        double weight = 0.04 / (0.04 + error * error);
        assertThat(last.weight()).isEqualTo(weight, within(1e-6));
        assertThat(left.estimate().value()).isEqualTo(weight * own + (1 - weight) * 0.65, within(1e-6));
        assertThat(left.estimate().error()).isLessThan(0.20);
        assertThat(left.outOfBand()).isFalse();
        assertThat(f.side(Side.LEFT).done().value()).isEqualTo(1.0 / 0.8660254, within(1e-6));
        assertThat(f.side(Side.LEFT).points())
                .filteredOn(SideForecast.Point::measured)
                .extracting(SideForecast.Point::visit)
                .containsExactly(-2, -1, 0);
    }

    @Test
    void aSideThatDoesNotMoveIsOutOfBandAndSlow() {
        CaseBuilder still = SampleCase.full();
        for (int v = 0; v < 3; v++) {
            still.set("/visits/" + v + "/left/space", 20.5)
                    .set("/visits/" + v + "/left/standOff", 2.0)
                    .set("/visits/" + v + "/right/standOff", 2.0);
        }
        Forecast f = forecast(still);
        assertThat(f.side(Side.LEFT).response().outOfBand()).isTrue();
        assertThat(f.side(Side.LEFT).response().estimate().value())
                .isLessThan(f.side(Side.RIGHT).response().estimate().value());
        assertThat(work(still).workings())
                .filteredOn(w -> w.id().equals("schedule.response.left"))
                .extracting(Working::note)
                .singleElement()
                .asString()
                .contains("out of the usual band");
    }

    @Test
    void leewayDecidesWhetherThePlanFits() {
        // a boy's molar goes from 11.6 - 1.645 x 1.2 = 9.6 years on: at 9.5 years half a year of treatment reaches into
        // that, at 8 it does not
        assertThat(forecast(before().set("/child/age", 9.5)).fit()).isEqualTo(Fit.TIGHT);
        assertThat(forecast(before().set("/child/age", 8)).fit()).isEqualTo(Fit.FITS);
        assertThat(forecast(before().set("/child/age", 13.5)).fit()).isEqualTo(Fit.LATE);
        assertThat(forecast(before().set("/teeth/75/state", "missing").set("/teeth/35/state", "erupted"))
                        .fit())
                .isEqualTo(Fit.SHED);
        assertThat(forecast(before().without("/child/sex")).fit()).isEqualTo(Fit.UNKNOWN);
        double young = forecast(before().set("/child/age", 8)).gone().orElseThrow();
        double old = forecast(before().set("/child/age", 11)).gone().orElseThrow();
        assertThat(young).isLessThan(0.05);
        assertThat(old).isGreaterThan(young);
    }

    @Test
    void whatIsMissingIsNamedAndNothingIsMadeUp() {
        Forecast f = forecast(before().without("/plan/standOff"));
        assertThat(f.routes()).isEmpty();
        assertThat(f.missing()).contains("/plan/standOff");
        assertThat(f.fit()).isEqualTo(Fit.UNKNOWN);
        Forecast undated = forecast(before().without("/plan/start"));
        assertThat(undated.planned().orElseThrow().end()).isEmpty();
        assertThat(undated.missing()).contains("/plan/start");
        Forecast blank = forecast(new CaseBuilder());
        assertThat(blank.routes()).isEmpty();
        assertThat(work(new CaseBuilder()).workings())
                .filteredOn(w -> w.group().equals("Schedule"))
                .filteredOn(w -> !w.id().startsWith("schedule.response"))
                .isNotEmpty()
                .noneMatch(w -> w.value().known());
    }

    @Test
    void aLateStartBeginsToday() {
        Forecast f = forecast(before().set("/plan/start", "2026-01-20"));
        assertThat(f.side(Side.LEFT).points().get(0).date()).contains(LocalDate.of(2026, 3, 1));
    }

    @Test
    void readingsAndForecastsAreToldApartAndTheBandGoesOnFromTheLastReading() {
        SideForecast left = forecast(SampleCase.full()).side(Side.LEFT);
        List<SideForecast.Point> read =
                left.points().stream().filter(SideForecast.Point::measured).toList();
        List<SideForecast.Point> ahead =
                left.points().stream().filter(p -> !p.measured()).toList();
        assertThat(read).hasSize(3).allMatch(p -> p.visit() <= 0);
        SideForecast.Point last = read.get(2);
        assertThat(last.visit()).isZero();
        assertThat(last.space()).isEqualTo(left.space().value());
        // nine of ten: 1.645 standard errors of the reading to either side
        assertThat(last.high() - last.space())
                .isEqualTo(1.6448536 * left.space().sd(), within(1e-6));
        for (SideForecast.Point p : ahead) {
            assertThat(p.visit()).isPositive();
            assertThat(p.high() - p.low()).isGreaterThanOrEqualTo(last.high() - last.low() - 1e-9);
        }
    }

    @Test
    void aLastVisitWhoseSpaceNobodyReadIsNoReading() {
        SideForecast left =
                forecast(SampleCase.full().without("/visits/2/left/space")).side(Side.LEFT);
        assertThat(left.points().stream().filter(p -> p.visit() == 0 && p.measured()))
                .isEmpty();
    }

    @Test
    void sidesOfASidedPlanRunByTheirOwnStandOff() {
        // 0.65 of 1.5 mm is 0.975 mm a visit, of 0.75 mm 0.4875: 2 mm take 3 visits on the left and 5 on the right
        Forecast f = forecast(before().set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 2)
                .without("/plan/standOff")
                .set("/plan/standOffLeft", 1.5)
                .set("/plan/standOffRight", 0.75)
                .set("/plan/intervalWeeks", 5));
        assertThat(f.side(Side.LEFT).reached().orElseThrow().expected()).isEqualTo(3);
        assertThat(f.side(Side.RIGHT).reached().orElseThrow().expected()).isEqualTo(5);
    }

    /**
     * 2 mm, stand-off 1.5, five weeks: after one interval 0.975 mm, at least 0.321 x 1.5, at most 5 weeks x 1 mm a
     * month.
     */
    private static CaseBuilder byHand() {
        return before().set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 1.5)
                .set("/plan/standOff", 1.5)
                .set("/plan/intervalWeeks", 5);
    }

    private static final double REACH = 1.6448536;

    @Test
    void theBandJoinsWhatIsUnsureOfReadingCourseAndGain() {
        SideForecast left = forecast(byHand()).side(Side.LEFT);
        double chord = Math.cos(Math.toRadians(30));
        double start = left.space().value();
        double fast = chord * Unit.WEEK.to(Unit.MONTH, 5);
        double expected = chord * 0.975;
        double slow = chord * (0.65 - REACH * 0.2) * 1.5;
        SideForecast.Point one = left.points().get(1);
        double unsure = Math.hypot(REACH * left.space().sd(), REACH * 0.1125 * expected / chord);
        assertThat(one.space()).isEqualTo(start + expected, within(1e-6));
        assertThat(one.high()).isEqualTo(start + expected + Math.hypot(fast - expected, unsure), within(1e-6));
        assertThat(one.low()).isEqualTo(start + expected - Math.hypot(expected - slow, unsure), within(1e-6));
        SideForecast.Point last = left.points().get(left.points().size() - 1);
        assertThat(last.visit()).as("the slow course takes five").isEqualTo(5);
        double end = Math.hypot(REACH * left.space().sd(), REACH * 0.1125 * 2);
        assertThat(last.high()).isEqualTo(start + 2 * chord + end, within(1e-6));
    }

    @Test
    void aClinicsOwnFiguresReplaceThePublishedOnes() {
        Clinic own =
                new Clinic(new Clinic.Spread(1, 0.1), new Clinic.Spread(0.65, 0.2), new Clinic.Spread(1.25, 0.1), 20);
        CaseBuilder b = byHand();
        Case c = b.build();
        SideForecast left = Forecast.of(c, work(b).space(), Fact.unknown("/date"), own, Workbook.none())
                .side(Side.LEFT);
        double chord = 1.25 * Math.cos(Math.toRadians(30));
        double start = left.space().value();
        SideForecast.Point last = left.points().get(left.points().size() - 1);
        assertThat(last.space()).isEqualTo(start + 2 * chord, within(1e-9));
        assertThat(last.high() - last.space())
                .isEqualTo(REACH * Math.hypot(left.space().sd(), 0.1 / 1.25 * 2 * chord), within(1e-6));
        assertThat(left.needed().value()).isEqualTo((left.target().value() - start) / chord, within(1e-9));
        assertThat(left.lackingAfter().value()).isEqualTo(left.target().value() - start - 2 * chord, within(1e-9));
    }

    @Test
    void thePlansOwnWayIsTheOneThatIsPromised() {
        CaseBuilder b = byHand().set("/plan/pattern", "alternating");
        Forecast alternating = forecast(b);
        assertThat(alternating.planned().orElseThrow().pattern()).isEqualTo(Pattern.ALTERNATING);
        assertThat(alternating.gone().orElseThrow())
                .as("it takes longer")
                .isGreaterThan(forecast(byHand()).gone().orElseThrow());
        Case c = b.build();
        assertThat(Forecast.now(c, work(b).space(), Clinic.PUBLISHED)).isEqualTo(alternating.planned());
        CaseBuilder started = b.copy().set("/visits/0/date", "2026-03-10").set("/visits/0/activated", "both");
        assertThat(Forecast.atStart(started.build(), work(b).space(), Clinic.PUBLISHED))
                .as("as if no visit had been")
                .isEqualTo(alternating.planned());
        assertThat(Forecast.now(b.without("/plan/pattern").build(), work(b).space(), Clinic.PUBLISHED))
                .isEmpty();
        CaseBuilder still = byHand().set("/plan/standOff", 0.01);
        assertThat(Forecast.now(still.build(), work(still).space(), Clinic.PUBLISHED))
                .as("a wire that hardly stands off never gets there")
                .isEmpty();
        assertThat(Forecast.now(
                        byHand().without("/plan/standOff").build(), work(still).space(), Clinic.PUBLISHED))
                .isEmpty();
    }

    /** In the first interval from now a side runs down its share of what stands off now. */
    @Test
    void theStandOffNowIsThatOfTheLastVisit() {
        CaseBuilder b = SampleCase.full().set("/visits/2/left/standOff", 0.5);
        assertThat(nextGain(b)).isEqualTo(0.5, within(1e-6));
        assertThat(nextGain(b.without("/visits/2/left/standOff")))
                .as("opened and not read: as planned")
                .isEqualTo(1.5, within(1e-6));
        assertThat(nextGain(b.set("/visits/2/activated", "right"))).isZero();
    }

    private static double nextGain(CaseBuilder b) {
        SideForecast left = forecast(b).side(Side.LEFT);
        SideForecast.Point next =
                left.points().stream().filter(p -> p.visit() == 1).findFirst().orElseThrow();
        double share = left.response().estimate().value();
        return (next.space() - left.space().value()) / Math.cos(Math.toRadians(30)) / share;
    }

    @Test
    void readingsStayWhereNoForecastCanBeMade() {
        SideForecast left =
                forecast(SampleCase.full().without("/plan/standOff")).side(Side.LEFT);
        assertThat(left.points()).hasSize(3).allMatch(SideForecast.Point::measured);
        assertThat(left.points())
                .allSatisfy(p -> assertThat(p.space() - p.low())
                        .isEqualTo(p.high() - p.space(), within(1e-9))
                        .isEqualTo(REACH * 0.25, within(1e-6)));
    }

    @Test
    void aReadingThatIsMissingAtTheLastVisitIsNamed() {
        CaseBuilder b = SampleCase.full().without("/visits/1/left/space").without("/visits/1/incisorAdvance");
        assertThat(forecast(b).side(Side.LEFT).response().missing()).isEmpty();
        assertThat(forecast(b).side(Side.LEFT).response().steps()).hasSize(1);
        b.without("/visits/2/left/space").without("/visits/2/incisorAdvance");
        assertThat(forecast(b).side(Side.LEFT).response().missing()).containsExactly("/visits/2/left/space");
    }

    @Test
    void aMolarIsToldByItselfOrByThePlaceOfItsSuccessor() {
        CaseBuilder b = before().without("/teeth/75/state")
                .without("/teeth/85/state")
                .set("/teeth/35/state", "primary-present")
                .set("/teeth/45/state", "unerupted");
        Forecast f = forecast(b);
        assertThat(f.shedding(PrimaryTooth.SECOND_MOLAR, Side.LEFT).stands()).isEqualTo(Answer.YES);
        assertThat(f.shedding(PrimaryTooth.SECOND_MOLAR, Side.RIGHT).stands().missing())
                .containsExactly("/teeth/85/state");
        CaseBuilder seen = before().set("/films/models", "2026-02-01").set("/films/headFilm", "2026-01-01");
        assertThat(forecast(seen).shedding(PrimaryTooth.CANINE, Side.LEFT).seen())
                .contains(LocalDate.of(2026, 2, 1));
        assertThat(forecast(seen.without("/films/models"))
                        .shedding(PrimaryTooth.CANINE, Side.LEFT)
                        .seen())
                .contains(LocalDate.of(2026, 1, 1));
        assertThat(forecast(seen.without("/films/headFilm"))
                        .shedding(PrimaryTooth.CANINE, Side.LEFT)
                        .seen())
                .as("the day of the case")
                .contains(LocalDate.of(2026, 3, 1));
    }
}
