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
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The job on Spark in local mode against the audit of one process; Spark also reads the Parquet file that the one
 * process writes.
 */
class SparkAuditTest {
    private static final int CASES = Integer.getInteger("fairlead.cases", 20_000);
    private static final int FEW = 120;

    /** Spark tells much; the logger is held here, since one that nobody holds forgets its level. */
    private static final Logger QUIET = Logger.getLogger("org.apache");

    static {
        QUIET.setLevel(Level.SEVERE);
    }

    @TempDir
    private Path folder;

    @Test
    void findsInEveryCaseWhatOneProcessFinds() throws IOException {
        Path lines = folder.resolve("cohort.ndjson");
        StringWriter first = new StringWriter();
        CohortFiles.lines(1, 43, first, Writer.nullWriter(), n -> {});
        String again = first.toString().replace("\"id\":\"c0\"", "\"id\":\"c7\"");
        assertThat(again).contains("\"id\":\"c7\"");
        try (Writer cases = Files.newBufferedWriter(lines)) {
            CohortFiles.lines(CASES, 42, cases, Writer.nullWriter(), n -> {});
            cases.write("{\"fairlead\": 1, \"id\": \"cut-off\"\n\n" + again
                    + again.replace("\"id\":\"c7\"", "\"id\":\"c" + (CASES - 1) + "\""));
        }
        Path some = folder.resolve("some.ndjson");
        try (Writer cases = Files.newBufferedWriter(some)) {
            CohortFiles.lines(FEW, 44, cases, Writer.nullWriter(), n -> {});
        }
        Summary one = oneProcess(lines, folder.resolve("one.parquet"), CheckOptions.USUAL.withoutForces());
        assertThat(one.judged()).isEqualTo(CASES);
        assertThat(one.earlier().count()).isEqualTo(2);
        oneProcess(some, folder.resolve("few.parquet"), CheckOptions.USUAL);
        // small splits, so that a case and its duplicate stand in different ones
        try (SparkSession spark = SparkSession.builder()
                .master("local[2]")
                .appName("test")
                .config("spark.ui.enabled", "false")
                .config("spark.driver.bindAddress", "127.0.0.1")
                .config("spark.driver.host", "127.0.0.1")
                .config("spark.sql.shuffle.partitions", "2")
                .config("spark.sql.files.maxPartitionBytes", "8m")
                .config("spark.sql.warehouse.dir", folder.resolve("warehouse").toString())
                .getOrCreate()) {
            Path out = folder.resolve("out");
            SparkAudit.run(spark, SparkOptions.of(lines.toString(), "-o", out.toString(), "--without-forces"));
            Dataset<Row> theirs = same(spark, folder.resolve("one.parquet"), out);
            assertThat(theirs.count()).isGreaterThan(30L * CASES);
            assertThat(theirs.schema().apply("value").dataType()).isEqualTo(DataTypes.DoubleType);
            assertThat(theirs.schema().apply("day").dataType()).isEqualTo(DataTypes.DateType);
            assertThat(theirs.schema().apply("waived").dataType()).isEqualTo(DataTypes.BooleanType);
            assertThat(theirs.filter("note = 'earlier-state'")
                            .select("case")
                            .distinct()
                            .as(Encoders.STRING())
                            .collectAsList())
                    .containsExactlyInAnyOrder("c7", "c" + (CASES - 1));
            assertThat(warnings(spark, out)).isEqualTo(warnings(one));

            // a few with the beam model, from Parquet
            Path parquet = folder.resolve("some.parquet");
            spark.read().textFile(some.toString()).toDF("case").write().parquet(parquet.toString());
            SparkAudit.run(
                    spark,
                    SparkOptions.of(
                            parquet.toString(), "-o", folder.resolve("second").toString()));
            same(spark, folder.resolve("few.parquet"), folder.resolve("second"));
        }
    }

    /**
     * Every finding of one process is among those of the job, and no other; where cases stand is told otherwise by
     * each.
     */
    private static Dataset<Row> same(SparkSession spark, Path one, Path out) {
        Dataset<Row> ours = spark.read().parquet(one.toString()).drop("source");
        Dataset<Row> theirs = spark.read().parquet(out + "/findings").drop("source");
        if (!sum(ours).equals(sum(theirs))) {
            assertThat(ours.exceptAll(theirs).takeAsList(3)).isEmpty();
            assertThat(theirs.exceptAll(ours).takeAsList(3)).isEmpty();
        }
        return theirs;
    }

    /** How many rows, and the sum of their hashes of 64 bits: the same for the same rows in any order. */
    private static Row sum(Dataset<Row> rows) {
        Column[] all =
                java.util.Arrays.stream(rows.columns()).map(functions::col).toArray(Column[]::new);
        return rows.agg(
                        functions.count(functions.lit(1)),
                        functions.sum(functions.xxhash64(all).cast("decimal(38,0)")))
                .first();
    }

    @Test
    void wrongCallsAreRefused() {
        for (String call : List.of(
                "x",
                "-o y",
                "x -o y --what z",
                "x -o y --stage z",
                "x -o y --date 2026-13-01",
                "x -o y --rules nowhere",
                "x -o y -o z",
                "x -o")) {
            assertThatThrownBy(() -> SparkOptions.of(call.split(" ")))
                    .as(call)
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(SparkOptions.of("x", "--without-forces", "-o", "y").forces()).isFalse();
    }

    private static Summary oneProcess(Path lines, Path parquet, CheckOptions options) throws IOException {
        Checker checker = new Checker(Rulebase.builtIn());
        Heading heading = new Heading(
                "test", RulebaseUsed.of(checker.rulebase()), "", "", options.forces(), List.of(), List.of());
        Tally[] tally = new Tally[1];
        ParquetSink[] sink = new ParquetSink[1];
        new Audit(checker, new Audit.Settings(options, 2, Duration.ofSeconds(60), Optional.empty(), true))
                .run(
                        new Sources(List.of(lines), Mapping.NONE),
                        () -> {
                            try {
                                tally[0] = new Tally(checker, 0);
                                sink[0] = new ParquetSink(
                                        checker.rulebase().catalogue(), Files.newOutputStream(parquet), "test");
                            } catch (IOException e) {
                                throw new UncheckedIOException(e);
                            }
                            return done -> {
                                tally[0].add(done);
                                try {
                                    sink[0].row(done.row());
                                } catch (IOException e) {
                                    throw new UncheckedIOException(e);
                                }
                            };
                        },
                        n -> {});
        Summary summary = tally[0].summary();
        sink[0].end(heading, summary);
        sink[0].close();
        return summary;
    }

    private static TreeMap<String, Long> warnings(Summary s) {
        TreeMap<String, Long> all = new TreeMap<>();
        s.criteria().stream().filter(c -> c.warn() > 0).forEach(c -> all.put(c.id(), c.warn()));
        return all;
    }

    private static TreeMap<String, Long> warnings(SparkSession spark, Path out) {
        TreeMap<String, Long> all = new TreeMap<>();
        for (Row r : spark.read()
                .parquet(out + "/summary")
                .filter("outcome = 'warn'")
                .groupBy("criterion")
                .sum("cases")
                .collectAsList()) {
            all.put(r.getString(0), r.getLong(1));
        }
        return all;
    }
}
