package dev.fairlead.bench;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.audit.cohort.PlantedCase;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Workbook;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.CriterionResult;
import dev.fairlead.rules.Ending;
import dev.fairlead.rules.Judge;
import dev.fairlead.rules.Judgement;
import dev.fairlead.rules.PlaceResult;
import dev.fairlead.rules.QuickJudge;
import dev.fairlead.rules.Rulebase;
import java.nio.file.Path;
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

/**
 * Judging the facts of one case by all criteria: as the program does, by the engine alone, endings alone, and in plain
 * Java.
 */
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
    private QuickJudge quick;
    private PlainTwin twin;

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
        quick = rulebase.quickJudge();
        twin = TwinWriter.of(rulebase, Path.of("rules"));
        cases = Cohort.generate(CASES, SEED)
                .map(PlantedCase::made)
                .map(c -> Measures.of(c, Optional.empty(), Workbook.none()).facts())
                .toList();
        cases.forEach(this::same);
    }

    /** Nothing is measured unless all of them say the same. */
    private void same(List<CaseFact> facts) {
        Judgement engine = judge.byEngine(facts, Stage.HOLDING);
        Judgement kept = judge.judge(facts, Stage.HOLDING);
        List<PlainTwin.At>[] plain = twin.judge(facts);
        Ending[] endings = quick.endings(facts, Stage.HOLDING);
        for (int i = 0; i < plain.length; i++) {
            CriterionResult result = engine.results().get(i);
            boolean same = endings[i] == Ending.of(result)
                    && kept.results().get(i).status() == result.status()
                    && (plain[i] == null ? result.places().get(0).fact() == null : places(plain[i], result.places()));
            if (!same) {
                throw new IllegalStateException("not the same: " + result);
            }
        }
    }

    private static boolean places(List<PlainTwin.At> plain, List<PlaceResult> places) {
        return plain.size() == places.size()
                && plain.stream()
                        .allMatch(p -> places.stream()
                                .anyMatch(q -> q.fact() == p.fact()
                                        && q.status() == p.status()
                                        && q.missing().equals(p.missing())
                                        && q.verdicts().size() == p.said().size()
                                        && q.verdicts().stream()
                                                .allMatch(v -> p.said().stream()
                                                        .anyMatch(s -> s.outcome() == v.outcome()
                                                                && s.reason().equals(v.reason())
                                                                && s.seen()
                                                                        .equals(v.seen().stream()
                                                                                .map(x -> x.value())
                                                                                .toList())))));
    }

    @Benchmark
    public Judgement judge(At at) {
        return judge.judge(at.of(cases), Stage.HOLDING);
    }

    @Benchmark
    public Judgement engineAlone(At at) {
        return judge.byEngine(at.of(cases), Stage.HOLDING);
    }

    @Benchmark
    public Ending[] endings(At at) {
        return quick.endings(at.of(cases), Stage.HOLDING);
    }

    @Benchmark
    public List<PlainTwin.At>[] plainJava(At at) {
        return twin.judge(at.of(cases));
    }
}
