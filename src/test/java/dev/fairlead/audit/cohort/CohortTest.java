package dev.fairlead.audit.cohort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.testing.InRange;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CohortTest {
    private static final long SEED = 20;

    @Test
    void aCaseIsTheSameAloneAmongOthersBackwardsAndInParallel() {
        List<PlantedCase> all = Cohort.generate(300, SEED).toList();
        assertThat(Cohort.generate(300, SEED).parallel().toList().equals(all)).isTrue();
        List<Integer> order = IntStream.range(0, 300).boxed().collect(Collectors.toList());
        Collections.reverse(order);
        for (int i : order) {
            assertThat(Cohort.one(SEED, i).equals(all.get(i))).as("case " + i).isTrue();
        }
        assertThat(Cohort.generate(300, SEED + 1).toList().equals(all)).isFalse();
        assertThat(all.stream().map(c -> c.made().space()).distinct().count()).isGreaterThan(295);
    }

    @Test
    void everyValueLiesInTheRangeOfItsField() {
        Cohort.generate(1000, SEED)
                .forEach(c -> assertThat(InRange.complaints(c.made()))
                        .as(c.made().id())
                        .isEmpty());
        for (Fault f : Cohort.faults()) {
            with(f).ifPresent(c ->
                    assertThat(InRange.complaints(c.made())).as(f.criterion()).isEmpty());
        }
    }

    @Test
    void everyCaseIsReadBackAsItWasWritten() {
        Cohort.generate(300, SEED).forEach(c -> {
            CaseReading back = CaseReader.read(
                    CaseWriter.json(c.made()).getBytes(StandardCharsets.UTF_8),
                    c.made().id(),
                    CaseFormat.JSON);
            assertThat(back.problems()).as(c.made().id()).isEmpty();
            assertThat(back.value().filter(c.made()::equals)).as(c.made().id()).isPresent();
        });
    }

    @Test
    void allStagesResidentsAndMonthsOfTwoYearsAreThere() {
        List<Case> cases = Cohort.generate(3000, SEED).map(PlantedCase::made).toList();
        assertThat(cases.stream().map(c -> c.stage().get()).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(Stage.values());
        assertThat(cases.stream().map(c -> c.resident().get()).distinct().count())
                .isEqualTo(24);
        Set<String> months = cases.stream()
                .map(c -> c.date().get().toString().substring(0, 7))
                .collect(Collectors.toSet());
        assertThat(months).hasSizeGreaterThanOrEqualTo(24);
        assertThat(cases.stream().map(Case::id).distinct().count()).isEqualTo(3000);
    }

    @Test
    void everyFaultCanBePlantedAndChangesOnlyAPartOfTheCase() {
        for (Fault f : Cohort.faults()) {
            Optional<PlantedCase> found = Optional.empty();
            for (int i = 0; i < 400 && found.isEmpty(); i++) {
                found = Cohort.with(f, SEED, i);
                if (found.isPresent()) {
                    int changed = changed(Cohort.clean(SEED, i), found.get().made());
                    assertThat(changed).as(f.criterion()).isBetween(1, 12);
                    assertThat(found.get().warns()).contains(f.criterion());
                    assertThat(Fault.reached(found.get().made()).hasReached(f.stage()))
                            .isTrue();
                }
            }
            assertThat(found).as(f.criterion() + " fits no case").isPresent();
        }
    }

    @Test
    void everyGapMakesItsFactsUnknownAndChangesNothingElse() {
        for (PlantedGap g : Cohort.gaps()) {
            Optional<PlantedCase> found = Optional.empty();
            for (int i = 0; i < 400 && found.isEmpty(); i++) {
                found = Cohort.with(g, SEED, i);
                if (found.isPresent()) {
                    Case clean = Cohort.clean(SEED, i);
                    List<String> now = unknown(found.get().made());
                    now.removeAll(unknown(clean));
                    assertThat(now).as(g.criterion()).hasSameSizeAs(g.pointers());
                    assertThat(changed(clean, found.get().made()))
                            .isEqualTo(g.pointers().size());
                }
            }
            assertThat(found).as(g.criterion() + " fits no case").isPresent();
        }
    }

    @Test
    void faultsKeepTheirStatedRates() {
        long seed = 5;
        List<PlantedCase> cases = Cohort.generate(4_000, seed).toList();
        Map<String, Integer> seen = new TreeMap<>();
        Map<String, Double> expected = new TreeMap<>();
        for (int i = 0; i < cases.size(); i++) {
            cases.get(i).planted().stream()
                    .filter(p -> p.kind() == Planted.Kind.WARNS)
                    .forEach(p -> seen.merge(p.criterion(), 1, Integer::sum));
            Case clean = Cohort.clean(seed, i);
            for (Fault f : Cohort.faults()) {
                if (f.fits(clean)) {
                    expected.merge(f.criterion(), f.rate() * (1 - Cohort.SHARE_WITH_GAPS), Double::sum);
                }
            }
        }
        assertThat(seen.keySet()).isEqualTo(expected.keySet());
        // four and a half standard deviations of a count, since some eighty are looked at
        expected.forEach((criterion, mean) ->
                assertThat((double) seen.get(criterion)).as(criterion).isCloseTo(mean, within(4.5 * Math.sqrt(mean))));
    }

    @Test
    void noCaseHasBothGapsAndFaultsAndTheirTruthIsComplete() {
        List<PlantedCase> cases = Cohort.generate(2000, SEED).toList();
        assertThat(cases).allMatch(c -> c.warns().isEmpty() || c.notAssessed().isEmpty());
        assertThat(cases)
                .anyMatch(c -> !c.warns().isEmpty())
                .anyMatch(c -> !c.notAssessed().isEmpty())
                .anyMatch(c -> c.planted().isEmpty());
    }

    @Test
    void cleanCasesAgreeWithThemselves() {
        for (int i = 0; i < 1000; i++) {
            Case c = Cohort.clean(SEED, i);
            double sum = Tooth.LOWER_INCISORS.stream()
                    .mapToDouble(t -> c.tooth(t).width().value())
                    .sum();
            // Tanaka & Johnston 1974: half the incisor sum and 10.5 mm
            double need = sum / 2 + 10.5;
            double lack = sum - c.space().incisors().value();
            for (Side side : Side.values()) {
                double shortage = need - c.space().side(side).value() + lack / 2;
                assertThat(shortage).isBetween(0.6, 2.8);
                assertThat(c.plan().advance(side).value() * InventedChild.GAIN)
                        .isBetween(shortage - 0.9, shortage + 0.9);
            }
            assertThat(c.space()
                            .left()
                            .plus(c.space().right())
                            .plus(c.space().incisors())
                            .minus(c.space().perimeter())
                            .abs()
                            .value())
                    .isLessThan(0.7);
            List<LocalDate> dates = new java.util.ArrayList<>(List.of(
                    c.films().headFilm().get(),
                    c.films().models().get(),
                    c.plan().start().get()));
            c.visits().forEach(v -> dates.add(v.date().get()));
            if (c.stage().is(Stage.HOLDING)) {
                dates.addAll(List.of(
                        c.holding().impression().get(),
                        c.holding().cemented().get(),
                        c.holding().debonded().get(),
                        c.date().get()));
            }
            assertThat(dates).isSorted();
        }
    }

    /** The mean of two readings, each off by its own error, is what is judged. */
    @Test
    void noCleanCaseTendsToClassThree() {
        for (int i = 0; i < 12_000; i++) {
            assertThat(Cohort.clean(SEED, i).headFilm().anb().value()).isGreaterThanOrEqualTo(1);
        }
    }

    private static Optional<PlantedCase> with(Fault f) {
        return IntStream.range(0, 400)
                .mapToObj(i -> Cohort.with(f, SEED, i))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static int changed(Case a, Case b) {
        Set<String> pointers = new HashSet<>(Edit.factPointers(a));
        pointers.addAll(Edit.factPointers(b));
        return (int) pointers.stream()
                .filter(p -> !Edit.get(a, p).equals(Edit.get(b, p)))
                .count();
    }

    private static List<String> unknown(Case c) {
        return Edit.factPointers(c).stream()
                .filter(p -> !((CaseValue) Edit.get(c, p)).missing().isEmpty())
                .collect(Collectors.toList());
    }
}
