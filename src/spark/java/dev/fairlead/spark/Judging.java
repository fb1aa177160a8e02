package dev.fairlead.spark;

import dev.fairlead.audit.run.RowMaker;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.write.FindingRows;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.Format;
import dev.fairlead.rules.Rulebase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;

/** Judges the cases of one partition; rules are loaded once a process. */
final class Judging implements MapPartitionsFunction<String, Row> {
    private static final long serialVersionUID = 1L;
    private static final Map<SparkOptions, Judging.Rules> LOADED = new ConcurrentHashMap<>();

    private final SparkOptions options;

    private record Rules(RowMaker maker, FindingRows rows) {
        static Rules of(SparkOptions o) {
            Rulebase rulebase = o.rules().isEmpty() ? Rulebase.builtIn() : Rulebase.load(Path.of(o.rules()));
            CheckOptions check = new CheckOptions(o.day(), o.reached(), false, Doubting.NONE, o.forces());
            return new Rules(new RowMaker(new Checker(rulebase), check), new FindingRows(rulebase.catalogue()));
        }
    }

    Judging(SparkOptions options) {
        this.options = options;
    }

    @Override
    public Iterator<Row> call(Iterator<String> cases) {
        Rules rules = LOADED.computeIfAbsent(options, Rules::of);
        return new Iterator<>() {
            private final List<Row> open = new ArrayList<>();
            private int at;

            @Override
            public boolean hasNext() {
                while (at == open.size() && cases.hasNext()) {
                    open.clear();
                    at = 0;
                    String text = cases.next();
                    if (text != null && !text.isBlank()) {
                        Item item = new Item("", new Item.Text(text.getBytes(StandardCharsets.UTF_8), Format.JSON), 0);
                        rules.rows().of(rules.maker().row(item), cells -> open.add(RowFactory.create((Object[]) cells)));
                    }
                }
                return at < open.size();
            }

            @Override
            public Row next() {
                if (!hasNext()) {
                    throw new java.util.NoSuchElementException();
                }
                return open.get(at++);
            }
        };
    }
}
