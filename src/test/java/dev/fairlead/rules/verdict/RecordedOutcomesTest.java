package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.base.Hash;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.guard.RandomFacts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How every criterion ends on the demo cases, on 1,000 invented cases and on 20,000 random sets of facts is recorded:
 * counts that a person can read, and a hash over the outcome, reasons and missing facts at every place. What is meant
 * to judge otherwise is accepted with {@code -Dfairlead.accept=true}; the difference tells what changed.
 */
class RecordedOutcomesTest {
    private static final Path RECORDED = Path.of("src/test/resources/expected-outcomes.txt");
    private static final long COHORT_SEED = 3;
    private static final int COHORT = 1_000;
    private static final long FACTS_SEED = 20261128;
    private static final int FACT_SETS = 20_000;
    private static final int AT_ONCE = 500;

    private final Judge judge = ProjectRules.rulebase().judge();

    @Test
    void everyCriterionEndsAsRecorded() throws IOException {
        List<Case> demos = demos();
        RandomFacts random = new RandomFacts(ProjectRules.base(), ProjectRules.allExamples());
        List<String> lines = new ArrayList<>();
        lines.addAll(recorded("demo", demos.size(), i -> of(demos.get(i))));
        lines.addAll(
                recorded("cohort", COHORT, i -> of(Cohort.one(COHORT_SEED, i).made())));
        lines.addAll(recorded(
                "facts", FACT_SETS, i -> judge.judge(random.facts(new Random(FACTS_SEED + i)), Stage.HOLDING)));
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.write(RECORDED, lines);
        }
        assertThat(lines)
                .as(
                        "run with -Dfairlead.accept=true where criteria are meant to judge otherwise, and read the difference")
                .containsExactlyElementsOf(Files.readAllLines(RECORDED));
    }

    private Judgement of(Case c) {
        return judge.judge(
                Measures.of(c, Optional.empty(), Workbook.none()).facts(),
                c.stage().known() ? c.stage().get() : Stage.HOLDING);
    }

    private static List<Case> demos() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            for (Path file : files.sorted().toList()) {
                CaseReader.read(file).value().ifPresent(cases::add);
            }
        }
        return cases;
    }

    /** One line for each criterion: how often it ends how, and a hash over all that it said. */
    private static List<String> recorded(String name, int many, IntFunction<Judgement> judged) {
        Map<String, Map<Ending, Integer>> counts = new TreeMap<>();
        Map<String, StringBuilder> said = new TreeMap<>();
        for (int from = 0; from < many; from += AT_ONCE) {
            IntStream.range(from, Math.min(many, from + AT_ONCE))
                    .parallel()
                    .mapToObj(judged)
                    .toList()
                    .forEach(j -> add(j, counts, said));
        }
        List<String> lines = new ArrayList<>();
        counts.forEach((id, ends) -> lines.add(name + " " + id + " " + ends + " "
                + Hash.of(said.get(id).toString()).substring(0, 12)));
        return lines;
    }

    private static void add(
            Judgement judgement, Map<String, Map<Ending, Integer>> counts, Map<String, StringBuilder> said) {
        assertThat(judgement.errors()).isEmpty();
        for (CriterionResult r : judgement.results()) {
            String id = r.criterion().id();
            counts.computeIfAbsent(id, k -> new EnumMap<>(Ending.class)).merge(r.ending(), 1, Integer::sum);
            StringBuilder all = said.computeIfAbsent(id, k -> new StringBuilder());
            all.append(r.reasons()).append(r.missing());
            for (PlaceResult p : r.places()) {
                all.append(p.place()).append(p.status());
                p.verdicts().forEach(v -> all.append(v.ending()).append(v.reason()));
            }
        }
    }
}
