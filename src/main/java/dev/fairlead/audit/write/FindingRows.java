package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The long form of an audit: one row a case and criterion, the same in CSV, Parquet and the job on a cluster. */
public final class FindingRows {
    /** What a column holds; an empty cell of a day, number or answer is nothing. */
    public enum Type {
        TEXT,
        DAY,
        NUMBER,
        ANSWER
    }

    /** A column: its name and what it holds. */
    public record Column(String name, Type type) {}

    /** The columns, in order. */
    public static final List<Column> TYPED = List.of(
            text("source"),
            text("case"),
            text("hash"),
            text("stage"),
            text("resident"),
            text("site"),
            new Column("day", Type.DAY),
            text("criterion"),
            text("criterionStage"),
            text("outcome"),
            text("weight"),
            new Column("waived", Type.ANSWER),
            text("place"),
            text("reason"),
            number("value"),
            number("error"),
            text("unit"),
            number("limit"),
            number("margin"),
            number("closeness"),
            text("missing"),
            text("note"));

    /** Names of the columns. */
    public static final List<String> COLUMNS = TYPED.stream().map(Column::name).toList();

    /** What the last column says of a state of a case of which the same audit has a later one. */
    public static final String EARLIER = "earlier-state";

    /**
     * How many columns tell the case, and how many behind them the criterion and how it ends; the others differ from
     * row to row.
     */
    static final int OF_CASE = 7;

    static final int OF_ENDING = 4;

    private static final Ending[] ENDINGS = Ending.values();

    private final String[] ids;
    private final String[][][] endings;

    public FindingRows(Catalogue catalogue) {
        List<Criterion> criteria = catalogue.criteria();
        this.ids = criteria.stream().map(Criterion::id).toArray(String[]::new);
        this.endings = new String[ids.length][ENDINGS.length][];
        for (int i = 0; i < ids.length; i++) {
            for (Ending e : ENDINGS) {
                endings[i][e.ordinal()] =
                        new String[] {ids[i], criteria.get(i).stage().word(), outcome(e), weight(e)};
            }
        }
    }

    /**
     * Hands on the rows of a case in the order of the catalogue; a case that was not judged has one row, with its
     * reason in the last column.
     */
    public void of(CaseRow row, Consumer<String[]> to) {
        if (!row.judged()) {
            to.accept(notJudged(row));
            return;
        }
        String[] first = ofCase(row);
        for (int i = 0; i < row.endings().length; i++) {
            Ending e = row.ending(i);
            if (e != null) {
                String[] cells = Arrays.copyOf(first, COLUMNS.size());
                System.arraycopy(ofEnding(i, e), 0, cells, OF_CASE, OF_ENDING);
                String[] last = last(row, i);
                System.arraycopy(last, 0, cells, OF_CASE + OF_ENDING, last.length);
                to.accept(cells);
            }
        }
    }

    /** The one row of a case that was not judged. */
    static String[] notJudged(CaseRow row) {
        return new String[] {
            row.source(),
            "",
            row.hash(),
            "",
            "",
            "",
            "",
            "",
            "",
            word(row.kind()),
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            row.reason()
        };
    }

    /** The first columns, the same in all rows of a case that was judged. */
    static String[] ofCase(CaseRow row) {
        return new String[] {
            row.source(),
            row.id(),
            row.hash(),
            row.reached().word(),
            row.resident(),
            row.details().site(),
            row.day()
        };
    }

    /** The columns behind them: the criterion at that index, and how it ends. */
    String[] ofEnding(int criterion, Ending e) {
        return endings[criterion][e.ordinal()];
    }

    /** The last columns. */
    String[] last(CaseRow row, int criterion) {
        String id = ids[criterion];
        List<String> missing = row.missing().getOrDefault(id, List.of());
        CaseRow.Value v = value(row, id);
        return new String[] {
            row.waived().contains(id) ? "yes" : "no",
            v == null ? "" : v.place(),
            v == null ? "" : v.reasons(),
            v == null ? "" : number(v.value()),
            v == null ? "" : number(v.error()),
            v == null ? "" : v.unit(),
            v == null ? "" : number(v.limit()),
            v == null ? "" : number(v.margin()),
            v == null ? "" : number(v.closeness()),
            missing.isEmpty() ? "" : String.join(" ", missing),
            row.superseded() ? EARLIER : ""
        };
    }

    private static CaseRow.@Nullable Value value(CaseRow row, String criterion) {
        for (CaseRow.Value v : row.details().values()) {
            if (v.criterion().equals(criterion)) {
                return v;
            }
        }
        return null;
    }

    /** A number to the sixth decimal, without the noise of binary fractions; empty for none. */
    static String number(double v) {
        if (Double.isNaN(v)) {
            return "";
        }
        double rounded = Math.rint(v * 1e6) / 1e6;
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e9
                ? Long.toString((long) rounded)
                : Double.toString(rounded);
    }

    static String word(CaseRow.Kind kind) {
        return kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    static String outcome(Ending e) {
        return e.warns() ? "warn" : e.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private static String weight(Ending e) {
        return e == Ending.STOP ? "stop" : e == Ending.CAUTION ? "caution" : "none";
    }

    private static Column text(String name) {
        return new Column(name, Type.TEXT);
    }

    private static Column number(String name) {
        return new Column(name, Type.NUMBER);
    }
}
