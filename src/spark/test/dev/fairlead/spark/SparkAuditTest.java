package dev.fairlead.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.audit.write.ParquetSink;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.rules.Rulebase;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job on Spark in local mode against the audit of one process; Spark also reads the Parquet file that the one process writes. */
class SparkAuditTest {
    private static final int CASES = Integer.getInteger("fairlead.cases", 20_000);

    @TempDir
    private Path folder;

    @Test
    void findsInEveryCaseWhatOneProcessFinds() throws IOException {
        Path lines = folder.resolve("cohort.ndjson");
        try (Writer cases = Files.newBufferedWriter(lines); Writer truth = Writer.nullWriter()) {
            CohortFiles.lines(CASES, 42, cases, truth, n -> { });
            cases.write("{\"fairlead\": 1, \"id\": \"cut-off\"\n");
        }
        Summary one = oneProcess(lines, folder.resolve("one.parquet"));
        assertThat(one.judged()).isEqualTo(CASES);
        try (SparkSession spark = SparkSession.builder().master("local[2]").appName("test").config("spark.ui.enabled", "false")
                .config("spark.driver.bindAddress", "127.0.0.1").config("spark.driver.host", "127.0.0.1").config("spark.sql.shuffle.partitions", "4")
                .config("spark.sql.warehouse.dir", folder.resolve("warehouse").toString()).getOrCreate()) {
            Path out = folder.resolve("out");
            SparkAudit.run(spark, SparkOptions.of("--in", lines.toString(), "--out", out.toString()));
            Dataset<Row> ours = spark.read().parquet(folder.resolve("one.parquet").toString()).drop("source");
            Dataset<Row> theirs = spark.read().parquet(out + "/findings").drop("source");
            assertThat(theirs.count()).isEqualTo(ours.count()).isGreaterThan(30L * CASES);
            assertThat(ours.exceptAll(theirs).takeAsList(3)).isEmpty();
            assertThat(theirs.exceptAll(ours).takeAsList(3)).isEmpty();
            assertThat(warnings(spark, out)).isEqualTo(warnings(one));

            // the same from Parquet
            Path parquet = folder.resolve("some.parquet");
            spark.read().textFile(lines.toString()).limit(200).toDF("case").write().parquet(parquet.toString());
            SparkAudit.run(spark, SparkOptions.of("--in", parquet.toString(), "--out", folder.resolve("second").toString()));
            List<String> ids = spark.read().parquet(folder.resolve("second") + "/findings").select("case").distinct().as(Encoders.STRING()).collectAsList();
            assertThat(ids).hasSize(200);
        }
    }

    @Test
    void wrongCallsAreRefused() {
        assertThatThrownBy(() -> SparkOptions.of("--in", "x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SparkOptions.of("--in", "x", "--out", "y", "--what", "z")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SparkOptions.of("--in", "x", "--out", "y", "--stage", "z")).isInstanceOf(IllegalArgumentException.class);
    }

    private static Summary oneProcess(Path lines, Path parquet) throws IOException {
        Checker checker = new Checker(Rulebase.builtIn());
        Tally tally = new Tally(checker.rulebase().catalogue(), 0);
        Heading heading = new Heading("test", RulebaseUsed.of(checker.rulebase()), "", "", true, List.of(), List.of());
        try (ParquetSink sink = new ParquetSink(checker.rulebase().catalogue(), Files.newOutputStream(parquet), "test")) {
            new Audit(checker, Audit.Settings.USUAL).run(new Sources(List.of(lines), Mapping.NONE), done -> {
                tally.add(done);
                try {
                    sink.row(done.row());
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }, n -> { });
            sink.end(heading, tally.summary());
        }
        return tally.summary();
    }

    private static TreeMap<String, Long> warnings(Summary s) {
        TreeMap<String, Long> all = new TreeMap<>();
        s.criteria().stream().filter(c -> c.warn() > 0).forEach(c -> all.put(c.id(), c.warn()));
        return all;
    }

    private static TreeMap<String, Long> warnings(SparkSession spark, Path out) {
        TreeMap<String, Long> all = new TreeMap<>();
        for (Row r : spark.read().parquet(out + "/summary").filter("outcome = 'warn'").groupBy("criterion").sum("cases").collectAsList()) {
            all.put(r.getString(0), r.getLong(1));
        }
        return all;
    }
}
