package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.Ending;
import java.util.List;
import java.util.function.Consumer;

/** The long form of an audit: one row a case and criterion, the same in CSV, Parquet and the job on a cluster. */
public final class FindingRows {
    /** Names of the columns, all of text. */
    public static final List<String> COLUMNS = List.of("source", "case", "hash", "stage", "resident", "day", "criterion", "criterionStage", "outcome", "weight",
            "waived", "missing", "note");

    /** What the last column says of a case whose pseudonym an earlier case of the same audit has. */
    public static final String DUPLICATE = "duplicate";

    private final List<Criterion> criteria;

    public FindingRows(Catalogue catalogue) {
        this.criteria = catalogue.criteria();
    }

    /** Hands on the rows of a case in the order of the catalogue; a case that was not judged has one row, with its reason in the last column. */
    public void of(CaseRow row, Consumer<String[]> to) {
        if (!row.judged()) {
            to.accept(new String[] {row.source(), "", row.hash(), "", "", "", "", "", word(row.kind()), "", "", "", row.reason()});
            return;
        }
        for (int i = 0; i < row.endings().length; i++) {
            Ending e = row.ending(i);
            if (e != null) {
                Criterion c = criteria.get(i);
                to.accept(new String[] {row.source(), row.id(), row.hash(), row.stage().word(), row.resident(), row.day(), c.id(), c.stage().word(), outcome(e), weight(e),
                    row.waived().contains(c.id()) ? "yes" : "no", String.join(" ", row.missing().getOrDefault(c.id(), List.of())), row.duplicate() ? DUPLICATE : ""});
            }
        }
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
