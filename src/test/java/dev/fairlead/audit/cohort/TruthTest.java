package dev.fairlead.audit.cohort;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The truth that stands beside invented cases against what the built-in rulebase says of them, criterion by criterion.
 */
class TruthTest {
    private static final long SEED = 11;
    private static final int EACH = 3;
    private static final Set<String> BY_BEAM_MODEL = Set.of("no-permanent-set", "vertical-force", "planned-force-fits");

    private static final Rulebase RULES = Rulebase.builtIn();
    private static final Judge JUDGE = RULES.judge();

    @Test
    void nothingIsFoundInACleanCase() {
        for (int i = 0; i < 60; i++) {
            check(
                    new PlantedCase(Cohort.clean(SEED, i), List.of()),
                    "clean " + i
                            + ": a new input needs its good value in the Baseline* class of its record, in audit.cohort");
        }
    }

    @Test
    void everyFaultIsFoundWithItsConsequencesAndNothingElse() {
        for (Fault f : Cohort.faults()) {
            some(i -> Cohort.with(f, SEED, i)).forEach(c -> check(c, f.criterion() + ": " + f.says()));
        }
    }

    @Test
    void everyGapLeavesItsCriterionNotAssessedWithItsConsequencesAndNothingElse() {
        for (PlantedGap g : Cohort.gaps()) {
            some(i -> Cohort.with(g, SEED, i)).forEach(c -> check(c, g.criterion() + " without " + g.pointers()));
        }
    }

    @Test
    void mixedCasesAreFoundAsPlanted() {
        Cohort.generate(250, SEED).forEach(c -> check(c, c.made().id() + " " + c.planted()));
    }

    /** Without the beam model, so that there are enough for any two faults or gaps to meet. */
    @Test
    void faultsAndGapsThatMeetDoNotHideEachOther() {
        Judge judge = RULES.judge();
        List<String> ids = judge.criteria();
        Cohort.generate(4_000, SEED + 1).parallel().forEach(c -> {
            Ending[] ends = judge.judge(
                            Measures.of(
                                            c.made(),
                                            Optional.empty(),
                                            Workbook.none(),
                                            Calculations.full().withoutForces())
                                    .facts(),
                            CheckOptions.USUAL.reach(c.made()).judged())
                    .endings();
            Set<String> warns = new TreeSet<>(c.warns());
            Set<String> open = new TreeSet<>(c.notAssessed());
            for (int i = 0; i < ends.length; i++) {
                String id = ids.get(i);
                if (ends[i] != null && !BY_BEAM_MODEL.contains(id)) {
                    assertThat(ends[i].warns())
                            .as(c.made().id() + " " + id + " " + c.planted())
                            .isEqualTo(warns.contains(id));
                    assertThat(ends[i] == Ending.NOT_ASSESSED)
                            .as(c.made().id() + " " + id + " " + c.planted())
                            .isEqualTo(open.contains(id));
                }
            }
        });
    }

    @Test
    void everyCriterionHasAFaultOfItsOwn() {
        Set<String> all =
                RULES.catalogue().criteria().stream().map(c -> c.id()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> planted =
                Cohort.faults().stream().map(Fault::criterion).collect(Collectors.toCollection(TreeSet::new));
        assertThat(planted)
                .as(
                        "each criterion needs a case with a fault of its own: add fault(\"its-id\", ...) to the class of its"
                                + " stage among the *Faults of audit.cohort")
                .isEqualTo(all);
        RULES.catalogue()
                .criteria()
                .forEach(c -> assertThat(Cohort.faults().stream()
                                .filter(f -> f.criterion().equals(c.id()))
                                .findFirst()
                                .orElseThrow()
                                .stage())
                        .isEqualTo(c.stage()));
        assertThat(all)
                .containsAll(Cohort.gaps().stream().map(PlantedGap::criterion).toList());
    }

    private static List<PlantedCase> some(LongFunction<Optional<PlantedCase>> make) {
        List<PlantedCase> found = new ArrayList<>();
        for (int i = 0; i < 1000 && found.size() < EACH; i++) {
            make.apply(i).ifPresent(found::add);
        }
        assertThat(found).isNotEmpty();
        return found;
    }

    private static void check(PlantedCase c, String says) {
        Map<Status, Set<String>> ends = ends(c.made());
        assertThat(ends.getOrDefault(Status.WARN, Set.of())).as(says).isEqualTo(new TreeSet<>(c.warns()));
        assertThat(ends.getOrDefault(Status.NOT_ASSESSED, Set.of())).as(says).isEqualTo(new TreeSet<>(c.notAssessed()));
    }

    private static Map<Status, Set<String>> ends(Case c) {
        Judgement judgement = JUDGE.judge(
                Measures.of(c, Optional.empty(), Workbook.none(), Calculations.full())
                        .facts(),
                CheckOptions.USUAL.reach(c).judged());
        assertThat(judgement.errors()).isEmpty();
        Map<Status, Set<String>> ends = new TreeMap<>();
        for (CriterionResult r : judgement.results()) {
            ends.computeIfAbsent(r.status(), s -> new TreeSet<>())
                    .add(r.criterion().id());
        }
        return ends;
    }
}
