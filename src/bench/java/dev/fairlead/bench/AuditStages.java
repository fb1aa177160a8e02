package dev.fairlead.bench;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.run.RowMaker;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.audit.write.CsvSink;
import dev.fairlead.audit.write.LineSink;
import dev.fairlead.audit.write.ParquetSink;
import dev.fairlead.audit.write.RowSink;
import dev.fairlead.base.Hash;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the time of an audit goes once everything is warm: processor time and allocation of one thread for each step of
 * a case, without the beam model. Processor time of a thread does not count what other programs do meanwhile.
 * Arguments: a file of one case a line, how many of its lines, how many rounds.
 */
public final class AuditStages {
    private static final com.sun.management.ThreadMXBean THREADS =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final CheckOptions BARE =
            CheckOptions.USUAL.withoutWorkings().withoutForces();

    /** What is done with one case. */
    private interface Step {
        Object of(int i) throws IOException;
    }

    private AuditStages() {}

    public static void main(String[] args) throws IOException {
        List<byte[]> lines = new ArrayList<>();
        int most = args.length > 1 ? Integer.parseInt(args[1]) : 5000;
        try (BufferedReader in = Files.newBufferedReader(Path.of(args[0]))) {
            for (String line = in.readLine(); line != null && lines.size() < most; line = in.readLine()) {
                lines.add(line.getBytes(StandardCharsets.UTF_8));
            }
        }
        Checker checker = new Checker(Rulebase.builtIn());
        var catalogue = checker.rulebase().catalogue();
        RowMaker maker = new RowMaker(checker, BARE);
        List<Item> items = lines.stream()
                .map(l -> new Item("cases.ndjson:1", new Item.Text(l, CaseFormat.JSON), 0))
                .toList();
        List<Case> cases = lines.stream()
                .map(l -> CaseReader.readExact(l, "", CaseFormat.JSON).value().orElseThrow())
                .toList();
        List<List<CaseFact>> facts = cases.stream().map(c -> facts(checker, c)).toList();
        List<CaseRow> rows = items.stream().map(maker::row).toList();
        Tally tally = new Tally(checker, 200);
        RowSink json = new LineSink(catalogue, Writer.nullWriter());
        RowSink csv = new CsvSink(catalogue, Writer.nullWriter());
        RowSink parquet = new ParquetSink(catalogue, OutputStream.nullOutputStream(), "bench");
        int rounds = args.length > 2 ? Integer.parseInt(args[2]) : 10;
        String only = args.length > 3 ? args[3] : "";
        for (int round = 1; round <= rounds; round++) {
            StringBuilder out = new StringBuilder("round " + round + ", us and KB a case:");
            time(out, only, "hash", lines.size(), i -> Hash.of(lines.get(i)));
            time(out, only, "read", lines.size(), i -> CaseReader.readExact(lines.get(i), "", CaseFormat.JSON));
            time(out, only, "measure", lines.size(), i -> facts(checker, cases.get(i)));
            time(
                    out,
                    only,
                    "judge",
                    lines.size(),
                    i -> checker.rulebase()
                            .judge()
                            .judge(facts.get(i), BARE.reach(cases.get(i)).judged())
                            .endings());
            time(out, only, "row", lines.size(), i -> maker.row(items.get(i)));
            time(out, only, "tally", lines.size(), i -> {
                tally.add(new Audit.Done(rows.get(i), items.get(i)));
                return null;
            });
            time(out, only, "ndjson", lines.size(), i -> put(json, rows.get(i)));
            time(out, only, "csv", lines.size(), i -> put(csv, rows.get(i)));
            time(out, only, "parquet", lines.size(), i -> put(parquet, rows.get(i)));
            System.out.println(out);
        }
    }

    private static List<CaseFact> facts(Checker checker, Case c) {
        return checker.judgeable(c, BARE.reach(c), BARE).facts();
    }

    private static Object put(RowSink sink, CaseRow row) throws IOException {
        sink.row(row);
        return null;
    }

    private static void time(StringBuilder out, String only, String name, int n, Step step) throws IOException {
        if (!only.isEmpty() && !only.contains(name)) {
            return;
        }
        int kept = 0;
        long id = Thread.currentThread().getId();
        long cpu = THREADS.getCurrentThreadCpuTime();
        long bytes = THREADS.getThreadAllocatedBytes(id);
        for (int i = 0; i < n; i++) {
            kept += step.of(i) == null ? 1 : 0;
        }
        cpu = THREADS.getCurrentThreadCpuTime() - cpu;
        bytes = THREADS.getThreadAllocatedBytes(id) - bytes;
        out.append(String.format(" %s %.1f (%.0f)%s", name, cpu / 1e3 / n, bytes / 1024.0 / n, kept > n ? "!" : ""));
    }
}
