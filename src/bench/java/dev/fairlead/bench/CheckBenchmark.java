package dev.fairlead.bench;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.audit.cohort.PlantedCase;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Rulebase;
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

/** One case through its steps: reading JSON, measuring, judging; with and without the beam model of the wire. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CheckBenchmark {
    private static final int CASES = 1000;
    private static final long SEED = 7;
    private static final CheckOptions BARE = CheckOptions.USUAL.withoutWorkings();

    private List<Case> cases;
    private List<byte[]> json;
    private Checker plain;
    private Checker full;

    @Setup(Level.Trial)
    public void prepare() {
        cases = Cohort.generate(CASES, SEED).map(PlantedCase::made).toList();
        json = cases.stream()
                .map(c -> CaseWriter.json(c).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .toList();
        plain = new Checker(Rulebase.builtIn(), Calculations.plain());
        full = new Checker(Rulebase.builtIn(), Calculations.full());
    }

    @Benchmark
    public CaseReading read(RulesBenchmark.At at) {
        return CaseReader.read(at.of(json), "case.json", CaseFormat.JSON);
    }

    @Benchmark
    public Worked measure(RulesBenchmark.At at) {
        return Measures.of(at.of(cases), Optional.empty(), Workbook.none(), Calculations.plain());
    }

    @Benchmark
    public List<CriterionResult> withoutBeamModel(RulesBenchmark.At at) {
        return plain.judge(at.of(cases), BARE).results();
    }

    @Benchmark
    public List<CriterionResult> withBeamModel(RulesBenchmark.At at) {
        return full.judge(at.of(cases), BARE).results();
    }

    @Benchmark
    public List<CriterionResult> fromJsonWithoutBeamModel(RulesBenchmark.At at) {
        return plain.judge(
                        CaseReader.read(at.of(json), "case.json", CaseFormat.JSON)
                                .value()
                                .orElseThrow(),
                        BARE)
                .results();
    }
}
