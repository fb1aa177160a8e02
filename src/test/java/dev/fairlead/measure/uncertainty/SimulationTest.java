package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Random draws against first-order propagation, which is exact for linear values of normal errors. */
class SimulationTest {
    private static final int DRAWS = 5_000;
    private static final Case CASE = new CaseBuilder()
            .incisors(5.5, 5.5, 5.5, 5.5)
            .set("/space/left", 20.0)
            .set("/space/right", 21.0)
            .set("/space/incisors", 22.0)
            .set("/headFilm/incisorMandibular", 90.0)
            .set("/headFilm/mandibularPlane", 27.0)
            .set("/plan/advanceLeft", 2)
            .set("/plan/advanceRight", 2)
            .build();

    private static Worked work(Case c) {
        return Measures.of(c, Optional.empty(), Workbook.none());
    }

    private static VariantJudge over(Function<Worked, Measured> value, double limit) {
        return c -> new int[] {value.apply(work(c)).value() > limit ? 1 : 0};
    }

    private static Simulation drawn(Case c, VariantJudge outcomes, int draws, long seed) {
        return Simulation.of(c, outcomes, measurements -> (criterion, deviations) -> false, draws, seed);
    }

    /** Standard error of a share of draws, by the binomial distribution. */
    private static double error(Simulation s) {
        double p = s.flips()[0];
        return Math.sqrt(p * (1 - p) / s.draws());
    }

    private static void agrees(Function<Worked, Measured> value, double away) {
        Measured now = value.apply(work(CASE));
        Compared c = new Compared("c", "", "v", now, new Limit("c.most", now.value() + away, now.unit(), true), true);
        Simulation s = drawn(CASE, over(value, now.value() + away), DRAWS, 7);
        assertThat(s.flips()[0]).isEqualTo(c.flip(), within(4 * error(s) + 1e-9));
        assertThat(c.flip()).isBetween(0.005, 0.6);
    }

    @Test
    void linearValuesFlipAsOftenAsPropagationSays() {
        // four widths of 0.10 mm each: 0.20 mm in their sum
        assertThat(work(CASE).space().incisors().sd()).isEqualTo(0.2, within(1e-12));
        agrees(w -> w.space().incisors(), 0.2);
        agrees(w -> w.space().incisors(), 0);
        agrees(w -> w.space().left().required(), 0.15);
        agrees(w -> w.space().left().shortage(), 0.3);
        agrees(w -> w.space().totalShortage(), 0.5);
        agrees(w -> w.position().compensated(), 1.5);
    }

    @Test
    void sameSeedSameResultOnAnyNumberOfThreads() throws Exception {
        VariantJudge outcomes = over(
                w -> w.space().totalShortage(),
                work(CASE).space().totalShortage().value() + 0.5);
        double[] once = drawn(CASE, outcomes, 2000, 11).flips();
        assertThat(drawn(CASE, outcomes, 2000, 11).flips()).containsExactly(once);
        ForkJoinPool single = new ForkJoinPool(1);
        assertThat(single.submit(() -> drawn(CASE, outcomes, 2000, 11).flips()).get())
                .containsExactly(once);
        single.shutdown();
        List<Double> seeds = new ArrayList<>();
        for (long seed = 1; seed <= 5; seed++) {
            seeds.add(drawn(CASE, outcomes, 2000, seed).flips()[0]);
        }
        assertThat(seeds.stream().distinct().count()).isGreaterThan(1);
    }

    @Test
    void onlyMeasurementsWithAnErrorAreVaried() {
        Simulation s = drawn(SampleCase.full().build(), c -> new int[1], 1, 1);
        assertThat(s.pointers())
                .contains(
                        "/teeth/41/width",
                        "/space/left",
                        "/visits/1/left/space",
                        "/headFilm/anb",
                        "/hardware/contactsNow/42-41")
                .doesNotContain("/plan/advanceLeft", "/wire/plannedSize", "/child/age", "/insertion/bracketsTied")
                .doesNotHaveDuplicates();
        Simulation exact = drawn(new CaseBuilder().set("/plan/advanceLeft", 2).build(), c -> new int[1], 10, 1);
        assertThat(exact.pointers()).isEmpty();
        assertThat(exact.flips()).containsExactly(0);
    }

    /**
     * A case with five pairs counts with its own duplicate error: pairs 0.4 mm apart have 0.2828 mm, their means 0.2
     * mm.
     */
    @Test
    void ownDuplicatesSetTheSpread() {
        CaseBuilder b = new CaseBuilder();
        for (int t : new int[] {42, 41, 31, 32, 73}) {
            b.set("/teeth/" + t + "/width", new double[] {5.3, 5.7});
        }
        Case c = b.build();
        double sum = work(c).space().incisors().value();
        assertThat(work(c).space().incisors().sd()).isEqualTo(0.4, within(1e-9));
        Simulation s = drawn(c, over(w -> w.space().incisors(), sum + 0.4), DRAWS, 3);
        assertThat(s.flips()[0]).isEqualTo(0.158655, within(4 * error(s)));
    }

    @Test
    void readingsStayInTheRangeOfTheirField() {
        Case c = new CaseBuilder().set("/teeth/41/recession", 0.0).build();
        Simulation s = drawn(
                c,
                v -> new int[] {v.teeth().values().iterator().next().recession().value() < 0 ? 1 : 0},
                500,
                1);
        assertThat(s.flips()[0]).isZero();
    }

    /** The drop that repeating promises is the drop that simulation with the smaller error shows. */
    @Test
    void repeatingDropsTheFlipsAsPromised() {
        Function<Worked, Measured> shortage = w -> w.space().left().shortage();
        Measured now = shortage.apply(work(CASE));
        double limit = now.value() + 0.25;
        Compared c = new Compared("c", "", "v", now, new Limit("c.most", limit, Unit.MM, true), true);
        List<Repeat> ranking = Repeat.ranking(new Flips(List.of(c)));
        assertThat(ranking.get(0).pointer()).isEqualTo("/space/left");
        // with one seed both runs draw the same numbers: only the error of the one measurement differs
        double before = drawn(CASE, over(shortage, limit), 2 * DRAWS, 5).flips()[0];
        for (Repeat r : List.of(ranking.get(0), ranking.get(ranking.size() - 1))) {
            double after = drawn(surer(r.pointer()), over(shortage, limit), 2 * DRAWS, 5)
                    .flips()[0];
            assertThat(before - after).isEqualTo(r.drop(), within(0.01));
        }
    }

    /** The case with one measurement known as well as the mean of two readings. */
    private static Case surer(String pointer) {
        Measured m = (Measured) Edit.get(CASE, pointer);
        return Edit.set(CASE, pointer, Measured.of(m.value(), m.unit(), pointer, m.sd() * Math.sqrt(0.5)));
    }

    /** What is linear in normal errors flips in the very draws in which first order says so. */
    @Test
    void firstOrderIsExactDrawByDrawForALinearValue() {
        Measured now = work(CASE).space().left().shortage();
        Compared c = new Compared("c", "", "v", now, new Limit("c.most", now.value() + 0.2, Unit.MM, true), true);
        Flips f = new Flips(List.of(c));
        Simulation s = Simulation.of(
                CASE,
                over(w -> w.space().left().shortage(), now.value() + 0.2),
                measurements -> f.over(List.of("c"), measurements),
                1001,
                9);
        assertThat(s.firstOrder()[0]).isEqualTo(s.flips()[0]).isBetween(0.1, 0.45);
    }

    /** Each criterion is counted apart from the other, by draws and to first order. */
    @Test
    void theShareOfEachCriterionIsItsOwn() {
        Simulation s = Simulation.of(
                CASE,
                c -> new int[] {c == CASE ? 0 : 1, 0, 0},
                measurements -> (criterion, deviations) -> criterion == 1,
                80,
                1);
        assertThat(s.flips()).containsExactly(1, 0, 0);
        assertThat(s.firstOrder()).containsExactly(0, 1, 0);
    }

    @Test
    void everyDrawIsJudgedOnce() {
        for (int draws : new int[] {1, 40, 41, 79}) {
            AtomicInteger judged = new AtomicInteger();
            Simulation s = drawn(CASE, c -> new int[] {judged.incrementAndGet() == 1 ? 0 : 1, 5}, draws, 1);
            assertThat(judged).as("the case itself and " + draws).hasValue(draws + 1);
            // all but the case itself end otherwise, and the second criterion never does
            assertThat(s.flips()).containsExactly(1, 0);
            assertThat(s.firstOrder()).as("none was asked for").containsExactly(0, 0);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drawn(CASE, c -> new int[1], 0, 1))
                .withMessage("a simulation needs at least one draw");
    }
}
