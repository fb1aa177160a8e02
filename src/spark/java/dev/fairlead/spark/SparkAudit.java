package dev.fairlead.spark;

import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.max;
import static org.apache.spark.sql.functions.monotonically_increasing_id;
import static org.apache.spark.sql.functions.struct;
import static org.apache.spark.sql.functions.when;

import dev.fairlead.audit.write.FindingRows;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.storage.StorageLevel;

/**
 * Audits a registry: reads cases as lines of JSON or from Parquet, judges each as {@code audit} does, and writes one
 * finding a row, how each criterion ended, and the same by resident, as Parquet.
 */
public final class SparkAudit {
    private SparkAudit() {}

    public static void main(String[] args) throws IOException {
        SparkOptions options;
        try {
            options = SparkOptions.of(args);
        } catch (IllegalArgumentException e) {
            System.err.println(e.getMessage());
            System.exit(2);
            return;
        }
        try (SparkSession spark =
                SparkSession.builder().appName("Fairlead audit").getOrCreate()) {
            run(spark, options);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            // Spark's own refusals, such as a path that is not there, are checked exceptions that no method declares
            System.err.println(e.getMessage().lines().findFirst().orElse(e.toString()));
            System.exit(2);
        }
    }

    static void run(SparkSession spark, SparkOptions o) {
        Dataset<Row> texts = o.in().endsWith(".parquet")
                ? spark.read().parquet(o.in()).withColumnRenamed(o.column(), "value")
                : spark.read().text(o.in());
        Dataset<Row> cases = texts.select(
                        col("value"),
                        col("_metadata.file_path"),
                        col("_metadata.file_block_start"),
                        monotonically_increasing_id())
                .mapPartitions(new Judging(o), Encoders.row(Judging.CASE))
                .persist(StorageLevel.DISK_ONLY());
        findings(cases).write().parquet(o.out() + "/findings");
        cases.unpersist();
        Dataset<Row> findings = spark.read()
                .parquet(o.out() + "/findings")
                .filter(col("case").notEqual("").and(col("note").notEqual(FindingRows.EARLIER)));
        findings.groupBy("criterion", "criterionStage", "outcome", "weight", "waived")
                .agg(count(lit(1)).as("cases"))
                .orderBy("criterion", "outcome", "weight", "waived")
                .coalesce(1)
                .write()
                .parquet(o.out() + "/summary");
        findings.groupBy("resident", "criterion", "outcome")
                .agg(count(lit(1)).as("cases"))
                .orderBy("resident", "criterion", "outcome")
                .coalesce(1)
                .write()
                .parquet(o.out() + "/residents");
    }

    /**
     * One finding a row. Of several states of one pseudonym the latest counts (last day, then stage, then order of
     * files and lines), and the others are marked, as in one process.
     */
    private static Dataset<Row> findings(Dataset<Row> cases) {
        Dataset<Row> repeated = cases.filter(col("id").notEqual(""))
                .groupBy(col("id").as("twice"))
                .agg(max(place()).as("latest"), count(lit(1)).as("times"))
                .filter(col("times").gt(1))
                .drop("times");
        Dataset<Row> each = cases.join(broadcast(repeated), col("id").equalTo(col("twice")), "left")
                .select(
                        coalesce(place().notEqual(col("latest")), lit(false)).as("again"),
                        explode(col("findings")).as("finding"));
        List<Column> columns = new ArrayList<>();
        for (String name : FindingRows.COLUMNS) {
            Column cell = col("finding." + name);
            columns.add((name.equals("note")
                            ? when(col("again"), FindingRows.EARLIER).otherwise(cell)
                            : cell)
                    .as(name));
        }
        return each.select(columns.toArray(Column[]::new));
    }

    private static Column place() {
        return struct(col("recorded"), col("reached"), col("file"), col("block"), col("at"));
    }
}
