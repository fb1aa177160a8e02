package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Example;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every criterion has examples of every kind, and each finds what it expects and nothing else. */
class ExamplesTest {
    private static List<Example> examples(Criterion c) {
        return ProjectRules.allExamples().stream()
                .filter(e -> e.criterion().equals(c))
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> examplesFindWhatTheyExpectAndNothingElse() {
        return ProjectRules.rulebase().catalogue().criteria().stream()
                .map(c -> DynamicTest.dynamicTest(c.folder(), () -> {
                    List<String> differences = new ArrayList<>();
                    for (Example e : examples(c)) {
                        e.differences(ProjectRules.rulebase().judge(), ProjectRules.base())
                                .forEach(d -> differences.add(e.name() + ": " + d));
                    }
                    assertThat(differences).isEmpty();
                }));
    }

    @Test
    void everythingPassesOnTheBase() {
        Judgement judgement =
                ProjectRules.rulebase().judge().judge(ProjectRules.base().all());
        assertThat(judgement.errors()).isEmpty();
        assertThat(Example.found(judgement)).isEmpty();
    }

    @Test
    void everyCriterionHasExamplesOfEveryKind() {
        List<String> faults = new ArrayList<>();
        for (Criterion c : ProjectRules.rulebase().catalogue().criteria()) {
            List<Example> examples = examples(c);
            for (String kind : List.of("pass-", "warn-", "not-applicable-")) {
                if (examples.stream().noneMatch(e -> e.name().startsWith(kind))) {
                    faults.add(c.id() + ": no " + kind + "* example");
                }
            }
            for (Need need : c.needs()) {
                boolean there = examples.stream()
                        .anyMatch(e -> e.name().startsWith("missing-")
                                && e.set().entrySet().stream()
                                        .anyMatch(s ->
                                                s.getKey().startsWith(c.about().getSimpleName())
                                                        && s.getKey().endsWith("." + need.component())
                                                        && s.getValue().equals("unknown")));
                if (!there) {
                    faults.add(c.id() + ": no missing-* example without " + need.component());
                }
            }
            for (String threshold : c.thresholds().keySet()) {
                for (String at : List.of("under", "at", "over")) {
                    String name = "at-limit-" + at;
                    boolean one = c.thresholds().size() == 1;
                    if (examples.stream()
                            .noneMatch(e -> e.name().equals(name + "-" + threshold)
                                    || one && e.name().startsWith(name))) {
                        faults.add(c.id() + ": no " + name + "-" + threshold + " example");
                    }
                }
            }
            Set<String> names = new HashSet<>();
            examples.stream()
                    .map(Example::name)
                    .filter(n -> !names.add(n))
                    .forEach(n -> faults.add(c.id() + ": two examples are called " + n));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void everyRuleIsSeenToFire() {
        Set<String> seen = new HashSet<>();
        for (Example e : ProjectRules.allExamples()) {
            for (CriterionResult r : ProjectRules.rulebase()
                    .judge()
                    .judge(ProjectRules.base().with(e.set()).all())
                    .results()) {
                for (PlaceResult p : r.places()) {
                    for (Verdict v : p.verdicts()) {
                        seen.add(v.criterion() + ":" + (v.ending() == Ending.PASS ? "pass" : v.reason()));
                    }
                }
            }
        }
        List<String> unseen = new ArrayList<>();
        for (Criterion c : ProjectRules.rulebase().catalogue().criteria()) {
            Stream.concat(
                            Stream.of("pass"),
                            Stream.concat(c.reasons().keySet().stream(), c.exemptions().keySet().stream()))
                    .map(key -> c.id() + ":" + key)
                    .filter(key -> !seen.contains(key))
                    .forEach(unseen::add);
        }
        assertThat(unseen).isEmpty();
    }

    @Test
    void withoutAnyFactNothingPasses() {
        Judgement judgement = ProjectRules.rulebase().judge().judge(List.of());
        assertThat(judgement.errors()).isEmpty();
        assertThat(judgement.results())
                .hasSameSizeAs(ProjectRules.rulebase().catalogue().criteria())
                .allMatch(r -> r.status() == Status.NOT_ASSESSED && !r.missing().isEmpty());
    }
}
