package dev.fairlead.bench;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.audit.cohort.PlantedCase;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Judging the facts of one case by all criteria: as the program does, by the engine alone, and endings alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RulesBenchmark {
    private static final int CASES = 1000;
    private static final long SEED = 7;

    private List<List<CaseFact>> cases;
    private Judge judge;
    private Judge alone;

    /** Where each thread stands among the cases. */
    @State(Scope.Thread)
    public static class At {
        private int next;

        <T> T of(List<T> all) {
            next = next + 1 == all.size() ? 0 : next + 1;
            return all.get(next);
        }
    }

    @Setup(Level.Trial)
    public void prepare() {
        Rulebase rulebase = Rulebase.builtIn();
        judge = rulebase.judge();
        alone = judge.withoutMemo();
        cases = Cohort.generate(CASES, SEED)
                .map(PlantedCase::made)
                .map(c -> Measures.of(c, Optional.empty(), Workbook.none()).facts())
                .toList();
        cases.forEach(this::same);
    }

    /** Nothing is measured unless all of them say the same. */
    private void same(List<CaseFact> facts) {
        Ending[] engine = alone.judge(facts, Stage.HOLDING).endings();
        if (!Arrays.equals(engine, judge.judge(facts, Stage.HOLDING).endings())) {
            throw new IllegalStateException("the memo does not say what the engine says of " + facts);
        }
    }

    @Benchmark
    public List<CriterionResult> judge(At at) {
        return judge.judge(at.of(cases), Stage.HOLDING).results();
    }

    @Benchmark
    public List<CriterionResult> engineAlone(At at) {
        return alone.judge(at.of(cases), Stage.HOLDING).results();
    }

    @Benchmark
    public Ending[] endings(At at) {
        return judge.judge(at.of(cases), Stage.HOLDING).endings();
    }
}
