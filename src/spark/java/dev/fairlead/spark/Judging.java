package dev.fairlead.spark;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.run.RowMaker;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.write.FindingRows;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Date;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/** Judges the cases of one partition, given with the place where each stands; rules are loaded once a process. */
final class Judging implements MapPartitionsFunction<Row, Row> {
    /** A finding: the columns of every audit. */
    static final StructType FINDING = finding();
    /**
     * A case: where it stands (file, start of the block, number that grows within it), its pseudonym, empty when it was
     * not judged, the last day of which it tells, its stage, and its findings.
     */
    static final StructType CASE = new StructType()
            .add("file", DataTypes.StringType)
            .add("block", DataTypes.LongType)
            .add("at", DataTypes.LongType)
            .add("id", DataTypes.StringType, false)
            .add("recorded", DataTypes.StringType, false)
            .add("reached", DataTypes.IntegerType, false)
            .add("findings", DataTypes.createArrayType(FINDING, false), false);

    private static final long serialVersionUID = 3L;
    private static final Map<SparkOptions, Judging.Rules> LOADED = new ConcurrentHashMap<>();

    private final SparkOptions options;

    private record Rules(RowMaker maker, FindingRows rows) {
        static Rules of(SparkOptions o) {
            Rulebase rulebase = o.rules().isEmpty() ? Rulebase.builtIn() : Rulebase.load(Path.of(o.rules()));
            CheckOptions check = new CheckOptions(o.day(), o.reached(), false, Doubting.NONE, o.forces());
            return new Rules(new RowMaker(new Checker(rulebase), check, true), new FindingRows(rulebase.catalogue()));
        }

        Row judged(Row in) {
            String file = in.getString(1) == null ? "" : in.getString(1);
            Item item = new Item(
                    file.substring(file.lastIndexOf('/') + 1),
                    new Item.Text(in.getString(0).getBytes(StandardCharsets.UTF_8), CaseFormat.JSON),
                    0);
            CaseRow row = maker.row(item);
            List<Row> findings = new ArrayList<>();
            rows.of(row, cells -> findings.add(RowFactory.create(typed(cells))));
            return RowFactory.create(
                    file,
                    in.get(2),
                    in.get(3),
                    row.judged() ? row.id() : "",
                    row.recorded(),
                    row.judged() ? row.stage().ordinal() : 0,
                    findings.toArray(Row[]::new));
        }
    }

    Judging(SparkOptions options) {
        this.options = options;
    }

    private static StructType finding() {
        StructType schema = new StructType();
        for (FindingRows.Column c : FindingRows.TYPED) {
            DataType type = switch (c.type()) {
                case TEXT -> DataTypes.StringType;
                case DAY -> DataTypes.DateType;
                case NUMBER -> DataTypes.DoubleType;
                case ANSWER -> DataTypes.BooleanType;
            };
            schema = schema.add(c.name(), type, c.type() != FindingRows.Type.TEXT);
        }
        return schema;
    }

    /** Cells as their columns hold them; an empty day, number or answer is null. */
    private static Object[] typed(String[] cells) {
        Object[] values = new Object[cells.length];
        for (int i = 0; i < cells.length; i++) {
            FindingRows.Type type = FindingRows.TYPED.get(i).type();
            values[i] = type == FindingRows.Type.TEXT
                    ? cells[i]
                    : cells[i].isEmpty()
                            ? null
                            : switch (type) {
                                case DAY -> Date.valueOf(cells[i]);
                                case NUMBER -> Double.valueOf(cells[i]);
                                default -> cells[i].equals("yes");
                            };
        }
        return values;
    }

    /** Takes rows of text, file, block and number; lines without text are passed over. */
    @Override
    public Iterator<Row> call(Iterator<Row> cases) {
        Rules rules = LOADED.computeIfAbsent(options, Rules::of);
        return new Iterator<>() {
            private Row next;

            @Override
            public boolean hasNext() {
                while (next == null && cases.hasNext()) {
                    Row in = cases.next();
                    if (!in.isNullAt(0) && !in.getString(0).isBlank()) {
                        next = rules.judged(in);
                    }
                }
                return next != null;
            }

            @Override
            public Row next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                Row given = next;
                next = null;
                return given;
            }
        };
    }
}
