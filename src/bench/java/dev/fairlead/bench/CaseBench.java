package dev.fairlead.bench;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Search;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Time of one demo case: all worked numbers, the check with and without chances, 2,000 draws, the search for other
 * plans.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CaseBench {
    @Param({"whimbrel-06-class-iii-tendency.yaml", "oystercatcher-04-sided-plan.yaml"})
    public String name;

    private Case subject;
    private Checker checker;
    private Search search;

    @Setup
    public void read() throws IOException {
        Path file = Path.of("cases", name);
        subject = CaseReader.read(Files.readAllBytes(file), name, CaseFormat.BY_NAME)
                .value()
                .orElseThrow();
        Rulebase rules = Rulebase.load(Path.of("rules"));
        checker = new Checker(rules);
        search = new Search(rules, Calculations.full());
    }

    @Benchmark
    public Worked work() {
        return Measures.of(subject, Optional.empty(), Workbook.kept(), Calculations.full());
    }

    @Benchmark
    public Checked checkBare() {
        return checker.check(subject, "0", CheckOptions.USUAL.withoutWorkings());
    }

    @Benchmark
    public Checked checkWithoutChances() {
        return checker.check(subject, "0", CheckOptions.USUAL.with(Doubting.NONE));
    }

    @Benchmark
    public Checked checkFirstOrder() {
        return checker.check(subject, "0", CheckOptions.USUAL);
    }

    @Benchmark
    public Checked checkWithDraws() {
        return checker.check(subject, "0", CheckOptions.USUAL.with(Doubting.drawn(2000, 1)));
    }

    @Benchmark
    public WhatIf whatIf() {
        return search.of(subject, "0", CheckOptions.USUAL);
    }
}
