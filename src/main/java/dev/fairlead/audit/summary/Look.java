package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Item;
import dev.fairlead.rules.catalogue.Ending;

/**
 * A case among those that need a look first: stops without a waiver before cautions, and children with a wire in the
 * mouth before those who wait for one or hold; among equals what is new since the last audit; closed cases last.
 *
 * @param stops warnings of weight stop that no waiver answers for
 * @param fresh open warnings that were not there at an earlier audit; 0 where none is known
 */
public record Look(CaseRow row, Item item, int stops, int cautions, int open, int fresh, long number)
        implements Comparable<Look> {
    static Look of(Audit.Done done, java.util.List<String> ids, int fresh, long number) {
        CaseRow row = done.row();
        int stops = 0;
        int cautions = 0;
        for (int i = 0; i < row.endings().length; i++) {
            boolean waived = !row.waived().isEmpty() && row.waived().contains(ids.get(i));
            stops += row.endings()[i] == Ending.STOP.ordinal() && !waived ? 1 : 0;
            cautions += row.endings()[i] == Ending.CAUTION.ordinal() && !waived ? 1 : 0;
        }
        return new Look(
                row,
                done.item(),
                stops,
                cautions,
                row.count(Ending.NOT_ASSESSED) + row.count(Ending.FAILED),
                fresh,
                number);
    }

    /** The one that needs a look sooner comes first. */
    @Override
    public int compareTo(Look o) {
        int by = Integer.compare(urgency(), o.urgency());
        by = by != 0 ? by : Integer.compare(Math.min(1, o.fresh), Math.min(1, fresh));
        by = by != 0 ? by : Integer.compare(o.stops, stops);
        by = by != 0 ? by : Integer.compare(o.cautions, cautions);
        by = by != 0 ? by : Integer.compare(o.open, open);
        return by != 0 ? by : Long.compare(number, o.number);
    }

    /** A stop with a wire in the mouth, then a stop before, then one while holding; what is closed comes last. */
    private int urgency() {
        if (row.course() == CaseRow.Course.CLOSED) {
            return 10;
        }
        int course = row.course() == CaseRow.Course.WIRE_IN ? 0 : row.course() == CaseRow.Course.BEFORE_WIRE ? 1 : 2;
        return (stops > 0 ? 0 : cautions > 0 ? 3 : 6) + course;
    }
}
