package dev.fairlead.spark;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.min;

import dev.fairlead.audit.write.FindingRows;
import java.io.IOException;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.expressions.Window;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/**
 * Audits a registry: reads cases as lines of JSON or from Parquet, judges each as {@code audit} does, and writes one finding a row, how
 * each criterion ended, and the same by resident, as Parquet.
 */
public final class SparkAudit {
    private SparkAudit() {}

    public static void main(String[] args) throws IOException {
        SparkOptions options = SparkOptions.of(args);
        try (SparkSession spark = SparkSession.builder().appName("Fairlead audit").getOrCreate()) {
            run(spark, options);
        }
    }

    static void run(SparkSession spark, SparkOptions o) {
        Dataset<String> cases = o.in().endsWith(".parquet") ? spark.read().parquet(o.in()).select(col(o.column())).as(Encoders.STRING()) : spark.read().textFile(o.in());
        StructType schema = new StructType();
        for (String name : FindingRows.COLUMNS) {
            schema = schema.add(name, DataTypes.StringType, false);
        }
        cases.mapPartitions(new Judging(o), Encoders.row(schema)).write().parquet(o.out() + "/findings");
        Dataset<Row> findings = counted(spark.read().parquet(o.out() + "/findings"));
        findings.groupBy("criterion", "criterionStage", "outcome", "weight", "waived").agg(count(lit(1)).as("cases"))
                .orderBy("criterion", "outcome", "weight", "waived").coalesce(1).write().parquet(o.out() + "/summary");
        findings.groupBy("resident", "criterion", "outcome").agg(count(lit(1)).as("cases"))
                .orderBy("resident", "criterion", "outcome").coalesce(1).write().parquet(o.out() + "/residents");
    }

    /** What is counted: judged cases, and of several with one pseudonym the one whose text has the smallest hash, since a cluster knows no first. */
    private static Dataset<Row> counted(Dataset<Row> findings) {
        Dataset<Row> judged = findings.filter(col("case").notEqual(""));
        return judged.withColumn("first", min(col("hash")).over(Window.partitionBy("case"))).filter(col("hash").equalTo(col("first"))).drop("first")
                .dropDuplicates("case", "criterion");
    }
}
