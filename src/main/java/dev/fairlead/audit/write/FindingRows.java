package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.verdict.Ending;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** The long form of an audit: one row a case and criterion, the same in CSV, Parquet and the job on a cluster. */
public final class FindingRows {
    /** Names of the columns, all of text. */
    public static final List<String> COLUMNS = List.of(
            "source",
            "case",
            "hash",
            "stage",
            "resident",
            "day",
            "criterion",
            "criterionStage",
            "outcome",
            "weight",
            "waived",
            "missing",
            "note");

    /** What the last column says of a state of a case of which the same audit has a later one. */
    public static final String EARLIER = "earlier-state";

    /**
     * How many columns tell the case, and how many behind them the criterion and how it ends; the others differ from
     * row to row.
     */
    static final int OF_CASE = 6;

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
            row.source(), "", row.hash(), "", "", "", "", "", word(row.kind()), "", "", "", row.reason()
        };
    }

    /** The first columns, the same in all rows of a case that was judged. */
    static String[] ofCase(CaseRow row) {
        return new String[] {row.source(), row.id(), row.hash(), row.stage().word(), row.resident(), row.day()};
    }

    /** The columns behind them: the criterion at that index, and how it ends. */
    String[] ofEnding(int criterion, Ending e) {
        return endings[criterion][e.ordinal()];
    }

    /** The last columns. */
    String[] last(CaseRow row, int criterion) {
        List<String> missing = row.missing().getOrDefault(ids[criterion], List.of());
        return new String[] {
            row.waived().contains(ids[criterion]) ? "yes" : "no",
            missing.isEmpty() ? "" : String.join(" ", missing),
            row.superseded() ? EARLIER : ""
        };
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
}
